package org.limedry.simulation;

import java.util.Arrays;

/** A row of figures, one for each hour of a {@link History}; NaN never occurs. */
public final class Series {
    private final double[] values;

    private Series(double[] values) {
        this.values = values;
    }

    /** Returns a series that holds a copy of the first {@code count} values. */
    static Series copyOf(double[] values, int count) {
        return new Series(Arrays.copyOf(values, count));
    }

    /** Returns a series of the given values. */
    public static Series of(double... values) {
        return new Series(values.clone());
    }

    /** Returns how many hours there are. */
    public int size() {
        return values.length;
    }

    /** Returns the value at hour {@code i}. */
    public double at(int i) {
        return values[i];
    }
}
