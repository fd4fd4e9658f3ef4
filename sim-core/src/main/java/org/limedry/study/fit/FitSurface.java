package org.limedry.study.fit;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What runs say of the readings as a bent law of some coordinates of the unknowns, with all products of two: made from runs that
 * were made, so that millions of points can be asked without a run.
 *
 * <p>Least squares over the runs, those near the minimum counting most, products held back by a ridge since there are hardly more
 * runs than products. Textbook algebra: a response surface of second order.
 */
final class FitSurface {
    /** Rise of the sum of squares over which the weight of a run falls by a factor e. Judgement, no source. */
    private static final double FADING_RISE = 120.0;

    /** Ridge on products, in units of one run of full weight. Judgement, no source. */
    private static final double RIDGE = 0.03;

    /** Ridge on the straight part: next to none, so that fewer runs than coordinates still have an answer. */
    private static final double LEAST_RIDGE = 1e-6;

    private final FitReadings readings;
    private final int coordinates;

    /** For each reading in its column: what stands before one, before each coordinate and before each product. */
    private final RealMatrix laws;

    private final List<ByHand> hands;

    /** Sum of squares of loggers and buckets: terms^T square terms. */
    private final RealMatrix square;

    private record ByHand(Reading.ByHand reading, double sigma, RealVector law) {}

    /**
     * A run in coordinates.
     *
     * @param at coordinates
     * @param predicted what it says of each reading
     * @param rise sum of squares above the minimum
     */
    record Sample(RealVector at, RealVector predicted, double rise) {}

    /**
     * Makes the law.
     *
     * @param readings the readings with their errors as used
     * @param samples runs; at least one
     */
    FitSurface(FitReadings readings, List<Sample> samples) {
        this.readings = readings;
        this.coordinates = samples.get(0).at().getDimension();
        this.laws = laws(samples);
        this.hands = hands();
        this.square = square();
    }

    private RealMatrix laws(List<Sample> samples) {
        int count = terms(new double[coordinates]).length;
        RealMatrix matrix = new Array2DRowRealMatrix(samples.size(), count);
        RealMatrix values = new Array2DRowRealMatrix(samples.size(), readings.size());
        for (int i = 0; i < samples.size(); i++) {
            double weight = Math.exp(-0.5 * samples.get(i).rise() / FADING_RISE);
            matrix.setRowVector(i, new ArrayRealVector(terms(samples.get(i).at().toArray())).mapMultiply(weight));
            values.setRowVector(i, samples.get(i).predicted().mapMultiply(weight));
        }
        RealMatrix normal = matrix.transpose().multiply(matrix);
        for (int k = 0; k < count; k++) {
            normal.addToEntry(k, k, k > coordinates ? RIDGE : LEAST_RIDGE);
        }
        return new CholeskyDecomposition(normal)
                .getSolver()
                .solve(matrix.transpose().multiply(values));
    }

    private double[] terms(double[] at) {
        double[] terms = new double[1 + coordinates + coordinates * (coordinates + 1) / 2];
        terms[0] = 1.0;
        int next = 1 + coordinates;
        for (int k = 0; k < coordinates; k++) {
            terms[1 + k] = at[k];
            for (int l = 0; l <= k; l++) {
                terms[next++] = at[k] * at[l];
            }
        }
        return terms;
    }

    private List<ByHand> hands() {
        return IntStream.range(0, readings.size())
                .filter(row -> readings.reading(row) instanceof Reading.ByHand)
                .mapToObj(row -> new ByHand(
                        (Reading.ByHand) readings.reading(row), readings.usedSigma(row), laws.getColumnVector(row)))
                .toList();
    }

    private RealMatrix square() {
        boolean[] used = new boolean[readings.size()];
        for (int row = 0; row < used.length; row++) {
            used[row] = !(readings.reading(row) instanceof Reading.ByHand);
        }
        RealMatrix columns = new Array2DRowRealMatrix(used.length, laws.getRowDimension());
        for (int k = 0; k < laws.getRowDimension(); k++) {
            double[] above = new double[used.length];
            for (int row = 0; row < above.length; row++) {
                double measured = k == 0 ? readings.reading(row).measured() : 0.0;
                above[row] = (measured - laws.getEntry(k, row)) / readings.usedSigma(row);
            }
            columns.setColumn(k, readings.whiten(above, used));
        }
        return columns.transpose().multiply(columns);
    }

    /** Returns what the readings alone cost, see {@link FitReadings#cost}. */
    double cost(double[] at) {
        RealVector terms = new ArrayRealVector(terms(at), false);
        double sum = terms.dotProduct(square.operate(terms));
        for (ByHand hand : hands) {
            double above = (hand.reading().measured() - hand.law().dotProduct(terms)) / hand.sigma();
            sum += HandLaw.cost(FitReadings.onItsSide(hand.reading(), above));
        }
        return sum;
    }
}
