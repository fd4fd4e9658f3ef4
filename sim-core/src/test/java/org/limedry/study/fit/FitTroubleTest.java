package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.Uncertain;

/** A fit that cannot go well says so and throws nothing; a wild reading is named. */
final class FitTroubleTest {
    private static final List<Uncertain> ONE = FitFixture.unknowns(1);
    private static final Fit.Runs STEEP = FitFixture.runs(z -> FitFixture.Said.faces(3.0 * z[0]));
    private static final List<Reading> SIX = List.of(FitFixture.face(0, 5, 6.0));

    /** The steep law by a solver that gives up for some z. */
    private static Fit.Runs givingUp(DoublePredicate givesUp) {
        return new Fit.Runs(
                STEEP.scenarios(),
                scenario -> givesUp.test(scenario.rooms().get(0).startCelsius()) ? gaveUp() : plain(scenario),
                2);
    }

    private static Outcome plain(Scenario scenario) {
        return STEEP.simulation().apply(scenario);
    }

    private static Outcome gaveUp() {
        return FitFixture.gaveUp();
    }

    @Test
    void fit_whoseLikelyRunGivesUp_keepsTheBeliefsAndExplainsNothing() {
        FitResult result = FitFixture.fit(ONE, SIX, FitFixture.ERRORS, givingUp(z -> true));

        assertEquals(FitResult.Ending.NO_LIKELY_RUN, result.ending());
        assertFalse(result.isConverged());
        assertEquals(1, result.runs());
        assertEquals(0.0, result.fitted().mean(0));
        assertEquals(1.0, result.fitted().spread(0));
        assertEquals(1, result.unexplained().size());
        assertTrue(Double.isNaN(result.residuals().get(0).after()));
        assertEquals(1.0, result.without(reading -> false).spread(0));
    }

    // EXACT: slopes of a straight law from one side are those from both, and the answer is mean 3 x 6 / 10.
    @Test
    void fit_withRunsThatGiveUpOnOneSideOfTheStart_takesTheSlopesFromTheOther() {
        FitResult below = FitFixture.fit(ONE, SIX, FitFixture.ERRORS, givingUp(z -> z < -0.1));
        FitResult above = FitFixture.fit(ONE, SIX, FitFixture.ERRORS, givingUp(z -> z > 0.1 && z < 0.5));

        assertTrue(below.isConverged() && above.isConverged());
        assertEquals(1.8, below.fitted().mean(0), 1e-9);
        assertEquals(1.8, above.fitted().mean(0), 1e-9);
        assertEquals(1.0 / Math.sqrt(10.0), above.fitted().spread(0), 1e-9);
    }

    // EXACT: where runs on both sides give up nothing is known of the unknown.
    @Test
    void fit_withRunsThatGiveUpOnBothSides_leavesTheUnknownAlone() {
        FitResult result = FitFixture.fit(ONE, SIX, FitFixture.ERRORS, givingUp(z -> Math.abs(z) > 0.1));

        assertEquals(0.0, result.fitted().mean(0));
        assertEquals(1.0, result.fitted().spread(0));
        assertEquals(List.of("face temperature, w0"), names(result.unexplained())); // 6 sigma
    }

    // The minimum at 1.8 cannot be run: the walk ends at its limits before it, at a run that was made.
    @Test
    void fit_whoseMinimumCannotBeRun_stopsAndSaysSo() {
        FitResult result = FitFixture.fit(ONE, SIX, FitFixture.ERRORS, givingUp(z -> z > 1.0));

        assertEquals(FitResult.Ending.STOPPED, result.ending());
        assertTrue(
                result.fitted().mean(0) > 0.4 && result.fitted().mean(0) <= 1.0,
                "mean " + result.fitted().mean(0));
        assertTrue(result.runs() < 60, "runs " + result.runs());
    }

