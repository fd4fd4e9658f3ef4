package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.limedry.simulation.History;

/**
 * Hours of a history, each told by its end.
 *
 * @param first the first that counts
 * @param end the first that no longer counts
 */
record HourSpan(int first, int end) {
    /** Returns the hours that ended after {@code from} and not after {@code until}. */
    static HourSpan of(History history, Instant from, Instant until) {
        return new HourSpan(countUpTo(history, from), countUpTo(history, until));
    }

    int hours() {
        return end - first;
    }

    IntStream all() {
        return IntStream.range(first, end);
    }

    double sum(IntToDoubleFunction quantity) {
        return all().mapToDouble(quantity).sum();
    }

    /** Returns the mean; 0 over no hours. */
    double mean(IntToDoubleFunction quantity) {
        return all().mapToDouble(quantity).average().orElse(0.0);
    }

    private static int countUpTo(History history, Instant instant) {
        long hours = Duration.between(history.times().get(0), instant).toHours();
        return (int) Math.max(0, Math.min(history.times().size(), hours + 1));
    }
}
