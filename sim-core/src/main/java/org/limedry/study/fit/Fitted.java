package org.limedry.study.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.limedry.study.Draw;
import org.limedry.study.MemberQuantile;
import org.limedry.units.Check;

/**
 * What readings left of the unknowns: where they lie now, and how they hang together.
 *
 * <p>Each unknown is told by {@code z = invNormal(quantile)}, which before any reading is normal with mean 0 and spread 1. After
 * them it is normal with this mean and with {@code root root^T} as covariance; or, where points were drawn from what is left
 * open, one of the points, and mean and root tell the same shortly: where it most likely is, and how far the points lie apart.
 */
public final class Fitted {
    /** Key by which a draw picks one of the points: as a quantile of their order, which means nothing. */
    public static final String LEFT_OPEN = "leftOpen";

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0.0, 1.0);

    /** Quantiles nearer to an end than this have no finite z. */
    private static final double NEAREST = 1e-9;

    /** Keeps the root of points that all lie in one plane finite. */
    private static final double LEAST_SQUARE = 1e-9;

    private final List<String> keys;
    private final RealVector mean;
    private final RealMatrix root;
    private final List<double[]> points;

    /**
     * Puts it together.
     *
     * @param keys keys of the unknowns
     * @param mean mean of z, in the order of the keys
     * @param root lower triangle of which the covariance of z is the square
     */
    public Fitted(List<String> keys, RealVector mean, RealMatrix root) {
        this(keys, mean, root, List.of());
    }

    /**
     * Puts it together from points drawn from what is left open.
     *
     * @param keys keys of the unknowns
     * @param mean most likely z, in the order of the keys
     * @param points z in the order of the keys; at least one point
     */
    public Fitted(List<String> keys, RealVector mean, List<double[]> points) {
        this(keys, mean, rootOf(points), points);
    }

    private Fitted(List<String> keys, RealVector mean, RealMatrix root, List<double[]> points) {
        Check.that(mean.getDimension() == keys.size(), "mean", "as long as there are keys", mean.getDimension());
        Check.that(root.getRowDimension() == keys.size(), "root", "as large as there are keys", root.getRowDimension());
        this.keys = List.copyOf(keys);
        this.mean = mean.copy();
        this.root = root.copy();
        this.points = points.stream().map(double[]::clone).toList();
    }

    /** Returns the root of the mean square of how far points lie from their middle. */
    private static RealMatrix rootOf(List<double[]> points) {
        Check.notEmpty(points, "points");
        RealVector middle = new ArrayRealVector(points.get(0).length);
        for (double[] point : points) {
            middle = middle.add(new ArrayRealVector(point).mapDivide(points.size()));
        }
        RealMatrix squares =
                MatrixUtils.createRealIdentityMatrix(middle.getDimension()).scalarMultiply(LEAST_SQUARE);
        for (double[] point : points) {
            RealVector off = new ArrayRealVector(point).subtract(middle);
            squares = squares.add(off.outerProduct(off).scalarMultiply(1.0 / points.size()));
        }
        return new CholeskyDecomposition(squares).getL();
    }

    /** Returns the same middle with points about it. */
    Fitted with(List<double[]> others) {
        return new Fitted(keys, mean, others);
    }

    /** Returns the keys of the unknowns. */
    public List<String> keys() {
        return keys;
    }

    /** Returns the mean of z of an unknown. */
    public double mean(int unknown) {
        return mean.getEntry(unknown);
    }

    /** Returns an entry of the lower triangle. */
    double root(int row, int column) {
        return root.getEntry(row, column);
    }

    /** Returns the points drawn, each as z in the order of the keys; none if what is left open is told by the root alone. */
    public List<double[]> points() {
        return points.stream().map(double[]::clone).toList();
    }

    /** Returns the spread left of an unknown, as a share of the spread before: 1 if the readings told nothing of it. */
    public double spread(int unknown) {
        return root.getRowVector(unknown).getNorm();
    }

    /** Returns one unknown at its likely value, the others at theirs. */
    public Draw likely(int unknown) {
        return only(unknown, mean(unknown));
    }

    /**
     * Returns one unknown where a share of what is left open lies below it, the others at their likely values.
     *
     * <p>Of points {@link MemberQuantile}; the likely value may lie beyond.
     *
     * @param unknown index of the unknown
     * @param share share, (0, 1)
     */
    public Draw below(int unknown, double share) {
        if (points.isEmpty()) {
            return only(unknown, mean(unknown) + spread(unknown) * NORMAL.inverseCumulativeProbability(share));
        }
        double[] z = points.stream().mapToDouble(point -> point[unknown]).toArray();
        return only(unknown, MemberQuantile.of(z, share));
    }

    private Draw only(int unknown, double z) {
        return new Draw(Map.of(keys.get(unknown), quantile(z)));
    }

    /**
     * Turns a draw of what could have been before the readings into one of what can still be: quantiles of one half become
     * the fitted values, the others spread about them as far as the readings leave open. Keys that were not fitted stay. A draw
     * with {@link #LEFT_OPEN} is given the point that it picks.
     */
    public Draw apply(Draw before) {
        if (!points.isEmpty() && before.quantiles().containsKey(LEFT_OPEN)) {
            int picked = (int) (before.quantile(LEFT_OPEN) * points.size());
            return with(before, new ArrayRealVector(points.get(Math.min(points.size() - 1, picked))));
        }
        double[] normal =
                keys.stream().mapToDouble(key -> z(before.quantile(key))).toArray();
        return with(before, new ArrayRealVector(root.operate(normal)).add(mean));
    }

    private Draw with(Draw before, RealVector z) {
        Map<String, Double> quantiles = new HashMap<>(before.quantiles());
        for (int i = 0; i < keys.size(); i++) {
            quantiles.put(keys.get(i), quantile(z.getEntry(i)));
        }
        return new Draw(quantiles);
    }

    static double z(double quantile) {
        return NORMAL.inverseCumulativeProbability(Math.max(NEAREST, Math.min(1.0 - NEAREST, quantile)));
    }

    static double quantile(double z) {
        return NORMAL.cumulativeProbability(z);
    }
}
