package org.limedry.study.odds;

import java.util.List;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;

/** A sum of curves, one for each unknown, through the dates of members by least squares. */
final class DateCurves {
    /** Members that lie apart for each coefficient, below which curves become straight lines, and below which there are none. */
    private static final int MEMBERS_PER_COEFFICIENT = 2;

    private static final int LARGEST_DEGREE = 2;

    private final double[][] legendre;
    private final double[] coefficients;
    private final int degree;
    private final double explained;

    private DateCurves(double[][] legendre, double[] coefficients, int degree, double explained) {
        this.legendre = legendre;
        this.coefficients = coefficients;
        this.degree = degree;
        this.explained = explained;
    }

    /**
     * Fits the curves.
     *
     * @param draws where the unknowns of each member lay
     * @param unknowns the unknowns
     * @param days date of each member, days
     */
    static DateCurves through(List<Draw> draws, List<Uncertain> unknowns, double[] days) {
        long apart = draws.stream()
                .map(draw -> unknowns.stream()
                        .map(unknown -> draw.quantile(unknown.key()))
                        .toList())
                .distinct()
                .count();
        int fits = ((int) apart / MEMBERS_PER_COEFFICIENT - 1) / Math.max(1, unknowns.size());
        int degree = Math.min(LARGEST_DEGREE, fits);
        if (degree < 1 || unknowns.isEmpty() || !(StatUtils.variance(days) > 0.0)) {
            return none();
        }
        double[][] rows = new double[days.length][unknowns.size() * degree];
        for (int m = 0; m < days.length; m++) {
            for (int i = 0; i < rows[m].length; i++) {
                double u = 2.0 * draws.get(m).quantile(unknowns.get(i / degree).key()) - 1.0;
                rows[m][i] = i % degree == 0 ? u : 1.5 * u * u - 0.5;
            }
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(days, rows);
        try {
            double explained = Math.max(0.0, Math.min(1.0, regression.calculateAdjustedRSquared()));
            return new DateCurves(rows, regression.estimateRegressionParameters(), degree, explained);
        } catch (SingularMatrixException e) {
            return none();
        }
    }

    private static DateCurves none() {
        return new DateCurves(new double[0][0], new double[0], 1, 0.0);
    }

    /** Returns how many curves there are: one for each unknown, or none if members are too few. */
    int count() {
        return legendre.length == 0 ? 0 : legendre[0].length / degree;
    }

    /** Returns the share of the variance that all curves hold, adjusted for their number. */
    double explained() {
        return explained;
    }

    /** Returns what the curve of an unknown adds to the date of each member, days. */
    double[] curve(int unknown) {
        double[] curve = new double[legendre.length];
        for (int m = 0; m < curve.length; m++) {
            for (int k = unknown * degree; k < (unknown + 1) * degree; k++) {
                curve[m] += coefficients[1 + k] * legendre[m][k];
            }
        }
        return curve;
    }

    /** Tells whether the date grows with an unknown. */
    boolean rises(int unknown) {
        return coefficients[1 + unknown * degree] > 0.0;
    }
}
