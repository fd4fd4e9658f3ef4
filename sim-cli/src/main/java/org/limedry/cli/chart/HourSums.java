package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.limedry.cli.chart.WallAndDewPointChart.Hour;

/** Hours gathered into local days, or left as they are in a short run. */
final class HourSums {
    private static final Duration HOUR = Duration.ofHours(1);
    private static final Duration HALF_HOUR = Duration.ofMinutes(30);
    private static final Duration NOON = Duration.ofHours(12);

    private final Timeline timeline;
    private final List<Hour> hours;

    HourSums(Timeline timeline, List<Hour> hours) {
        this.timeline = timeline;
        this.hours = hours;
    }

    /** Returns a line through the values: hour by hour, or through the means of the days in a long run. */
    List<TimedValue> line(ToDoubleFunction<Hour> value) {
        if (!timeline.byDay()) {
            return hours.stream()
                    .map(hour -> new TimedValue(hour.at(), value.applyAsDouble(hour)))
                    .toList();
        }
        return days(hours).entrySet().stream()
                .map(day -> new TimedValue(
                        timeline.clamp(timeline.startOf(day.getKey()).plus(NOON)),
                        day.getValue().stream().mapToDouble(value).average().orElseThrow()))
                .toList();
    }

    /** Returns the hours of each day on which something was so, summed by share. */
    Map<LocalDate, Double> hoursByDay(ToDoubleFunction<Hour> share) {
        return days(past()).entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        day -> day.getValue().stream().mapToDouble(share).sum(),
                        Double::sum,
                        LinkedHashMap::new));
    }

    /** Returns when something was so: in whole days in a long run, else in whole hours. */
    List<Stretch> stretches(Predicate<Hour> so) {
        if (!timeline.byDay()) {
            return Stretch.joined(past().stream()
                    .filter(so)
                    .map(hour -> new Stretch(timeline.clamp(hour.at().minus(HOUR)), timeline.clamp(hour.at())))
                    .toList());
        }
        return Stretch.joined(days(past().stream().filter(so).toList()).keySet().stream()
                .map(this::stretch)
                .toList());
    }

    /** Returns the part of a local day that lies within the run. */
    Stretch stretch(LocalDate day) {
        Instant start = timeline.clamp(timeline.startOf(day));
        return new Stretch(start, timeline.clamp(timeline.startOf(day.plusDays(1))));
    }

    /** The first entry is the start of the run: no hour of it has passed. */
    private List<Hour> past() {
        return hours.stream().filter(hour -> hour.at().isAfter(timeline.from())).toList();
    }

    /** An hour that ends at midnight belongs to the day before. */
    private Map<LocalDate, List<Hour>> days(List<Hour> some) {
        return some.stream()
                .collect(Collectors.groupingBy(
                        hour -> timeline.day(timeline.clamp(hour.at().minus(HALF_HOUR))),
                        LinkedHashMap::new,
                        Collectors.toList()));
    }

    /**
     * A stretch of time during which something was so.
     *
     * @param from its start
     * @param to its end
     */
    record Stretch(Instant from, Instant to) {
        /** Joins stretches that touch; they must come in order. */
        static List<Stretch> joined(List<Stretch> stretches) {
            List<Stretch> joined = new ArrayList<>();
            for (Stretch next : stretches) {
                int last = joined.size() - 1;
                if (last >= 0 && !next.from.isAfter(joined.get(last).to)) {
                    joined.set(last, new Stretch(joined.get(last).from, next.to));
                } else {
                    joined.add(next);
                }
            }
            return joined;
        }
    }
}
