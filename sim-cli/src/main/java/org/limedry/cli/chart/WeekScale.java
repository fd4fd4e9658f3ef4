package org.limedry.cli.chart;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Weeks from zero to a whole number of steps.
 *
 * @param step weeks from one mark to the next
 * @param steps how many steps there are; at least 1
 */
record WeekScale(double step, int steps) {
    private static final int MOST_STEPS = 5;

    /** Returns the finest scale of at most five steps that reaches {@code weeks}. */
    static WeekScale reaching(double weeks) {
        double step = DoubleStream.of(1, 2, 4, 8, 13)
                .filter(candidate -> weeks <= MOST_STEPS * candidate)
                .findFirst()
                .orElse(Math.ceil(weeks / MOST_STEPS));
        return new WeekScale(step, Math.max(1, (int) Math.ceil(weeks / step - 1e-9)));
    }

    double end() {
        return step * steps;
    }

    List<Double> ticks() {
        return IntStream.rangeClosed(0, steps).mapToObj(n -> n * step).toList();
    }
}
