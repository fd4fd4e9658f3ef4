package org.limedry.study.fit;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The readings as a straight law of the unknowns about one run, with what is believed of the unknowns: a quadratic whose minimum
 * costs no run. A hand test ({@link HandLaw}) is no square: it is one about the place in question, as Newton's rule has it.
 */
final class FitLaw {
    /** Rounds of asking how hard hand tests pull: each round answers for the minimum of the one before. */
    private static final int MOST_ROUNDS = 20;

    /** A hand test that moves by less, in errors of the hand, pulls as before. */
    private static final double SAME_SIGMA = 1e-4;

    /** A hand test that tells less says what everybody knew. */
    private static final double LEAST_INFORMATION = 1e-100;

    /** Below this a share is rounding. */
    private static final double LEAST_SHARE = 1e-12;

    private final FitReadings readings;
    private final double[] z;
    private final double[] above;
    private final double[][] slopes;

    /**
     * A minimum.
     *
     * @param step from the point to the minimum, in z
     * @param information inverse of the covariance of z there
     */
    record Minimum(RealVector step, RealMatrix information) {
        /** Returns the length of a step in sigmas of what is left open. */
        double sigmas(RealVector other) {
            return Math.sqrt(other.dotProduct(information.operate(other)));
        }

        /** Returns by how much a step from the point lowers the sum of squares. */
        double gain(RealVector other) {
            double whole = sigmas(step);
            double left = sigmas(step.subtract(other));
            return whole * whole - left * left;
        }

        /**
         * Returns the lower triangle of which the covariance is the square. The information is never less than the unit matrix,
         * so its Cholesky root exists; from the last unknown to the first, because the inverse turns the triangle over.
         */
        RealMatrix root() {
            int count = step.getDimension();
            RealMatrix turned = new Array2DRowRealMatrix(count, count);
            for (int i = 0; i < count; i++) {
                for (int k = 0; k < count; k++) {
                    turned.setEntry(i, k, information.getEntry(count - 1 - i, count - 1 - k));
                }
            }
            RealMatrix lower = new CholeskyDecomposition(turned).getL();
            RealMatrix root = new Array2DRowRealMatrix(count, count);
            for (int k = 0; k < count; k++) {
                RealVector unit = new ArrayRealVector(count);
                unit.setEntry(k, 1.0);
                MatrixUtils.solveLowerTriangularSystem(lower, unit);
                for (int i = 0; i < count; i++) {
                    root.setEntry(count - 1 - k, count - 1 - i, unit.getEntry(i));
                }
            }
            return root;
        }
    }

    FitLaw(FitReadings readings, FitPoint point) {
        this.readings = readings;
        this.z = point.z();
        this.above = readings.above(point.predicted());
        this.slopes = new double[z.length][];
        for (int k = 0; k < z.length; k++) {
            slopes[k] = point.slopes().of(k);
            for (int i = 0; i < above.length; i++) {
                slopes[k][i] /= -readings.usedSigma(i);
            }
        }
    }

    /** Returns the minimum over all readings. */
    Minimum minimum() {
        return minimum(0.0);
    }

    /** Returns the minimum over all readings after a step held short by damping; 0 for not at all. */
    Minimum minimum(double damping) {
        return minimum(all(), damping);
    }

    /** Returns the minimum over some of the readings. */
    Minimum minimum(boolean[] kept) {
        return minimum(kept, 0.0);
    }

    private Minimum minimum(boolean[] kept, double damping) {
        double[] there = above;
        Minimum minimum = solved(kept, there, damping);
        for (int round = 1; round < MOST_ROUNDS; round++) {
            double[] then = after(minimum.step());
            if (isClose(there, then)) {
                return minimum;
            }
            there = then;
            minimum = solved(kept, there, damping);
        }
        return minimum;
    }

    /** Returns how far each reading lies above the run after a step. */
    private double[] after(RealVector step) {
        double[] there = above.clone();
        for (int i = 0; i < there.length; i++) {
            for (int k = 0; k < z.length; k++) {
                there[i] += slopes[k][i] * step.getEntry(k);
            }
        }
        return there;
    }

