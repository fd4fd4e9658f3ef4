package org.limedry.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresFactory;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.units.Check;

/**
 * Brings the unknowns of a site to readings: regularised least squares.
 *
 * <p>Minimises {@code sum((reading - run - offset) / sigma)^2 + sum(offset / its sigma)^2 + sum(z^2)} over the unknowns z and one
 * offset for each logger and quantity, by Levenberg and Marquardt's method; what is left open is the covariance {@code (J^T J)^-1}
 * at the minimum. The last sum is what was believed before; an unknown that no reading touches keeps its range.
 *
 * <p><b>Source:</b> maximum a posteriori estimate with Laplace's approximation, Tarantola 2005, Inverse problem theory, sections
 * 3.2 and 6.22, FROM MEMORY. <b>Valid:</b> runs that bend little within what is left open. <b>Accuracy:</b> held by twin
 * experiments. An ensemble smoother would need no slopes but some hundred runs for the same.
 */
public final class Fit {
    /** Steps in z for slopes: a tenth of the range, large against the tolerance of a run. */
    private static final double SLOPE_STEP = 0.2;

    private static final double CLOSE_ENOUGH = 1e-2;
    private static final int MOST_EVALUATIONS = 40;
    private static final int MOST_ITERATIONS = 8;

    private final List<Uncertain> unknowns;
    private final List<Reading> readings;
    private final ReadingErrors errors;
    private final List<String> offsets;
    private final Function<Draw, double[]> misfits;
    private final int threads;

    private Fit(
            List<Uncertain> unknowns,
            List<Reading> readings,
            ReadingErrors errors,
            Function<Draw, double[]> misfits,
            int threads) {
        this.unknowns = List.copyOf(unknowns);
        this.readings = List.copyOf(readings);
        this.errors = errors;
        this.misfits = misfits;
        this.threads = threads;
        Set<String> names = new LinkedHashSet<>();
        readings.forEach(reading -> offsetOf(reading).ifPresent(names::add));
        this.offsets = List.copyOf(names);
    }

    /**
     * How the runs are made.
     *
     * @param scenarios makes the scenario of a draw, up to the last reading or later; called from several threads
     * @param simulation runs it; called from several threads
     * @param threads threads; at least 1; without influence on the result
     */
    public record Runs(Function<Draw, Scenario> scenarios, Function<Scenario, Outcome> simulation, int threads) {
        public Runs {
            Check.atLeast(threads, 1, "threads");
        }

        private double[] misfits(Draw draw, List<Reading> readings, ReadingErrors errors) {
            Scenario scenario = scenarios.apply(draw);
            Predictions predictions = new Predictions(scenario, simulation.apply(scenario));
            return readings.stream()
                    .mapToDouble(reading -> predictions.misfit(reading, errors))
                    .toArray();
        }
    }

    /**
     * Fits.
     *
     * @param unknowns what may move; each key once
     * @param readings what was read, within the run; at least one
     * @param errors how far readings may be off
     * @param runs how runs are made
     */
    public static FitResult of(List<Uncertain> unknowns, List<Reading> readings, ReadingErrors errors, Runs runs) {
        Check.notEmpty(unknowns, "unknowns");
        Check.notEmpty(readings, "readings");
        List<Reading> all = List.copyOf(readings);
        return new Fit(unknowns, all, errors, draw -> runs.misfits(draw, all, errors), runs.threads()).run();
    }

    private static Optional<String> offsetOf(Reading reading) {
        if (reading instanceof Reading.RoomCelsius air) {
            return Optional.of("celsius." + air.logger());
        } else if (reading instanceof Reading.RoomHumidity air) {
            return Optional.of("humidity." + air.logger());
        }
        return Optional.empty();
    }

    /** Returns the offset's spread over the reading's own error: what one unit of its z moves a misfit by. */
    private double offsetWeight(String offset) {
        return offset.startsWith("celsius.")
                ? errors.celsiusOffset() / errors.celsius()
                : errors.relativeHumidityOffset() / errors.relativeHumidity();
    }

    private FitResult run() {
        int count = unknowns.size() + offsets.size();
        RealVector start = new ArrayRealVector(count);
        RealVector target = new ArrayRealVector(readings.size() + count);
        LeastSquaresProblem problem = LeastSquaresFactory.create(
                new Model(),
                target,
                start,
                null,
                (iteration, before, now) -> iteration > 0
                        && before.getPoint().subtract(now.getPoint()).getLInfNorm() < CLOSE_ENOUGH,
                MOST_EVALUATIONS,
                MOST_ITERATIONS,
                true,
                null);
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer().optimize(problem);
        return result(optimum);
    }

