package org.limedry.cli.chart;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The values an axis runs over.
 *
 * @param low its lower end
 * @param high its upper end
 * @param step from one grid line to the next
 */
record ValueScale(double low, double high, double step) {
    private static final double HEADROOM = 1.06;
    private static final int MOST_STEPS = 5;
    private static final int LEAST_STEPS = 3;
    private static final double OVER_STEPS = 0.02;
    private static final double ROOM_CELSIUS = 0.8;
    private static final List<Double> CELSIUS_STEPS = List.of(2.0, 5.0, 10.0, 20.0, 50.0);

    /** Returns a scale from 0 to a little above {@code highest}. */
    static ValueScale fromZero(double highest) {
        double high = highest > 0 ? highest * HEADROOM : 1;
        double step = stepOver(high);
        // A little over the last line, or half of it would be cut off.
        double lastLine = Math.floor(high / step) * step;
        return new ValueScale(0, Math.max(high, lastLine + OVER_STEPS * step), step);
    }

    /** Returns a scale from a little below the lowest to a little above the highest value, in round steps. */
    static ValueScale between(double lowest, double highest) {
        double span = highest > lowest ? highest - lowest : 1;
        double room = (HEADROOM - 1) * span;
        return new ValueScale(lowest - room, highest + room, stepOver(span + 2 * room));
    }

    private static double stepOver(double span) {
        double decade = Math.pow(10, Math.floor(Math.log10(span)) - 1);
        return DoubleStream.of(1, 2, 5, 10, 20, 50)
                .map(times -> times * decade)
                .filter(candidate -> span / candidate < MOST_STEPS + 1)
                .findFirst()
                .orElse(span);
    }

    /** Returns a scale in steps of 2 degrees, or more if the values lie far apart, with room for words at both ends. */
    static ValueScale celsius(double lowest, double highest) {
        return CELSIUS_STEPS.stream()
                .map(step -> celsius(lowest, highest, step))
                .filter(scale -> scale.high - scale.low <= (MOST_STEPS + 0.5) * scale.step)
                .findFirst()
                .orElseGet(() -> new ValueScale(lowest - 1, highest + 1, highest - lowest + 2));
    }

    /** Returns a scale of percent that ends at 100. */
    static ValueScale percentUpTo100(double lowest) {
        double step = lowest >= 60 ? 10 : 20;
        double low = Math.max(0, Math.floor((lowest - 2) / step) * step);
        // A little over the last line, or half of it would be cut off.
        return new ValueScale(Math.min(low, 100 - LEAST_STEPS * step), 100 + OVER_STEPS * step, step);
    }

    /** Returns a scale from 0 to {@code top}, and a little over it, or half of a line at the top would be cut off. */
    static ValueScale upTo(double top, double step) {
        return new ValueScale(0, top + OVER_STEPS * step, step);
    }

    /** Returns weeks from 0, in the widest of at most five round steps that reach {@code weeks}. */
    static ValueScale weeksTo(double weeks) {
        double step = DoubleStream.of(1, 2, 4, 8, 13)
                .filter(candidate -> weeks <= MOST_STEPS * candidate)
                .findFirst()
                .orElse(Math.ceil(weeks / MOST_STEPS));
        return new ValueScale(0, step * Math.max(1, Math.ceil(weeks / step - 1e-9)), step);
    }

    private static ValueScale celsius(double lowest, double highest, double step) {
        double first = Math.floor((lowest - ROOM_CELSIUS) / step);
        double last = Math.ceil((highest + ROOM_CELSIUS) / step);
        double widened = Math.max(last, first + LEAST_STEPS);
        double low = last < widened - 1 ? first - 1 : first;
        double high = last < widened - 1 ? widened - 1 : widened;
        // A little over the last line, or half of it would be cut off.
        return new ValueScale(low * step, (high + OVER_STEPS) * step, step);
    }

    /** Returns the value up to which {@link #upTo} was asked to go. */
    double top() {
        return high - OVER_STEPS * step;
    }

    List<Double> ticks() {
        int first = (int) Math.ceil(low / step - 1e-9);
        int last = (int) Math.floor(high / step + 1e-9);
        return IntStream.rangeClosed(first, last).mapToObj(n -> n * step).toList();
    }

    /** Returns a tick as text, with the decimals that the step needs and a true minus sign. */
    String words(double tick) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        String digits = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(tick));
        return tick < 0 ? "\u2212" + digits : digits;
    }
}