    // A law of teeth, each 0.05 of z wide and 20 sigma high: no slope leads anywhere.
    @Test
    void fit_toALawOfTeeth_endsWithoutConverging() {
        Fit.Runs runs = FitFixture.runs(z ->
                FitFixture.Said.faces(3.0 * z[0] + 20.0 * (20.0 * z[0] - Math.floor(20.0 * z[0]))));

        FitResult result = FitFixture.fit(ONE, List.of(FitFixture.face(0, 5, 60.0)), FitFixture.ERRORS, runs);

        assertFalse(result.isConverged());
        assertEquals(1, result.unexplained().size());
    }

    // EXACT: two unknowns that the readings cannot tell apart share the answer, and each keeps root of (1 + a^2) / (1 +
    // 2 a^2).
    @Test
    void fit_ofTwoUnknownsThatOnlyTheirSumIsToldOf_keepsTheirDifferenceOpen() {
        Fit.Runs runs = FitFixture.runs(z -> FitFixture.Said.faces(1e4 * (z[0] + z[1])));

        FitResult result =
                FitFixture.fit(FitFixture.unknowns(2), List.of(FitFixture.face(0, 5, 1e4)), FitFixture.ERRORS, runs);

        assertTrue(result.isConverged());
        assertEquals(0.5, result.fitted().mean(0), 1e-6);
        assertEquals(0.5, result.fitted().mean(1), 1e-6);
        double spread = Math.sqrt((1.0 + 1e8) / (1.0 + 2e8));
        assertEquals(spread, result.fitted().spread(0), 1e-6);
        assertEquals(spread, result.fitted().spread(1), 1e-6);
        assertEquals(-1.0, result.fitted().root(1, 0) / result.fitted().spread(1), 1e-6); // they hang together
    }

    @Test
    void fit_toAReadingAfterTheRun_isRefused() {
        List<Reading> late = List.of(FitFixture.face(0, FitFixture.HOURS, 6.0));

        assertThrows(IllegalArgumentException.class, () -> FitFixture.fit(ONE, late, FitFixture.ERRORS, STEEP));
    }

    // EXACT: twenty readings agree on z = 0.5, one lies 8 sigma from them.
    @Test
    void wild_oneReadingFarFromTwentyThatAgree_isNamed() {
        List<Reading> readings = new ArrayList<>(IntStream.range(0, 20)
                .mapToObj(i -> FitFixture.face(0, 3 * i + i % 2, 1.5))
                .toList());
        Reading wild = FitFixture.face(0, 100, 1.5 + 8.0);
        readings.add(wild);

        FitResult result = FitFixture.fit(ONE, readings, FitFixture.ERRORS, STEEP);

        assertEquals(
                List.of(wild), result.wild().stream().map(Residual::reading).toList());
        assertTrue(result.unexplained().isEmpty()); // one of 21 is not enough for that
    }

    // EXACT: a bucket of 18.8 litres where 10 with a spread of 2 were believed, error 0.2. The fit follows it to within
    // half a
    // sigma, but it lies 8.8 / root of (2^2 + 0.2^2) = 4.378 from what was believed.
    @Test
    void wild_aBucketThatTheFitHadToFollow_isNamedAllTheSame() {
        Fit.Runs runs = FitFixture.runs(z -> new FitFixture.Said(hour -> 0.0, Map.of(), 10.0 + 2.0 * z[0], 0.0));

        FitResult result = FitFixture.fit(ONE, List.of(FitFixture.bucket(1, 18.8)), FitFixture.ERRORS, runs);

        Residual bucket = result.wild().get(0);
        assertEquals(8.8 / 0.2 / 101.0, bucket.sigmasAfter(), 1e-6); // 1 / (1 + a^2) of it, a = 10
        assertEquals(8.8 / Math.sqrt(4.04), bucket.sigmasFromTheOthers(), 1e-6);
    }

    private static List<String> names(List<FitResult.Channel> channels) {
        return channels.stream().map(FitResult.Channel::name).toList();
    }
}
