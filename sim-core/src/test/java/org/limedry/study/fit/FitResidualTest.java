package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.limedry.lime.HandTest;
import org.limedry.study.Uncertain;

/** What the likely and the fitted run say of each reading, in the unit of the reading. */
final class FitResidualTest {
    private static final List<Uncertain> ONE = FitFixture.unknowns(1);

    /** Room 10 C and 2 K for one z, bucket 5 litres, hand test on the limit and one e-fold for one z. */
    private static FitResult fit(Reading... readings) {
        return FitFixture.fit(
                ONE,
                List.of(readings),
                FitFixture.ERRORS,
                FitFixture.runs(z ->
                        new FitFixture.Said(hour -> 10.0 + 2.0 * z[0], Map.of(0, 4.0 * z[0]), 5.0 + z[0], z[0] - 0.5)));
    }

    // EXACT: a face of 4 K for one z, error 1 K, read at 6: z = 4 x 6 / 17, so the run says 96 / 17.
    @Test
    void residual_ofAFace_saysDegrees() {
        Residual residual = fit(FitFixture.face(0, 5, 6.0)).residuals().get(0);

        assertEquals(6.0, residual.measured());
        assertEquals(0.0, residual.before(), 1e-9);
        assertEquals(96.0 / 17.0, residual.after(), 1e-8);
        assertEquals(0.0, residual.offset());
        assertEquals(1.0, residual.sigma());
        assertEquals(6.0, residual.sigmasBefore(), 1e-9);
        assertEquals(6.0 / 17.0, residual.sigmasAfter(), 1e-8);
        assertEquals(1.0 / Math.sqrt(17.0), residual.share(), 1e-8);
    }

    // EXACT: one reading 3 K above the run, shared out by variance: z has 2 x 2 K2, the offset 0.25 and the reading
    // 0.25.
    @Test
    void residual_ofALogger_takesItsOffsetOff() {
        FitResult result = fit(FitFixture.air(5, 13.0));
        Residual residual = result.residuals().get(0);

        assertEquals(3.0 * 0.25 / 4.5, residual.offset(), 1e-8);
        assertEquals(residual.offset(), result.offsets().get("celsius.hall"));
        assertEquals(10.0 + 3.0 * 4.0 / 4.5, residual.after(), 1e-8);
        assertEquals(3.0 / 0.5, residual.sigmasBefore(), 1e-8); // nothing taken off
        assertEquals(3.0 * 0.25 / 4.5 / 0.5, residual.sigmasAfter(), 1e-8);
        assertEquals(3.0 / Math.sqrt(4.5), residual.sigmasFromTheOthers(), 1e-8);
    }

    // EXACT: of n readings that all lie 3 K above, the offset takes w^2 n / (1 + n w^2 + n a^2), w = 1 and a = 4 here.
    @Test
    void residual_ofALoggerWithManyReadings_hasOneOffset() {
        FitResult result = fit(
                IntStream.range(0, 10).mapToObj(i -> FitFixture.air(i, 13.0)).toArray(Reading[]::new));

        for (Residual residual : result.residuals()) {
            assertEquals(3.0 * 10.0 / 171.0, residual.offset(), 1e-8);
        }
    }

    // EXACT: 1 litre for one z and error 0.2: 25 / 26 of the 1.3 litres too many.
    @Test
    void residual_ofABucket_saysLitres() {
        Residual residual = fit(FitFixture.bucket(2, 6.3)).residuals().get(0);

        assertEquals(5.0, residual.before(), 1e-9);
        assertEquals(5.0 + 1.3 * 25.0 / 26.0, residual.after(), 1e-8);
        assertEquals(0.2, residual.sigma());
    }

    // COMPUTED: the root of the slope by Commons Math 3.6.1, Brent's rule on the normal law. Half an e-fold short of
    // the limit and one
    // e-fold for one z, error 0.25: a dent lies 2 - 4 z errors on its side, a hard coat 4 z - 2.
    @Test
    void residual_ofAHandTest_saysMarginAndSide() {
        Residual dents =
                fit(FitFixture.hand(5, HandTest.Result.DENTS)).residuals().get(0);
        FitResult hard = fit(FitFixture.hand(5, HandTest.Result.HARD));
        Residual moved = hard.residuals().get(0);

        double dented = -likelyWithHand(0.0, 2.0);
        double hardened = likelyWithHand(0.0, -2.0);
        assertEquals(-0.5, dents.before(), 1e-9);
        assertEquals(dented - 0.5, dents.after(), 1e-5);
        assertEquals(0.0, dents.sigmasAfter());
        assertEquals(-0.5, moved.before(), 1e-9);
        assertEquals(2.0, moved.sigmasBefore(), 1e-8);
        assertEquals(hardened - 0.5, moved.after(), 1e-5);
        assertEquals(0.0, moved.sigmasAfter());
        assertEquals(spread(1.0, 4.0 * hardened - 2.0), hard.fitted().spread(0), 1e-5);
    }

    /** Returns the likeliest z above the middle by beliefs, other readings and a hand that lies {@code side + 4 z} on its side. */
    private static double likelyWithHand(double others, double side) {
        return new BrentSolver(1e-12).solve(1000, z -> z + others * z - 4.0 * mills(side + 4.0 * z), 0.0, 10.0);
    }

    /** Returns the spread left of {@code 1 / spread^2 = others + 16 D}, D half the curve of the cost of the hand. */
    private static double spread(double others, double side) {
        double mills = mills(side);
        return 1.0 / Math.sqrt(others + 16.0 * mills * (mills + side));
    }

    private static double mills(double u) {
        NormalDistribution normal = new NormalDistribution(null, 0.0, 1.0);
        return normal.density(u) / normal.cumulativeProbability(u);
    }

    // COMPUTED: as above; two errors of the hand on the right side it moves little and takes little off the spread.
    @Test
    void fit_toAHandTestOnTheRightSide_hardlyMovesTheBeliefs() {
        FitResult result = fit(FitFixture.hand(5, HandTest.Result.DENTS));

        double z = -likelyWithHand(0.0, 2.0);
        assertEquals(z, result.fitted().mean(0), 1e-5);
        assertEquals(spread(1.0, 2.0 - 4.0 * z), result.fitted().spread(0), 1e-5);
    }

    // The buckets would make the coat ready, 2 - 0.5 e-folds past the limit; a dent says it is not.
    @Test
    void fit_toAHandTestThatBucketsContradict_weighsBoth() {
        FitResult result = fit(FitFixture.bucket(1, 7.0), FitFixture.hand(30, HandTest.Result.DENTS));

        // COMPUTED: as above; with y = 50 / 26 - z the buckets and beliefs weigh 26 y^2, the dent lies 2 - 4 z on its
        // side
        double y = likelyWithHand(25.0, 2.0 - 4.0 * 50.0 / 26.0);
        double z = 50.0 / 26.0 - y;
        assertEquals(z, result.fitted().mean(0), 1e-5);
        assertEquals(spread(26.0, 2.0 - 4.0 * z), result.fitted().spread(0), 1e-5);
        assertNotEquals(0.0, result.residuals().get(1).sigmasAfter());
    }

    // EXACT: 5 % of 4 litres and 0.2 litres, root of the sum of squares.
    @Test
    void sigma_ofABucket_isItsShareAndTheJug() {
        assertEquals(Math.sqrt(0.08), ReadingErrors.ordinary().sigma(FitFixture.bucket(1, 9.0), 4.0), 1e-15);
    }
}
