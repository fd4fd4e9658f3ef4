package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;

/** What a fit costs, and which unknowns it leaves alone. */
final class FitScreeningTest {
    /** Of each unknown what one unit of it moves its own face by, in sigma. */
    private static final double[] SLOPES = {3.0, 2.0, 1.5, 1.0, 0.8, 0.19, 0.1, 0.05, 0.0, 0.0, 0.0, 0.0};

    private static FitFixture.Said ownFaces(double[] z) {
        return FitFixture.Said.faces(
                IntStream.range(0, z.length).mapToDouble(k -> SLOPES[k] * z[k]).toArray());
    }

    private static Fit.Runs counted(Fit.Runs runs, AtomicInteger count) {
        return new Fit.Runs(
                runs.scenarios(),
                scenario -> {
                    count.incrementAndGet();
                    return runs.simulation().apply(scenario);
                },
                runs.threads());
    }

    // EXACT: the likely run, 2 x 12 for the first slopes, 1 step, 2 x 5 for the last slopes.
    @Test
    void fit_ofTwelveUnknownsOfWhichFiveMatter_takes36Runs() {
        List<Reading> readings = new ArrayList<>();
        for (int k = 0; k < SLOPES.length; k++) {
            readings.add(FitFixture.face(k, 5, 2.0 * SLOPES[k]));
        }
        AtomicInteger made = new AtomicInteger();

        FitResult result = FitFixture.fit(
                FitFixture.unknowns(12),
                readings,
                FitFixture.ERRORS,
                counted(FitFixture.runs(FitScreeningTest::ownFaces), made));

        assertEquals(36, result.runs());
        assertEquals(36, made.get());
        assertEquals(1, result.effort().steps());
        assertTrue(result.isConverged());
    }

    // EXACT: each unknown by itself: mean a y / (1 + a^2), spread 1 / root of (1 + a^2); below a^2 = 1 / 0.98^2 - 1 =
    // 0.0412
    // left alone.
    @Test
    void fit_ofTwelveUnknownsOfWhichFiveMatter_findsThemAndLeavesTheOthersAsTheyWere() {
        List<Reading> readings = new ArrayList<>();
        for (int k = 0; k < SLOPES.length; k++) {
            readings.add(FitFixture.face(k, 5, 2.0 * SLOPES[k]));
        }

        Fitted fitted = FitFixture.fit(
                        FitFixture.unknowns(12),
                        readings,
                        FitFixture.ERRORS,
                        FitFixture.runs(FitScreeningTest::ownFaces))
                .fitted();

        assertEquals(12, fitted.keys().size());
        for (int k = 0; k < 5; k++) {
            double square = SLOPES[k] * SLOPES[k];
            assertEquals(2.0 * square / (1.0 + square), fitted.mean(k), 1e-9); // rounding of quantiles
            assertEquals(1.0 / Math.sqrt(1.0 + square), fitted.spread(k), 1e-9);
        }
        for (int k = 5; k < 12; k++) {
            assertEquals(0.0, fitted.mean(k));
            assertEquals(1.0, fitted.spread(k));
        }
    }

    // EXACT: a^2 just above 0.0412, spread 1 / root of 1.0425.
    @Test
    void fit_ofAnUnknownThatLosesALittleOverTwoPercent_isKept() {
        double slope = Math.sqrt(0.0425);

        FitResult result = FitFixture.fit(
                FitFixture.unknowns(1),
                List.of(FitFixture.face(0, 5, 3.0)),
                FitFixture.ERRORS,
                FitFixture.runs(z -> FitFixture.Said.faces(slope * z[0])));

        assertEquals(1.0 / Math.sqrt(1.0425), result.fitted().spread(0), 1e-9);
        assertEquals(slope * 3.0 / 1.0425, result.fitted().mean(0), 1e-9);
    }

