package org.limedry.reference;

/**
 * A value with the range in which the true one is thought to lie, in the unit of the column that it comes from.
 *
 * @param likely the value to use when nothing better is known
 * @param low lower end; at most {@code likely}
 * @param high upper end; at least {@code likely}
 */
public record Estimate(double likely, double low, double high) {
    public Estimate {
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException(
                    "likely: must be between low and high, was " + likely + " with " + low + " and " + high);
        }
    }

    /** Returns the estimate in another unit. */
    public Estimate times(double factor) {
        return new Estimate(likely * factor, low * factor, high * factor);
    }
}
