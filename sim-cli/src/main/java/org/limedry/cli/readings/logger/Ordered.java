package org.limedry.cli.readings.logger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.limedry.climate.LoggedReading;

/**
 * A reading with the line it comes from.
 *
 * @param line the line
 * @param reading the reading
 */
record Ordered(int line, LoggedReading reading) {
    /** Sorts by time and keeps one reading for each moment. */
    static List<Ordered> of(List<Moments.Timed> timed, ClockWords clock, List<Found> found) {
        Instant latest = Instant.MIN;
        for (Moments.Timed one : timed) {
            if (one.at().isBefore(latest)) {
                found.add(Found.on(one.line(), Found.Kind.OUT_OF_ORDER, clock.words(one.at())));
            } else {
                latest = one.at();
            }
        }
        List<Moments.Timed> sorted =
                timed.stream().sorted(Comparator.comparing(Moments.Timed::at)).toList();
        List<Ordered> ordered = new ArrayList<>();
        for (Moments.Timed one : sorted) {
            Ordered next = new Ordered(one.line(), reading(one));
            LoggedReading before = ordered.isEmpty() ? next.reading : ordered.get(ordered.size() - 1).reading;
            if (ordered.isEmpty() || before.at().isBefore(one.at())) {
                ordered.add(next);
            } else {
                Found.Kind kind = before.equals(next.reading) ? Found.Kind.SAID_TWICE : Found.Kind.CONTRADICTION;
                found.add(Found.on(one.line(), kind, clock.words(one.at())));
            }
        }
        return ordered;
    }

    private static LoggedReading reading(Moments.Timed timed) {
        Figures.Values values = timed.values();
        return new LoggedReading(
                timed.at(), values.celsius(), values.relativeHumidity(), values.surfaceCelsius(), values.windMPerS());
    }
}