    // EXACT: 200 readings tell a shift of 0.05 K well, n a^2 = 200 x 0.01 = 2, but not against an offset of 0.5 K that
    // the logger may have: n a^2 / (1 + n w^2) = 2 / 201. So it is left alone.
    @Test
    void fit_ofAnUnknownThatLooksLikeTheOffsetOfALogger_isLeftAlone() {
        List<Reading> readings = IntStream.range(0, 200)
                .mapToObj(hour -> FitFixture.air(hour, 1.0))
                .toList();

        FitResult result = FitFixture.fit(
                FitFixture.unknowns(1),
                readings,
                FitFixture.ERRORS,
                FitFixture.runs(z -> FitFixture.Said.celsius(hour -> 0.05 * z[0])));

        assertEquals(1.0, result.fitted().spread(0));
        assertEquals(3, result.runs());
        assertEquals(200.0 / 201.0, result.offsets().get("celsius.hall"), 1e-9); // mean of 1 K against 0.5 K and 0.5 K
    }

    // COMPUTED: Commons Math 3.6.1, LevenbergMarquardtOptimizer at its own tolerances on the same law, in this test.
    // Within 0.2 of
    // what is left open: the fit stops at a root mean square of 0.1 over its five unknowns.
    @Test
    void fit_toABentLaw_agreesWithTheOptimiserOfALibraryInFewRuns() {
        for (int seed = 1; seed <= 5; seed++) {
            Bent law = new Bent(seed);
            FitResult result = FitFixture.fit(
                    FitFixture.unknowns(12), law.readings(), FitFixture.ERRORS, FitFixture.runs(law::said));
            double[] best = law.best();

            assertTrue(result.isConverged());
            assertTrue(result.runs() <= 45, "runs " + result.runs()); // PINNED: 37 to 42 over 30 seeds
            for (int k = 0; k < 12; k++) {
                assertEquals(
                        best[k], result.fitted().mean(k), 0.2 * result.fitted().spread(k), "unknown " + k);
            }
        }
    }

    /** Twenty faces, of which each is moved by five of twelve unknowns that work less the higher they are. */
    private static final class Bent {
        private static final int FACES = 20;
        private static final int MATTER = 5;

        private final double[][] weights = new double[FACES][MATTER];
        private final double[] measured = new double[FACES];

        Bent(int seed) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] truth = new double[12];
            for (int k = 0; k < MATTER; k++) {
                truth[k] = Fitted.z(random.nextDouble());
            }
            for (double[] row : weights) {
                for (int k = 0; k < MATTER; k++) {
                    row[k] = Fitted.z(random.nextDouble());
                }
            }
            for (int face = 0; face < FACES; face++) {
                measured[face] = face(face, truth) + Fitted.z(random.nextDouble());
            }
        }

        private double face(int face, double[] z) {
            double sum = 0.0;
            for (int k = 0; k < MATTER; k++) {
                sum += weights[face][k] * 2.5 * (1.0 - Math.exp(-0.4 * z[k]));
            }
            return sum;
        }

        FitFixture.Said said(double[] z) {
            return FitFixture.Said.faces(
                    IntStream.range(0, FACES).mapToDouble(i -> face(i, z)).toArray());
        }

        List<Reading> readings() {
            return IntStream.range(0, FACES)
                    .mapToObj(i -> FitFixture.face(i, 5, measured[i]))
                    .toList();
        }

        double[] best() {
            MultivariateJacobianFunction misfits = point -> {
                double[] z = point.toArray();
                RealMatrix slopes = new Array2DRowRealMatrix(FACES + 12, 12);
                double[] value = new double[FACES + 12];
                for (int i = 0; i < FACES; i++) {
                    value[i] = face(i, z);
                    for (int k = 0; k < MATTER; k++) {
                        slopes.setEntry(i, k, weights[i][k] * Math.exp(-0.4 * z[k]));
                    }
                }
                for (int k = 0; k < 12; k++) {
                    value[FACES + k] = z[k];
                    slopes.setEntry(FACES + k, k, 1.0);
                }
                return new Pair<>(new ArrayRealVector(value, false), slopes);
            };
            return new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(new double[12])
                            .model(misfits)
                            .target(new ArrayRealVector(measured).append(new ArrayRealVector(12)))
                            .maxEvaluations(1000)
                            .maxIterations(1000)
                            .build())
                    .getPoint()
                    .toArray();
        }
    }
}
