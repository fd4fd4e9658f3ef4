package org.limedry.study.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * How what a run says of each reading moves with each unknown, in the unit of the reading for one unit of z.
 *
 * <p>Central differences over {@value #STEP} in z, two runs for each unknown. Measured once, by a trial that is not kept, on the demo site of two rooms (28
 * days of hourly temperature and humidity, 11 unknowns): 40 runs with all unknowns moved at random, by a spread of 0.2 or
 * 0.4, lay from the straight law by a sum of 0.36 to 2.5 sigma squared with central differences over 0.8, 0.60 to 3.6 over
 * 0.3 and 0.75 to 4.3 over 0.2; over 1.2 there is next to nothing more to gain. Short steps see the jitter of runs: coats
 * are laid on whole days, steps in time adapt. Forward differences, one run for each, lay off by 0.77 to 4.6 over 0.4 and by
 * 0.75 to 6.3 over 0.3; and at the likely value they would see one half of the range only, and nothing of a range that ends
 * there. The curve of the normal quantile costs slopes 3 %.
 */
final class FitSlopes {
    static final double STEP = 0.8;

    private final double[][] columns;
    private final boolean[] flat;
    private final double[] centre;

    private FitSlopes(double[][] columns, boolean[] flat, double[] centre) {
        this.columns = columns;
        this.flat = flat;
        this.centre = centre;
    }

    /** Returns slopes of nothing. */
    static FitSlopes none(double[] z, int readings) {
        return new FitSlopes(new double[z.length][readings], new boolean[z.length], z.clone());
    }

    /** Takes all slopes about a point whose run is known. */
    static FitSlopes all(FitRuns runs, double[] z, double[] predicted) {
        return none(z, predicted.length).again(runs, z, predicted);
    }

    /** Takes the slopes of those unknowns anew that do not count as flat. */
    FitSlopes again(FitRuns runs, double[] z, double[] predicted) {
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k < z.length; k++) {
            if (!flat[k]) {
                points.add(moved(z, k, -0.5 * STEP));
                points.add(moved(z, k, 0.5 * STEP));
            }
        }
        List<double[]> sides = runs.at(points);
        double[][] fresh = columns.clone();
        int next = 0;
        for (int k = 0; k < z.length; k++) {
            if (!flat[k]) {
                fresh[k] = slope(sides.get(next), predicted, sides.get(next + 1), columns[k]);
                next += 2;
            }
        }
        return new FitSlopes(fresh, flat, z.clone());
    }

    /** Returns the slope between two runs; where one gave up that of the other side, where both did the one known before. */
    private static double[] slope(double[] below, double[] middle, double[] above, double[] known) {
        boolean fromBelow = FitRuns.isWhole(below);
        boolean fromAbove = FitRuns.isWhole(above);
        if (!fromBelow && !fromAbove) {
            return known;
        }
        double[] from = fromBelow ? below : middle;
        double[] to = fromAbove ? above : middle;
        double step = fromBelow && fromAbove ? STEP : 0.5 * STEP;
        double[] slope = new double[middle.length];
        for (int i = 0; i < slope.length; i++) {
            slope[i] = (to[i] - from[i]) / step;
        }
        return slope;
    }

    /**
     * Returns the slopes after a run at the far end of a step, which costs no further run: the least change that agrees with
     * it. After a step shorter than half the differences they stay, because runs jitter.
     *
     * <p><b>Source:</b> Broyden 1965, A class of methods for solving nonlinear simultaneous equations, Mathematics of
     * Computation 19, 577-593, FROM MEMORY.
     */
    FitSlopes after(double[] step, double[] from, double[] to) {
        double square = 0.0;
        for (double part : step) {
            square += part * part;
        }
        if (square < 0.25 * STEP * STEP) {
            return this;
        }
        double[] missed = new double[from.length];
        for (int i = 0; i < missed.length; i++) {
            missed[i] = to[i] - from[i] - at(i, step);
        }
        double[][] changed = columns.clone();
        for (int k = 0; k < columns.length; k++) {
            changed[k] = flat[k] ? columns[k] : changed(columns[k], missed, step[k] / square);
        }
        return new FitSlopes(changed, flat, centre);
    }

    private static double[] changed(double[] column, double[] missed, double share) {
        double[] changed = column.clone();
        for (int i = 0; i < missed.length; i++) {
            changed[i] += missed[i] * share;
        }
        return changed;
    }

    /** Returns these slopes with those of just these unknowns counted as flat; they are kept, should that change. */
    FitSlopes withFlat(List<Integer> unknowns) {
        boolean[] others = new boolean[flat.length];
        unknowns.forEach(k -> others[k] = true);
        return new FitSlopes(columns, others, centre);
    }

    /** Returns how far a point lies from where the slopes were taken. */
    double[] movedTo(double[] z) {
        double[] moved = new double[z.length];
        for (int k = 0; k < z.length; k++) {
            moved[k] = z[k] - centre[k];
        }
        return moved;
    }

    /** Returns by how much a step moves what the run says of a reading. */
    double at(int row, double[] step) {
        double sum = 0.0;
        for (int k = 0; k < step.length; k++) {
            sum += flat[k] ? 0.0 : columns[k][row] * step[k];
        }
        return sum;
    }

    /** Returns the slopes of all readings with one unknown. */
    double[] of(int unknown) {
        return flat[unknown] ? new double[columns[unknown].length] : columns[unknown].clone();
    }

    /** Tells whether readings count as not moving with an unknown. */
    boolean isFlat(int unknown) {
        return flat[unknown];
    }

    private static double[] moved(double[] point, int unknown, double by) {
        double[] moved = point.clone();
        moved[unknown] += by;
        return moved;
    }
}
