package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** Finds what is readable and yet hard to believe: sensors that stand still or are full, lone jumps, holes. */
final class Suspects {
    /** Cellars are steady, but not to the last digit for a day. Judgement, without a source. */
    private static final Duration STUCK_FOR = Duration.ofHours(24);

    private static final int STUCK_READINGS = 12;

    /** Judgement, without a source: fog in a room lasts less. */
    private static final Duration FULL_FOR = Duration.ofHours(6);

    private static final double FULL = 0.995;
    private static final double JUMP_K = 8.0;
    private static final double JUMP_HUMIDITY = 0.3;
    private static final double GAP_INTERVALS = 1.9;

    private final List<Ordered> rows;
    private final ClockWords clock;
    private final List<Found> found;

    private Suspects(List<Ordered> rows, ClockWords clock, List<Found> found) {
        this.rows = rows;
        this.clock = clock;
        this.found = found;
    }

    static void find(List<Ordered> rows, ClockWords clock, List<Found> found) {
        Suspects suspects = new Suspects(rows, clock, found);
        suspects.findGaps();
        suspects.findRuns(new Series("temperature", LoggedReading::celsius, 1.0, "C"));
        suspects.findRuns(new Series("humidity", LoggedReading::relativeHumidity, 100.0, "%"));
        suspects.findRuns(new Series("wall surface", LoggedReading::surfaceCelsius, 1.0, "C"));
        suspects.findJumps("temperature", reading -> reading.celsius().orElse(Double.NaN), JUMP_K);
        suspects.findJumps("humidity", reading -> reading.relativeHumidity().orElse(Double.NaN), JUMP_HUMIDITY);
    }

    private Instant at(int index) {
        return rows.get(index).reading().at();
    }

    private String when(int index) {
        return clock.words(at(index));
    }

    private void findGaps() {
        Duration usual = new Readings(rows.stream().map(Ordered::reading).toList()).interval();
        for (int i = 1; i < rows.size(); i++) {
            Duration step = Duration.between(at(i - 1), at(i));
            if (step.toSeconds() > GAP_INTERVALS * usual.toSeconds()) {
                found.add(between(i - 1, i, Found.Kind.GAP, "for " + Spans.words(step) + " from " + when(i - 1)));
            }
        }
    }

    /** One column of figures. */
    private record Series(String name, Function<LoggedReading, OptionalDouble> of, double scale, String unit) {
        /** Returns the figure; humidities that are full are all the same. */
        OptionalDouble at(LoggedReading reading) {
            OptionalDouble value = of.apply(reading);
            return isFull(value) ? OptionalDouble.of(1.0) : value;
        }

        boolean isFull(OptionalDouble value) {
            return unit.equals("%") && value.orElse(0.0) >= FULL;
        }
    }

    private void findRuns(Series series) {
        int start = 0;
        for (int i = 1; i <= rows.size(); i++) {
            if (i == rows.size()
                    || !series.at(rows.get(start).reading())
                            .equals(series.at(rows.get(i).reading()))) {
                tellRun(series, start, i - 1);
                start = i;
            }
        }
    }

    private void tellRun(Series series, int first, int last) {
        Duration length = Duration.between(at(first), at(last));
        OptionalDouble value = series.at(rows.get(first).reading());
        boolean full = series.isFull(value);
        boolean longEnough = full
                ? length.compareTo(FULL_FOR) >= 0
                : length.compareTo(STUCK_FOR) >= 0 && last - first + 1 >= STUCK_READINGS;
        if (value.isEmpty() || !longEnough) {
            return;
        }
        String words = String.format(
                Locale.ROOT,
                "%s %.1f %s for %s from %s",
                series.name(),
                value.getAsDouble() * series.scale(),
                series.unit(),
                Spans.words(length),
                when(first));
        found.add(between(first, last, full ? Found.Kind.FULL : Found.Kind.STUCK, words));
    }

    private Found between(int first, int last, Found.Kind kind, String words) {
        int one = rows.get(first).line();
        int other = rows.get(last).line();
        return new Found(kind, Math.min(one, other), Math.max(one, other), words);
    }

    private void findJumps(String name, ToDoubleFunction<LoggedReading> of, double least) {
        for (int i = 1; i + 1 < rows.size(); i++) {
            double before = of.applyAsDouble(rows.get(i - 1).reading());
            double here = of.applyAsDouble(rows.get(i).reading());
            double after = of.applyAsDouble(rows.get(i + 1).reading());
            boolean lone = Math.abs(here - before) > least
                    && Math.abs(here - after) > least
                    && (here - before) * (here - after) > 0.0;
            if (lone) {
                found.add(Found.on(rows.get(i).line(), Found.Kind.LONE_JUMP, name + " at " + when(i)));
            }
        }
    }
}
