package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.Test;
import org.limedry.lime.HandTest;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.FitFixture.Said;

/** Points drawn from what is left open, against closed forms and sums over a fine grid of the same made-up laws. */
final class FitDrawsTest {
    private static final int MANY = 1000;

    /** Error of a mean of that many points that hang together a little, in their spread; four sigma. */
    private static final double SAMPLING = 0.15;

    private static FitResult fit(int unknowns, List<Reading> readings, Fit.Runs runs, int points) {
        return Fit.of(FitFixture.unknowns(unknowns), readings, FitFixture.ERRORS, runs, points);
    }

    private static double[] column(FitResult result, int unknown) {
        return result.fitted().points().stream()
                .mapToDouble(point -> point[unknown])
                .toArray();
    }

    /** EXACT: normal algebra. One face of sigma 1 reads 2 z, so information is 1 + 4 and the mean 2 m / 5. */
    @Test
    void straightLaw_leavesOpenWhatTheAlgebraSays() {
        FitResult result =
                fit(1, List.of(FitFixture.face(0, 100, 1.5)), FitFixture.runs(z -> Said.faces(2.0 * z[0])), MANY);

        double[] z = column(result, 0);
        double spread = 1.0 / Math.sqrt(5.0);
        assertEquals(MANY, z.length);
        assertEquals(0.6, StatUtils.mean(z), SAMPLING * spread);
        assertEquals(spread, Math.sqrt(StatUtils.variance(z)), SAMPLING * spread);
        assertEquals(0.6, result.fitted().mean(0), 1e-6);
    }

    /** COMPUTED: sums over a grid of 0.01 in both unknowns; the ridge is bent, so that the straight law misses its arms. */
    @Test
    void bentRidge_isFollowedAlongItsArms() {
        Fit.Runs runs = FitFixture.runs(z -> Said.faces(5.0 * ridge(z[0], z[1])));
        FitResult result = fit(2, List.of(FitFixture.face(0, 100, 5.0)), runs, MANY);

        ToDoubleBiFunction<Double, Double> cost = (a, b) -> a * a + b * b + Math.pow(5.0 - 5.0 * ridge(a, b), 2.0);
        double[] first = column(result, 0);
        double[] second = column(result, 1);
        assertEquals(mean(cost, 0, 1), StatUtils.mean(first), SAMPLING * Math.sqrt(variance(cost, 0)));
        assertEquals(Math.sqrt(variance(cost, 0)), Math.sqrt(StatUtils.variance(first)), 0.1);
        assertEquals(mean(cost, 1, 1), StatUtils.mean(second), SAMPLING * Math.sqrt(variance(cost, 1)));
        assertEquals(Math.sqrt(variance(cost, 1)), Math.sqrt(StatUtils.variance(second)), 0.1);
        double[] ridge = IntStream.range(0, MANY)
                .mapToDouble(i -> ridge(first[i], second[i]))
                .toArray();
        assertEquals(1.0, new Percentile().evaluate(ridge, 50.0), 0.1);
        assertTrue(Math.sqrt(StatUtils.variance(ridge)) < 0.3); // a fifth from the reading
    }

    /** COMPUTED: the sum over z from -8 to 8 in steps of 0.001 of the normal law times that of a hand with an error of 0.25. */
    @Test
    void handTest_cutsOffOneSide() {
        FitResult result = fit(
                1,
                List.of(FitFixture.hand(300, HandTest.Result.HARD)),
                FitFixture.runs(z -> new Said(hour -> 0.0, Map.of(), 0.0, z[0] - 0.5)),
                MANY);

        NormalDistribution hand = new NormalDistribution(null, 0.0, 1.0);
        double sum = 0.0;
        double first = 0.0;
        for (double z = -8.0; z < 8.0; z += 0.001) {
            double weight = Math.exp(-0.5 * z * z) * hand.cumulativeProbability((z - 0.5) / 0.25);
            sum += weight;
            first += weight * z;
        }
        assertEquals(first / sum, StatUtils.mean(column(result, 0)), 0.08);
    }

    /** EXACT: of an unknown of which nothing is told each slice of its chance has one point. */
    @Test
    void untoldUnknown_isSpreadOverItsRange() {
        FitResult result =
                fit(2, List.of(FitFixture.face(0, 100, 1.0)), FitFixture.runs(z -> Said.faces(3.0 * z[0])), 16);

        Set<Integer> slices = new HashSet<>();
        Arrays.stream(column(result, 1)).forEach(z -> slices.add((int) (16.0 * Fitted.quantile(z))));
        assertEquals(16, slices.size());
        assertEquals(List.of("u1"), result.untold().stream().map(Uncertain::key).toList());
    }

