package org.limedry.simulation;

import org.limedry.units.Check;

/**
 * Grid and tolerance of a run.
 *
 * @param tolerance relative tolerance of a step; in (0, 0.1]
 * @param gridFactor cells against the ordinary grid: 2 halves every cell; in (0, 32]
 * @param maxStepS longest step, s; above 0
 */
public record Accuracy(double tolerance, double gridFactor, double maxStepS) {
    /** Returns the ordinary accuracy: about 1 % in litres. */
    public static Accuracy ordinary() {
        return new Accuracy(2e-3, 1.0, 3600.0);
    }

    /**
     * Returns the accuracy of a quick look, and of the members behind a range of dates: on the demo dates within an hour and
     * litres within 1 % of a run with cells a third as large at a fortieth of the tolerance, far inside the spread that the members
     * show, in half the time of {@link #ordinary()}.
     */
    public static Accuracy quick() {
        return new Accuracy(4e-3, 0.7, 3600.0);
    }

    public Accuracy {
        Check.inOpenClosed(tolerance, 0.0, 0.1, "tolerance", "");
        Check.inOpenClosed(gridFactor, 0.0, 32.0, "gridFactor", "");
        Check.positive(maxStepS, "maxStepS", "s");
    }
}
