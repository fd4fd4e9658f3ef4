package org.limedry.study.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.util.Precision;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.Uncertain;

/**
 * Draws points from what readings leave open.
 *
 * <p>What a wall dries by follows from how wet it is and how fast it drinks together, so that what is left open lies along a bent
 * ridge, and points drawn from the straight law about the fit lie beside it. So a bent law ({@link FitSurface}) is made of the runs
 * that the fit made and of runs at points drawn from the straight law, and points are drawn from the bent one by a random walk
 * that costs no run; runs at those points mend the law, three times. Unknowns of which the readings tell nothing are a Latin hypercube
 * over their ranges.
 *
 * <p><b>Source:</b> random walk of Metropolis et al. 1953, J. Chem. Phys. 21, 1087-1092, FROM MEMORY; the surface and its rounds are
 * ours. <b>Accuracy:</b> COMPUTED, twin experiments with known truths: docs/fit-twins.md. Measured once, by a trial that is not kept, on
 * 16 fits of four twins: half the sum of squares of a run at a point drawn lay off the law by 1.1 (median of the spreads) with
 * 140 runs and by 0.9 with 190; points of the latter are worth two in three of exact ones (effective number by weights, median), in the
 * worst fit one in fifty.
 */
final class FitDraws {
    /** Any number does; it must never change, or every range after a fit does. */
    private static final int SEED = 20_171_002;

    /** Decimals of z that are kept, so that a point reads the same from the file in which it is kept. */
    private static final int DECIMALS = 4;

    /** Rounds of runs at points drawn, the first from the straight law. */
    private static final int ROUNDS = 4;

    /** With four rounds and the fit's own, runs outnumber the products of a dozen unknowns by two or three. Judgement, no source. */
    private static final int RUNS_PER_ROUND = 36;

    /** Steps of the walk before the first point and between two: by far more than it takes to forget. */
    private static final int STEPS = 1000;

    /**
     * Length of a step times the root of the number of coordinates; 2.4 is best for a normal law (Gelman, Roberts and Gilks 1996,
     * Efficient Metropolis jumping rules, FROM MEMORY), a bent one takes less.
     */
    private static final double STEP = 2.0;

    private final List<Uncertain> unknowns;
    private final FitRuns runs;
    private final FitReadings readings;
    private final FitPoint found;
    private final double[] middle;
    private final int[] told;
    private final RealMatrix root;

    FitDraws(List<Uncertain> unknowns, FitRuns runs, FitReadings readings, FitPoint found) {
        this.unknowns = unknowns;
        this.runs = runs;
        this.readings = readings;
        this.found = found;
        this.middle = found.z();
        this.told = told(found, unknowns.size());
        this.root = new FitLaw(readings, found).minimum().root().getSubMatrix(told, told);
    }

    /** Returns the unknowns of which the readings tell something; all of them if there is none, since a walk needs room. */
    private static int[] told(FitPoint found, int count) {
        int[] told =
                IntStream.range(0, count).filter(k -> !found.slopes().isFlat(k)).toArray();
        return told.length > 0 ? told : IntStream.range(0, count).toArray();
    }

    /** Returns points, each as z of the unknowns; the same whatever the number of threads. */
    List<double[]> points(int count) {
        MersenneTwister random = new MersenneTwister(SEED);
        List<double[]> drawn = IntStream.range(0, RUNS_PER_ROUND)
                .mapToObj(i -> IntStream.range(0, told.length)
                        .mapToDouble(k -> random.nextGaussian())
                        .toArray())
                .toList();
        for (int round = 0; round < ROUNDS; round++) {
            runs.at(drawn.stream().map(this::likely).toList());
            FitSurface surface = new FitSurface(readings, samples());
            drawn = walk(surface, round + 1 < ROUNDS ? RUNS_PER_ROUND : count, random);
        }
        return spread(drawn);
    }

    /** Returns all runs made, in coordinates. */
    private List<FitSurface.Sample> samples() {
        double least = readings.cost(found.predicted(), middle);
        return runs.whole().stream()
                .map(run -> new FitSurface.Sample(coordinates(run.z()), run.predicted(), cost(run) - least))
                .toList();
    }

    private double cost(FitRuns.Run run) {
        return readings.cost(run.predicted().toArray(), run.z().toArray());
    }

    private RealVector coordinates(RealVector z) {
        RealVector off = new ArrayRealVector(told.length);
        for (int i = 0; i < told.length; i++) {
            off.setEntry(i, z.getEntry(told[i]) - middle[told[i]]);
        }
        MatrixUtils.solveLowerTriangularSystem(root, off);
        return off;
    }

    /** Returns z of coordinates, with unknowns of which nothing is told at their likely values. */
    private double[] likely(double[] at) {
        double[] z = new double[unknowns.size()];
        RealVector off = root.operate(new ArrayRealVector(at, false));
        for (int i = 0; i < told.length; i++) {
            z[told[i]] = middle[told[i]] + off.getEntry(i);
        }
        return z;
    }

    private List<double[]> walk(FitSurface surface, int count, MersenneTwister random) {
        List<double[]> points = new ArrayList<>();
        double[] at = new double[told.length];
        double cost = cost(surface, at);
        double length = STEP / Math.sqrt(told.length);
        while (points.size() < count) {
            for (int step = 0; step < STEPS; step++) {
                double[] next = at.clone();
                for (int k = 0; k < next.length; k++) {
                    next[k] += length * random.nextGaussian();
                }
                double other = cost(surface, next);
                if (Math.log(random.nextDouble()) < 0.5 * (cost - other)) {
                    at = next;
                    cost = other;
                }
            }
            points.add(at);
        }
        return points;
    }

    private double cost(FitSurface surface, double[] at) {
        RealVector z = new ArrayRealVector(likely(at), false);
        return surface.cost(at) + z.dotProduct(z);
    }

    /** Returns z of points drawn, with unknowns of which nothing is told spread over their ranges. */
    private List<double[]> spread(List<double[]> drawn) {
        List<Draw> before = Ensemble.over(unknowns, drawn.size(), SEED).draws();
        return IntStream.range(0, drawn.size())
                .mapToObj(i -> spread(likely(drawn.get(i)), before.get(i)))
                .toList();
    }

    private double[] spread(double[] told, Draw before) {
        return IntStream.range(0, told.length)
                .mapToDouble(k -> found.slopes().isFlat(k)
                        ? Fitted.z(before.quantile(unknowns.get(k).key()))
                        : told[k])
                .map(z -> Precision.round(z, DECIMALS))
                .toArray();
    }
}
