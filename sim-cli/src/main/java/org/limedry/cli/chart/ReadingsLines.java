package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import org.limedry.climate.LoggedReading;

/**
 * One thing that a logger read, as lines to draw: a new line begins after each gap.
 *
 * @param lines what was read, or the means of days that have at least half of their readings; none is empty
 * @param bands the lowest and highest of each day, where the lines are means of days; empty otherwise
 */
record ReadingsLines(List<List<TimedValue>> lines, List<List<Band>> bands) {
    private static final double GAP_INTERVALS = 1.9;
    private static final int HOURS_TO_NOON = 12;

    /** The lowest and the highest of a day. */
    record Band(Instant at, double low, double high) {}

    static ReadingsLines of(ReadingsChart chart, Function<LoggedReading, OptionalDouble> of) {
        List<TimedValue> all = new ArrayList<>();
        for (LoggedReading reading : chart.readings().all()) {
            of.apply(reading).ifPresent(value -> all.add(new TimedValue(reading.at(), value)));
        }
        if (!chart.timeline().byDay()) {
            return new ReadingsLines(cut(all, chart.readings().interval()), List.of());
        }
        return byDay(all, chart.timeline(), chart.readings().interval());
    }

    private static ReadingsLines byDay(List<TimedValue> all, Timeline timeline, Duration interval) {
        Map<LocalDate, List<Double>> days = new TreeMap<>();
        all.forEach(point -> days.computeIfAbsent(timeline.day(point.at()), day -> new ArrayList<>())
                .add(point.value()));
        // The mean of a morning is not that of a day.
        days.values()
                .removeIf(values -> values.size() * interval.toSeconds() * 2
                        < Duration.ofDays(1).toSeconds());
        List<TimedValue> means = new ArrayList<>();
        List<Band> bands = new ArrayList<>();
        days.forEach((day, values) -> {
            Instant noon = timeline.clamp(timeline.startOf(day).plus(Duration.ofHours(HOURS_TO_NOON)));
            var statistics = values.stream().mapToDouble(Double::doubleValue).summaryStatistics();
            means.add(new TimedValue(noon, statistics.getAverage()));
            bands.add(new Band(noon, statistics.getMin(), statistics.getMax()));
        });
        List<List<TimedValue>> lines = cut(means, Duration.ofDays(1));
        List<List<Band>> cutBands = new ArrayList<>();
        int from = 0;
        for (List<TimedValue> line : lines) {
            cutBands.add(List.copyOf(bands.subList(from, from + line.size())));
            from += line.size();
        }
        return new ReadingsLines(lines, cutBands);
    }

    private static List<List<TimedValue>> cut(List<TimedValue> points, Duration interval) {
        List<List<TimedValue>> lines = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            boolean gap = i > 0
                    && Duration.between(points.get(i - 1).at(), points.get(i).at())
                                    .toSeconds()
                            > GAP_INTERVALS * interval.toSeconds();
            if (i == 0 || gap) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(points.get(i));
        }
        return lines;
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    /** Returns all values that will be drawn. */
    List<Double> values() {
        List<Double> values = new ArrayList<>();
        lines.forEach(line -> line.forEach(point -> values.add(point.value())));
        bands.forEach(band -> band.forEach(day -> {
            values.add(day.low());
            values.add(day.high());
        }));
        return values;
    }
}
