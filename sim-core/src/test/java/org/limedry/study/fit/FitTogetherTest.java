package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Readings that are wrong together: told from what is left over, and what it does to the spread. */
final class FitTogetherTest {
    private static int hourly(int i) {
        return i;
    }

    /** No gap is like the next, so that nothing is told of neighbours. */
    private static int uneven(int i) {
        return i + i % 3 % 2;
    }

    private static List<Reading> readings(int count, IntUnaryOperator hour) {
        return IntStream.range(0, count)
                .mapToObj(i -> FitFixture.face(0, hour.applyAsInt(i), 0.0))
                .toList();
    }

    private static FitTogether of(double[] misfits, IntUnaryOperator hour) {
        return FitTogether.of(readings(misfits.length, hour), misfits);
    }

    private static double[] same(int count, double value) {
        double[] misfits = new double[count];
        Arrays.fill(misfits, value);
        return misfits;
    }

    // EXACT: r = 1 is cut at 0.97: root of 1.97 / 0.03; a level of 2 doubles it, a level of 1/2 does not halve it.
    @Test
    void of_misfitsThatAreAllTheSame_isTheMostThereCanBe() {
        assertEquals(0.97, of(same(24, 1.0), FitTogetherTest::hourly).lagCorrelation());
        assertEquals(
                Math.sqrt(1.97 / 0.03),
                of(same(24, 1.0), FitTogetherTest::hourly).factor(),
                1e-12);
        assertEquals(
                2.0 * Math.sqrt(1.97 / 0.03),
                of(same(24, -2.0), FitTogetherTest::hourly).factor(),
                1e-12);
        assertEquals(
                Math.sqrt(1.97 / 0.03),
                of(same(24, 0.5), FitTogetherTest::hourly).factor(),
                1e-12);
    }

    // EXACT: up and down in turn is r = -1, which counts as none.
    @Test
    void of_misfitsThatTakeTurns_isNoCorrelation() {
        double[] misfits =
                IntStream.range(0, 30).mapToDouble(i -> i % 2 == 0 ? 1.5 : -1.5).toArray();

        assertEquals(new FitTogether(0.0, 1.5), of(misfits, FitTogetherTest::hourly));
    }

    @Test
    void of_fewReadingsOrUnevenOnesOrTinyMisfits_isAlone() {
        assertEquals(FitTogether.ALONE, of(same(23, 1.0), FitTogetherTest::hourly));
        assertEquals(FitTogether.ALONE, of(same(240, 1.0), FitTogetherTest::uneven));
        assertEquals(FitTogether.ALONE, of(same(240, 1.0), i -> 0)); // all at once
        assertEquals(FitTogether.ALONE, of(same(24, 0.09), FitTogetherTest::hourly)); // within the errors whatever r is
    }

    // EXACT: three gaps of 40 still leave over nine tenths even; five of 40 do not.
    @Test
    void of_aLoggerThatMissedAFewReadings_isStillTold() {
        assertEquals(0.97, of(same(40, 1.0), i -> i + i / 10).lagCorrelation());
        assertEquals(FitTogether.ALONE, of(same(40, 1.0), i -> i + i / 7));
    }

    // EXACT: the law of the noise. 2000 readings tell r to about 0.02 (root of (1 - r^2) / n), 3 of that allowed.
    @Test
    void of_noiseWithAndWithoutMemory_findsTheMemory() {
        FitTogether white = of(FitFixture.errors(2000, 0.0, new SplittableRandom(1)), FitTogetherTest::hourly);
        FitTogether red = of(FitFixture.errors(2000, 0.8, new SplittableRandom(1)), FitTogetherTest::hourly);

        assertEquals(0.0, white.lagCorrelation(), 0.07);
        assertEquals(1.0, white.factor(), 0.1);
        assertEquals(0.8, red.lagCorrelation(), 0.05);
        assertEquals(3.0, red.factor(), 0.45); // root of 1.8 / 0.2
    }

    /** Returns in which share of 200 made-up sites the middle four fifths of what is left open hold the truth. */
    private static double coverage(int count, double memory, IntUnaryOperator hour) {
        int held = 0;
        for (int seed = 1; seed <= 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double truth = Fitted.z(random.nextDouble());
            double[] errors = FitFixture.errors(count, memory, random);
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                readings.add(FitFixture.face(0, hour.applyAsInt(i), 0.5 * truth + errors[i]));
            }
            Fitted fitted = FitFixture.fit(
                            FitFixture.unknowns(1),
                            readings,
                            FitFixture.ERRORS,
                            FitFixture.runs(z -> FitFixture.Said.faces(0.5 * z[0])))
                    .fitted();
            held += Math.abs(fitted.mean(0) - truth) <= 1.2816 * fitted.spread(0) ? 1 : 0;
        }
        return held / 200.0;
    }

    // EXACT: 80 % by construction; 200 sites tell that to 2.8 %, 3 of that allowed. Memory 0.8: nine readings tell as
    // much
    // as one. At uneven hours nothing is corrected, and what is left open is a third of what it should be.
    @Test
    void fit_toReadingsThatAreWrongTogether_holdsTheTruthAsOftenAsItSays() {
        double corrected = coverage(240, 0.8, FitTogetherTest::hourly);
        double uncorrected = coverage(240, 0.8, FitTogetherTest::uneven);

        assertEquals(0.80, corrected, 0.08);
        assertTrue(uncorrected < 0.5, "coverage " + uncorrected);
    }

    // EXACT: 80 % by construction; 200 sites tell that to 2.8 %, 3 of that allowed.
    @Test
    void fit_toReadingsThatAreWrongEachByItself_holdsTheTruthAsOftenAsItSays() {
        assertEquals(0.80, coverage(240, 0.0, FitTogetherTest::hourly), 0.08);
    }

    // EXACT: what is told of a channel comes from the first fit, with errors as given, and so does the verdict.
    @Test
    void fit_toReadingsThatAreWrongTogether_tellsSoAndJudgesByTheErrorsAsGiven() {
        double[] errors = FitFixture.errors(240, 0.8, new SplittableRandom(5));
        List<Reading> readings = IntStream.range(0, 240)
                .mapToObj(i -> FitFixture.face(0, i, errors[i]))
                .toList();

        FitResult.Channel channel = FitFixture.fit(
                        FitFixture.unknowns(1),
                        readings,
                        FitFixture.ERRORS,
                        FitFixture.runs(z -> FitFixture.Said.faces(0.5 * z[0])))
                .channels()
                .get(0);

        assertEquals(0.8, channel.lagCorrelation(), 0.12); // root of (1 - r^2) / n is 0.04
        double r = channel.lagCorrelation();
        assertEquals(Math.sqrt((1.0 + r) / (1.0 - r)), channel.errorFactor(), 0.3 * channel.errorFactor()); // level
        assertEquals(1.0, channel.after(), 0.3); // sigma as given, not a third of it
    }
}