    /** EXACT: of a law that no unknown moves nothing is told, and every unknown is spread over its range. */
    @Test
    void nothingTold_leavesAllRangesAsTheyWere() {
        FitResult result = fit(2, List.of(FitFixture.face(0, 100, 0.3)), FitFixture.runs(z -> Said.faces(0.0)), 16);

        assertEquals(2, result.untold().size());
        double[] z = column(result, 0);
        assertEquals(0.0, StatUtils.mean(z), 1e-3); // the middles of slices are even about 0; four decimals kept
        assertEquals(Fitted.z(1.0 / 32.0), StatUtils.min(z), 1e-4);
    }

    /** EXACT: the same runs in the same order. */
    @Test
    void threads_doNotMatter() {
        Fit.Runs two = FitFixture.runs(z -> Said.faces(z[0] + z[1] * z[1], z[1]));
        Fit.Runs one = new Fit.Runs(two.scenarios(), two.simulation(), 1);
        List<Reading> readings = List.of(FitFixture.face(0, 100, 1.0), FitFixture.face(1, 100, 0.5));

        FitResult a = fit(2, readings, one, 8);
        FitResult b = fit(2, readings, two, 8);

        for (int i = 0; i < 8; i++) {
            assertArrayEquals(a.fitted().points().get(i), b.fitted().points().get(i));
        }
        assertEquals(a.runs(), b.runs());
    }

    /** EXACT: a draw picks its point by its place, keeps what was not fitted, and without a place goes by the middle. */
    @Test
    void draw_picksItsPoint() {
        FitResult result =
                fit(1, List.of(FitFixture.face(0, 100, 1.5)), FitFixture.runs(z -> Said.faces(2.0 * z[0])), 4);
        double[] z = column(result, 0);

        Draw third = result.fitted().apply(new Draw(Map.of(Fitted.LEFT_OPEN, 0.625, "weather", 0.3)));

        assertEquals(Fitted.quantile(z[2]), third.quantile("u0"));
        assertEquals(0.3, third.quantile("weather"));
        assertEquals(
                Fitted.quantile(result.fitted().mean(0)),
                result.fitted().apply(Draw.likely()).quantile("u0"));
        assertEquals(
                Math.sqrt(StatUtils.populationVariance(z)),
                result.fitted().spread(0),
                1e-6); // the square kept finite adds 1e-9
    }

    /** EXACT: four errors of the hand away nothing is told at the fit, and what lies on the other side of the limit is cut off. */
    @Test
    void pointsThatLoseSpread_tellOfAnUnknown() {
        FitResult result = fit(
                1,
                List.of(FitFixture.hand(300, HandTest.Result.HARD)),
                FitFixture.runs(z -> new Said(hour -> 0.0, Map.of(), 0.0, 4.0 * z[0] + 1.0)),
                32);

        assertEquals(List.of(), result.untold());
        assertTrue(result.fitted().points().stream().allMatch(point -> point[0] > -0.5)); // a margin of four errors
    }

    /** EXACT: one in ten of the points lies below, one in ten above. */
    @Test
    void below_sharesOutThePoints() {
        FitResult result =
                fit(1, List.of(FitFixture.face(0, 100, 1.5)), FitFixture.runs(z -> Said.faces(2.0 * z[0])), 99);
        double[] z = column(result, 0);
        Arrays.sort(z);

        assertEquals(Fitted.quantile(z[9]), result.fitted().below(0, 0.1).quantile("u0"), 1e-12);
        assertEquals(Fitted.quantile(z[89]), result.fitted().below(0, 0.9).quantile("u0"), 1e-12);
    }

    /** EXACT: where the model does not explain the readings nothing is drawn. */
    @Test
    void badFit_drawsNothing() {
        List<Reading> torn = List.of(FitFixture.face(0, 100, 30.0), FitFixture.face(1, 100, -30.0));
        FitResult result = fit(1, torn, FitFixture.runs(z -> Said.faces(z[0], z[0])), 8);

        assertEquals(List.of(), result.fitted().points());
    }

    private static double ridge(double a, double b) {
        return a + 0.5 * (b + 1.0) * (b + 1.0);
    }

    private static double mean(ToDoubleBiFunction<Double, Double> cost, int unknown, int power) {
        double sum = 0.0;
        double moment = 0.0;
        for (double a = -5.0; a < 5.0; a += 0.01) {
            for (double b = -5.0; b < 5.0; b += 0.01) {
                double weight = Math.exp(-0.5 * cost.applyAsDouble(a, b));
                sum += weight;
                moment += weight * Math.pow(unknown == 0 ? a : b, power);
            }
        }
        return moment / sum;
    }

    private static double variance(ToDoubleBiFunction<Double, Double> cost, int unknown) {
        double mean = mean(cost, unknown, 1);
        return mean(cost, unknown, 2) - mean * mean;
    }
}
