package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Marks;
import org.limedry.cli.chart.ResidualChart.Reading;

/**
 * One channel as lines to draw: a new run begins after each gap.
 *
 * @param runs the points of each run; none is empty
 */
record ResidualLines(List<List<Sample>> runs) {
    private static final double GAP_INTERVALS = 1.9;
    private static final double GAP_MARKS = 3.5;
    private static final Duration LEAST_GAP = Duration.ofHours(6);

    ResidualLines {
        runs = runs.stream().map(List::copyOf).toList();
    }

    /**
     * A reading, or the mean of those of one day.
     *
     * @param mean the reading or the mean
     * @param lowest the lowest of the day
     * @param highest the highest of the day
     * @param afterLow the lowest that the model now says for the readings of the day
     * @param afterHigh the highest
     */
    record Sample(Reading mean, double lowest, double highest, double afterLow, double afterHigh) {
        static Sample of(Reading reading) {
            return new Sample(reading, reading.measured(), reading.measured(), reading.after(), reading.after());
        }

        static Sample of(List<Reading> day) {
            Instant first = day.get(0).at();
            long seconds = Math.round(day.stream()
                    .mapToLong(reading -> Duration.between(first, reading.at()).toSeconds())
                    .average()
                    .orElse(0));
            DoubleSummaryStatistics measured = statistics(day, Reading::measured);
            DoubleSummaryStatistics after = statistics(day, Reading::after);
            return new Sample(
                    new Reading(
                            first.plusSeconds(seconds),
                            measured.getAverage(),
                            statistics(day, Reading::before).getAverage(),
                            after.getAverage()),
                    measured.getMin(),
                    measured.getMax(),
                    after.getMin(),
                    after.getMax());
        }

        private static DoubleSummaryStatistics statistics(List<Reading> day, ToDoubleFunction<Reading> of) {
            return day.stream().mapToDouble(of).summaryStatistics();
        }
    }

    /** Returns whether a channel is drawn day by day. */
    static boolean byDay(Channel channel, Timeline timeline) {
        return channel.marks() == Marks.LINE && timeline.byDay();
    }

    static ResidualLines of(Channel channel, Timeline timeline) {
        List<Sample> samples = byDay(channel, timeline)
                ? days(channel.readings(), timeline)
                : channel.readings().stream().map(Sample::of).toList();
        return new ResidualLines(cut(samples, gap(samples, channel.marks())));
    }

    /** A part of a day counts as well: readings and model are of the same hours. */
    private static List<Sample> days(List<Reading> readings, Timeline timeline) {
        Map<LocalDate, List<Reading>> days = new TreeMap<>();
        readings.forEach(reading -> days.computeIfAbsent(timeline.day(reading.at()), day -> new ArrayList<>())
                .add(reading));
        return days.values().stream().map(Sample::of).toList();
    }

    private static Duration gap(List<Sample> samples, Marks marks) {
        List<Duration> apart = IntStream.range(1, samples.size())
                .mapToObj(i -> apart(samples, i))
                .sorted()
                .toList();
        if (apart.isEmpty()) {
            return LEAST_GAP;
        }
        double usual = apart.get(apart.size() / 2).toSeconds();
        double longest = usual * (marks == Marks.LINE ? GAP_INTERVALS : GAP_MARKS);
        return Duration.ofSeconds(Math.max(LEAST_GAP.toSeconds(), Math.round(longest)));
    }

    private static Duration apart(List<Sample> samples, int i) {
        return Duration.between(
                samples.get(i - 1).mean().at(), samples.get(i).mean().at());
    }

    private static List<List<Sample>> cut(List<Sample> samples, Duration gap) {
        List<List<Sample>> runs = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            if (i == 0 || apart(samples, i).compareTo(gap) > 0) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(samples.get(i));
        }
        return runs;
    }

    List<Sample> samples() {
        return runs.stream().flatMap(List::stream).toList();
    }
}
