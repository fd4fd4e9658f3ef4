package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A value at a moment, in the unit of its axis.
 *
 * @param at when
 * @param value what
 */
record TimedValue(Instant at, double value) {
    /** Returns the value of a line at a moment, if the line reaches over it. */
    static OptionalDouble between(List<TimedValue> line, Instant moment) {
        for (int i = 1; i < line.size(); i++) {
            TimedValue before = line.get(i - 1);
            TimedValue after = line.get(i);
            if (!moment.isBefore(before.at) && !moment.isAfter(after.at)) {
                double whole = Duration.between(before.at, after.at).toMillis();
                double part = Duration.between(before.at, moment).toMillis();
                double share = whole > 0 ? part / whole : 1;
                return OptionalDouble.of(before.value + share * (after.value - before.value));
            }
        }
        return OptionalDouble.empty();
    }
}
