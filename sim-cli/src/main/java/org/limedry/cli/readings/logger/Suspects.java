package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** Finds what is readable and yet hard to believe: sensors that stand still or are full, lone jumps, holes. */
final class Suspects {
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
        for (StandingFigure figure : StandingFigure.values()) {
            figure.stretches(suspects.readings()).forEach(stretch -> suspects.tell(figure, stretch));
        }
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
        Duration usual = new Readings(readings()).interval();
        for (int i = 1; i < rows.size(); i++) {
            Duration step = Duration.between(at(i - 1), at(i));
            if (step.toSeconds() > GAP_INTERVALS * usual.toSeconds()) {
                found.add(between(i - 1, i, Found.Kind.GAP, "for " + Spans.words(step) + " from " + when(i - 1)));
            }
        }
    }

    private List<LoggedReading> readings() {
        return rows.stream().map(Ordered::reading).toList();
    }

    private void tell(StandingFigure figure, StandingFigure.Stretch stretch) {
        String words = String.format(
                Locale.ROOT,
                "%s %.1f %s for %s from %s",
                figure.words(),
                stretch.value(),
                figure.unit(),
                Spans.words(Duration.between(at(stretch.first()), at(stretch.last()))),
                when(stretch.first()));
        found.add(between(stretch.first(), stretch.last(), stretch.full() ? Found.Kind.FULL : Found.Kind.STUCK, words));
    }

    /** Returns the readings without the figures of sensors that stood still; those that are full stay. */
    static List<LoggedReading> withoutStuck(List<LoggedReading> readings) {
        List<LoggedReading> moving = new ArrayList<>(readings);
        for (StandingFigure figure : StandingFigure.values()) {
            figure.stretches(readings).stream()
                    .filter(stretch -> !stretch.full())
                    .forEach(stretch ->
                            moving.subList(stretch.first(), stretch.last() + 1).replaceAll(figure::takenFrom));
        }
        return moving;
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
