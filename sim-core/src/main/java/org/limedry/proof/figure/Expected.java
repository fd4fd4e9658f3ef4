package org.limedry.proof.figure;

import org.limedry.units.Check;

/**
 * An expected number and how far a finding may lie from it.
 *
 * @param value the number
 * @param below how far below it is accepted; infinite for "at most"
 * @param above how far above it is accepted; infinite for "at least"
 */
public record Expected(double value, double below, double above) {
    public Expected {
        Check.finite(value, "value", "");
        Check.that(below >= 0.0, "below", "at least 0", below);
        Check.that(above >= 0.0, "above", "at least 0", above);
    }

    /** Expects a number, as near as {@code tolerance}. */
    public static Expected near(double value, double tolerance) {
        return new Expected(value, tolerance, tolerance);
    }

    /** Expects a number within a band. */
    public static Expected between(double low, double high) {
        return near(0.5 * (low + high), 0.5 * (high - low));
    }

    /** Expects a number or more. */
    public static Expected atLeast(double value) {
        return new Expected(value, 0.0, Double.POSITIVE_INFINITY);
    }

    /** Expects a number or less. */
    public static Expected atMost(double value) {
        return new Expected(value, Double.POSITIVE_INFINITY, 0.0);
    }

    /** Returns how far the finding lies from the number; positive when it is above. */
    public double difference(double found) {
        return found - value;
    }

    /** Tells whether a finding is accepted; not a number never is. */
    public boolean allows(double found) {
        return difference(found) <= above && difference(found) >= -below;
    }

    /** Returns the difference as a share of what is accepted: above 1 for a finding that is not; 0 where any is. */
    public double share(double found) {
        double difference = difference(found);
        double room = difference > 0.0 ? above : below;
        return difference == 0.0 ? 0.0 : Math.abs(difference) / room;
    }
}
