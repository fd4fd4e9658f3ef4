package org.limedry.study.fit;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * Walks to the unknowns that the readings and the beliefs together make likeliest, with as few runs as it can.
 *
 * <p>Steps to the minimum of the straight law about the run at hand, held short by Levenberg and Marquardt's damping when a
 * step does not gain what it should; slopes are brought up to date by Broyden's rule and taken anew only where it matters:
 * when damping does not help twice, and once at the end, for what is left open. A library's optimiser would take all slopes
 * at every step.
 *
 * <p>Steps are measured in sigmas of what is left open, so that it does not matter how much that is: their root mean square
 * over the unknowns that move. A walk stops at the first step below {@value #CLOSE_ENOUGH}. Runs jitter, for coats are laid
 * on whole days and steps in time adapt: on the demo site the sum of squares jumps by one or so between neighbours. So it
 * also stops when a step below {@value #LOST_IN_JITTER} did not gain, with slopes of that place.
 *
 * <p><b>Source:</b> Madsen, Nielsen and Tingleff 2004, Methods for non-linear least squares problems, sections 3.2 and 3.5,
 * FROM MEMORY; the bounds are ours.
 */
final class FitSearch {
    private static final double CLOSE_ENOUGH = 0.1;
    private static final double LOST_IN_JITTER = 0.5;

    /** Slopes taken no farther away than this in each z are those of the place. */
    private static final double SAME_PLACE = 0.2;

    /** Longest step in z: two spreads are most of the range, and a straight law says nothing of what lies beyond. */
    private static final double LONGEST_STEP = 2.0;

    /** Share of the foreseen gain that a step must reach to be taken. */
    private static final double LEAST_GAIN = 0.1;

    private static final double FIRST_DAMPING = 0.5;
    private static final double DAMPING_FACTOR = 4.0;

    /** Steps and sets of slopes of one walk at most; laws that bend no more than those of the tests need a third of them. */
    private record Limits(int steps, int slopes) {}

    /** A first walk that follows errors as given would chase what the readings are wrong by together. */
    private static final Limits FIRST = new Limits(4, 0);

    private static final Limits LAST = new Limits(16, 4);

    private final FitRuns runs;
    private FitPoint here;
    private double damping;
    private int failed;
    private int steps;
    private int stepsBefore;
    private int slopesTaken;
    private boolean converged;

    FitSearch(FitRuns runs, FitPoint start) {
        this.runs = runs;
        this.here = start;
    }

    /** Returns the steps tried so far. */
    int steps() {
        return stepsBefore + steps;
    }

    /** Tells whether the last walk came to where it stops of itself. */
    boolean isConverged() {
        return converged;
    }

    /** Walks on towards the minimum, as far as the slopes taken before lead. */
    FitPoint near(FitReadings readings) {
        return walk(readings, FIRST);
    }

    /** Walks on to the minimum; unless the walk came to its limits, the slopes of the result are of that place. */
    FitPoint to(FitReadings readings) {
        return walk(readings, LAST);
    }

    private FitPoint walk(FitReadings readings, Limits limits) {
        here = here.told(readings);
        damping = 0.0;
        failed = 0;
        stepsBefore += steps;
        steps = 0;
        slopesTaken = 0;
        while (true) {
            FitLaw law = new FitLaw(readings, here);
            boolean near = isNear(law.minimum());
            boolean own = hasOwnSlopes(law.minimum());
            converged = near && (own || limits.slopes() == 0);
            boolean stale = !own && (near || failed > 1);
            boolean spent = stale ? slopesTaken == limits.slopes() : steps == limits.steps();
            if (converged || spent) {
                return here;
            }
            if (stale) {
                takeSlopes();
            } else {
                tryStep(law, readings);
            }
        }
    }

    private boolean isNear(FitLaw.Minimum minimum) {
        double sigmas = sigmas(minimum.step(), minimum);
        return sigmas < CLOSE_ENOUGH || (failed > 0 && sigmas < LOST_IN_JITTER);
    }

    private boolean hasOwnSlopes(FitLaw.Minimum minimum) {
        RealVector moved = new ArrayRealVector(here.slopes().movedTo(here.z()), false);
        return moved.getLInfNorm() <= SAME_PLACE || sigmas(moved, minimum) < LOST_IN_JITTER;
    }

    /** Returns the root mean square length of a step over the unknowns that move, in sigmas of what is left open. */
    private double sigmas(RealVector step, FitLaw.Minimum minimum) {
        int moving = 0;
        for (int k = 0; k < step.getDimension(); k++) {
            moving += here.slopes().isFlat(k) ? 0 : 1;
        }
        return minimum.sigmas(step) / Math.sqrt(Math.max(1, moving));
    }

    private void takeSlopes() {
        slopesTaken++;
        here = here.with(here.slopes().again(runs, here.z(), here.predicted()));
        failed = 0;
    }

    private void tryStep(FitLaw law, FitReadings readings) {
        steps++;
        RealVector whole = law.minimum(damping).step();
        RealVector step = whole.mapMultiply(Math.min(1.0, LONGEST_STEP / whole.getLInfNorm()));
        double[] z = step.add(new ArrayRealVector(here.z(), false)).toArray();
        double[] predicted = runs.at(z);
        double gain = FitRuns.isWhole(predicted)
                ? readings.cost(here.predicted(), here.z()) - readings.cost(predicted, z)
                : Double.NEGATIVE_INFINITY;
        if (gain > LEAST_GAIN * law.minimum().gain(step)) {
            here = new FitPoint(z, predicted, here.slopes().after(step.toArray(), here.predicted(), predicted));
            damping = damping > FIRST_DAMPING ? damping / DAMPING_FACTOR : 0.0;
            failed = 0;
        } else {
            damping = Math.max(FIRST_DAMPING, DAMPING_FACTOR * damping);
            failed++;
        }
    }
}
