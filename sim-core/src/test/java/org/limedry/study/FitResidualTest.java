package org.limedry.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.lime.HandTest;

/** What the likely and the fitted run say of each reading, in the unit of the reading. */
final class FitResidualTest {
    private static final List<Uncertain> ONE = FitFixture.unknowns(1);

    /** Room 10 C and 2 K for one z, bucket 5 litres, hand test on the limit and one e-fold for one z. */
    private static FitResult fit(Reading... readings) {
        return Fit.of(
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
        assertTrue(residual.isOnRightSide());
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

    // EXACT: half an e-fold short of the limit. A dent agrees and says nothing more; a hard coat pulls by a = 4 for one
    // z:
    // the margin left is -0.5 / 17.
    @Test
    void residual_ofAHandTest_saysMarginAndSide() {
        Residual dents =
                fit(FitFixture.hand(5, HandTest.Result.DENTS)).residuals().get(0);
        FitResult hard = fit(FitFixture.hand(5, HandTest.Result.HARD));
        Residual wrong = hard.residuals().get(0);

        assertEquals(-0.5, dents.before(), 1e-9);
        assertEquals(-0.5, dents.after(), 1e-9);
        assertEquals(0.0, dents.sigmasAfter());
        assertTrue(dents.isOnRightSide());
        assertEquals(-0.5, wrong.before(), 1e-9);
        assertEquals(2.0, wrong.sigmasBefore(), 1e-8);
        assertEquals(-0.5 / 17.0, wrong.after(), 1e-8);
        assertFalse(wrong.isOnRightSide());
        assertEquals(1.0 / Math.sqrt(17.0), hard.fitted().spread(0), 1e-8);
    }

    // EXACT: a hand test on the right side takes nothing off the spread, but its slope is seen: 1 + 2 + 0 steps.
    @Test
    void fit_toAHandTestOnTheRightSide_leavesTheBeliefs() {
        FitResult result = fit(FitFixture.hand(5, HandTest.Result.DENTS));

        assertEquals(0.0, result.fitted().mean(0));
        assertEquals(1.0, result.fitted().spread(0));
        assertEquals(3, result.runs());
    }

    // EXACT: the buckets would make the coat ready, 2 - 0.5 e-folds past the limit; a dent says it is not.
    @Test
    void fit_toAHandTestThatBucketsContradict_weighsBoth() {
        FitResult result = fit(FitFixture.bucket(1, 7.0), FitFixture.hand(30, HandTest.Result.DENTS));

        // 25 (2 - z) - 16 (z - 0.5) - z = 0
        assertEquals(58.0 / 42.0, result.fitted().mean(0), 1e-8);
        assertEquals(1.0 / Math.sqrt(42.0), result.fitted().spread(0), 1e-8);
        assertFalse(result.residuals().get(1).isOnRightSide());
    }

    // EXACT: 5 % of 4 litres and 0.2 litres, root of the sum of squares.
    @Test
    void sigma_ofABucket_isItsShareAndTheJug() {
        assertEquals(Math.sqrt(0.08), ReadingErrors.ordinary().sigma(FitFixture.bucket(1, 4.0)), 1e-15);
    }
}