    private FitResult result(LeastSquaresOptimizer.Optimum optimum) {
        RealMatrix jacobian = optimum.getJacobian();
        RealMatrix covariance = MatrixUtils.inverse(jacobian.transpose().multiply(jacobian));
        int own = unknowns.size();
        RealMatrix part = covariance.getSubMatrix(0, own - 1, 0, own - 1);
        RealMatrix root = new CholeskyDecomposition(part, 1e-9, 1e-12).getL();
        List<String> keys = unknowns.stream().map(Uncertain::key).toList();
        Fitted fitted = new Fitted(keys, optimum.getPoint().getSubVector(0, own), root);
        Map<String, Double> found = new HashMap<>();
        for (int i = 0; i < offsets.size(); i++) {
            String offset = offsets.get(i);
            double spread = offset.startsWith("celsius.") ? errors.celsiusOffset() : errors.relativeHumidityOffset();
            found.put(offset, optimum.getPoint().getEntry(own + i) * spread);
        }
        double[] before = misfits.apply(Draw.likely());
        double[] after = optimum.getResiduals().getSubVector(0, readings.size()).toArray();
        return new FitResult(
                unknowns, fitted, found, FitResult.Channel.of(readings, before, after), optimum.getIterations());
    }

    /** The run as least squares sees it: misfits of readings with the offsets taken off, then the beliefs. */
    private final class Model implements ValueAndJacobianFunction {
        @Override
        public Pair<RealVector, RealMatrix> value(RealVector point) {
            return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
        }

        @Override
        public RealVector computeValue(double[] point) {
            double[] misfit = misfits.apply(draw(point));
            double[] value = new double[readings.size() + point.length];
            for (int i = 0; i < misfit.length; i++) {
                value[i] = misfit[i] - offset(readings.get(i), point);
            }
            System.arraycopy(point, 0, value, readings.size(), point.length);
            return new ArrayRealVector(value, false);
        }

        @Override
        public RealMatrix computeJacobian(double[] point) {
            double[][] sides = sides(point);
            RealMatrix jacobian = new Array2DRowRealMatrix(readings.size() + point.length, point.length);
            for (int k = 0; k < unknowns.size(); k++) {
                for (int i = 0; i < readings.size(); i++) {
                    jacobian.setEntry(i, k, (sides[2 * k + 1][i] - sides[2 * k][i]) / SLOPE_STEP);
                }
            }
            for (int i = 0; i < readings.size(); i++) {
                int reading = i;
                offsetOf(readings.get(i))
                        .ifPresent(offset -> jacobian.setEntry(
                                reading, unknowns.size() + offsets.indexOf(offset), -offsetWeight(offset)));
            }
            for (int k = 0; k < point.length; k++) {
                jacobian.setEntry(readings.size() + k, k, 1.0);
            }
            return jacobian;
        }

        /** Returns the misfits half a step below and above the point, for one unknown after the other. */
        private double[][] sides(double[] point) {
            List<Draw> draws = new ArrayList<>();
            for (int k = 0; k < unknowns.size(); k++) {
                draws.add(draw(moved(point, k, -0.5 * SLOPE_STEP)));
                draws.add(draw(moved(point, k, 0.5 * SLOPE_STEP)));
            }
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                return pool.submit(() -> IntStream.range(0, draws.size())
                                .parallel()
                                .mapToObj(i -> misfits.apply(draws.get(i)))
                                .toArray(double[][]::new))
                        .join();
            } finally {
                pool.shutdownNow();
            }
        }

        private double[] moved(double[] point, int unknown, double by) {
            double[] moved = point.clone();
            moved[unknown] += by;
            return moved;
        }

        private Draw draw(double[] point) {
            Map<String, Double> quantiles = new HashMap<>();
            for (int k = 0; k < unknowns.size(); k++) {
                quantiles.put(unknowns.get(k).key(), Fitted.quantile(point[k]));
            }
            return new Draw(quantiles);
        }

        private double offset(Reading reading, double[] point) {
            return offsetOf(reading)
                    .map(offset -> offsetWeight(offset) * point[unknowns.size() + offsets.indexOf(offset)])
                    .orElse(0.0);
        }
    }
}