    /** Tells whether hand tests pull in both places as much; all other readings do anyway. */
    private boolean isClose(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            if (readings.reading(i) instanceof Reading.ByHand && Math.abs(one[i] - other[i]) > SAME_SIGMA) {
                return false;
            }
        }
        return true;
    }

    private Minimum solved(boolean[] kept, double[] there, double damping) {
        Rows rows = rows(kept, there);
        RealMatrix information = rows.columns().transpose().multiply(rows.columns());
        RealVector pull = rows.columns().preMultiply(rows.values());
        RealMatrix damped = information.copy();
        for (int k = 0; k < z.length; k++) {
            information.addToEntry(k, k, 1.0);
            damped.setEntry(k, k, (1.0 + damping) * information.getEntry(k, k));
        }
        RealVector back = pull.add(new ArrayRealVector(z, false)).mapMultiply(-1.0);
        return new Minimum(new CholeskyDecomposition(damped).getSolver().solve(back), information);
    }

    /** Readings as squares about a place, made independent: how far each is off at the point, and how that moves with z. */
    private record Rows(RealVector values, RealMatrix columns) {}

    private Rows rows(boolean[] kept, double[] there) {
        boolean[] used = used(kept);
        double[] values = above.clone();
        double[] weights = new double[above.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1.0;
            if (used[i] && readings.reading(i) instanceof Reading.ByHand hand) {
                double side = FitReadings.onItsSide(hand, there[i]);
                double toIts = FitReadings.onItsSide(hand, 1.0);
                double information = HandLaw.information(side);
                weights[i] = Math.sqrt(information);
                values[i] = information > LEAST_INFORMATION
                        ? weights[i] * (above[i] - there[i]) - toIts * HandLaw.pull(side) / weights[i]
                        : 0.0;
            }
        }
        RealMatrix columns = new Array2DRowRealMatrix(above.length, z.length);
        for (int k = 0; k < z.length; k++) {
            double[] column = slopes[k].clone();
            for (int i = 0; i < column.length; i++) {
                column[i] *= weights[i];
            }
            columns.setColumn(k, readings.whiten(column, used));
        }
        return new Rows(new ArrayRealVector(readings.whiten(values, used), false), columns);
    }

    /**
     * Returns what the readings could tell of an unknown if all others were known: its spread would be one over the root of one
     * plus this. Hand tests count like readings, which is the most they can tell.
     */
    double information(int unknown) {
        double sum = 0.0;
        for (double part : readings.whiten(slopes[unknown], all())) {
            sum += part * part;
        }
        return sum;
    }

    /**
     * Returns for each reading the share of its variance that the fit has not taken up, of one about the point: 1 for a reading
     * that had no say, near 0 for one that the fit had to follow. One minus its leverage in the words of regression.
     */
    double[] shareLeft() {
        boolean[] used = used(all());
        RealMatrix columns = rows(all(), above).columns();
        RealMatrix covariance = MatrixUtils.inverse(solved(all(), above, 0.0).information());
        for (int k = 0; k < z.length; k++) {
            columns.setColumn(k, readings.whiten(columns.getColumn(k), used));
        }
        double[] left = new double[above.length];
        Arrays.fill(left, 1.0);
        readings.groups().forEach(group -> {
            double weight = readings.offsetWeight(group);
            double offset = weight * weight / (1.0 + group.rows().size() * weight * weight);
            group.rows().forEach(row -> left[row] -= offset);
        });
        for (int i = 0; i < left.length; i++) {
            RealVector row = columns.getRowVector(i);
            left[i] = Math.max(LEAST_SHARE, left[i] - row.dotProduct(covariance.operate(row)));
        }
        return left;
    }

    private boolean[] used(boolean[] kept) {
        boolean[] used = readings.used(above);
        for (int i = 0; i < used.length; i++) {
            used[i] &= kept[i];
        }
        return used;
    }

    private boolean[] all() {
        boolean[] all = new boolean[above.length];
        Arrays.fill(all, true);
        return all;
    }
}
