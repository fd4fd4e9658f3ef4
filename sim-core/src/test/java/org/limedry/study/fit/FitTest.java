package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.study.Draw;
import org.limedry.study.StudyFixture;
import org.limedry.study.Uncertain;

/** The fit on made-up laws whose answer is known: a room that is always as warm as it began, and as wet as it leaks. */
final class FitTest {
    private static final int HOURS = 240;
    private static final List<Uncertain> UNKNOWNS = List.of(StudyFixture.START, StudyFixture.LEAKAGE);
    private static final ReadingErrors ERRORS = ReadingErrors.ordinary();
    private static final Fit.Runs RUNS = new Fit.Runs(StudyFixture::scenario, FitTest::madeUp, 2);

    private static Outcome madeUp(Scenario scenario) {
        RoomPlan room = scenario.rooms().get(0);
        Series celsius = same(room.startCelsius());
        Series humidity = same(0.9 - 0.1 * Math.log(room.leakagePerHour()));
        Series caught = same(1e-5 * room.leakagePerHour());
        Series none = same(0.0);
        History.RoomHours hours =
                new History.RoomHours("store", celsius, humidity, none, none, none, none, none, caught);
        List<Instant> times = new ArrayList<>();
        for (int hour = 0; hour < HOURS; hour++) {
            times.add(StudyFixture.FROM.plus(Duration.ofHours(hour)));
        }
        Outcome empty = StudyFixture.outcome(new Outcome.Ending.Complete());
        return new Outcome(
                empty.ending(),
                empty.reached(),
                List.of(),
                empty.account(),
                List.of(),
                List.of(),
                new History(times, none, none, List.of(hours), List.of(), List.of()),
                List.of(),
                empty.statistics());
    }

    private static Series same(double value) {
        return Series.of(DoubleStream.generate(() -> value).limit(HOURS).toArray());
    }

    private static List<Reading> celsius(int count, double value) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            readings.add(new Reading.RoomCelsius(
                    "hall", "store", StudyFixture.FROM.plus(Duration.ofHours(3L * i + 1)), value));
        }
        return readings;
    }

    // EXACT: the bucket has no offset; 40 readings of the litres that a leakage of 1.1 catches leave it little choice.
    @Test
    void fit_toBuckets_findsTheLeakageAndLeavesTheOtherUnknownAlone() {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Instant from = StudyFixture.FROM.plus(Duration.ofHours(24L * i));
            readings.add(new Reading.Bucket("store", from, from.plus(Duration.ofHours(24)), 1e-5 * 1.1 * 86_400.0));
        }

        FitResult result = FitFixture.fit(UNKNOWNS, readings, ERRORS, RUNS);

        double leakage = StudyFixture.LEAKAGE.in(result.fitted().apply(Draw.likely()));
        assertEquals(1.1, leakage, 0.1); // the belief pulls it towards 0.6 by what 8 buckets of 0.2 litres leave open
        assertTrue(result.fitted().spread(1) < 0.4, "spread " + result.fitted().spread(1));
        assertEquals(1.0, result.fitted().spread(0), 1e-6); // no reading touches the start
        assertEquals(List.of(StudyFixture.START), result.untold());
    }

    // EXACT: with an offset of 0.5 K that all readings of a logger share, no number of readings tells the start better
    // than
    // to about that: z has slope 4 K for half the chance, so 0.5 K is worth a spread of 0.5 / (2 * 4 * 0.3989) = 0.157.
    @Test
    void fit_toOneLogger_isNoBetterThanItsOffset() {
        FitResult few = FitFixture.fit(UNKNOWNS, celsius(4, 7.0), ERRORS, RUNS);
        FitResult many = FitFixture.fit(UNKNOWNS, celsius(70, 7.0), ERRORS, RUNS);

        assertTrue(many.fitted().spread(0) < few.fitted().spread(0));
        assertEquals(0.157, many.fitted().spread(0), 0.03); // 70 readings of 0.5 K on top, slope taken at z = 0
        assertEquals(7.0, StudyFixture.START.in(many.fitted().apply(Draw.likely())), 0.2);
    }

    // EXACT: hand-worked Gauss: one linear unknown, one reading. y = a z + e, a = slope over sigma, so z = a y / (1 +
    // a^2).
    @Test
    void fitted_likelyDraw_isTheMean_andSpreadIsOneOverRootOfOnePlusSlopeSquared() {
        FitResult result = FitFixture.fit(List.of(StudyFixture.START), celsius(1, 8.0), ERRORS, RUNS);

        double slope = 2.0 * 3.5 / Math.sqrt(2.0 * Math.PI) / Math.hypot(0.5, 0.5); // mean of 4 K below and 3 K above
        assertEquals(1.0 / Math.sqrt(1.0 + slope * slope), result.fitted().spread(0), 0.01); // slope over a step of 0.2
        assertEquals(
                0.5, result.fitted().apply(Draw.likely()).quantile("start.store"), 0.02); // 8 C is what was believed
    }

    // A temperature in Fahrenheit cannot be explained by any start within 4 to 11 C.
    @Test
    void fit_toWrongUnits_isUnexplained() {
        FitResult result = FitFixture.fit(UNKNOWNS, celsius(20, 8.0 * 1.8 + 32.0), ERRORS, RUNS);

        assertEquals(
                List.of("room temperature, hall"),
                result.unexplained().stream().map(FitResult.Channel::name).toList());
    }

    // EXACT: threads share nothing.
    @Test
    void fit_onAnyNumberOfThreads_isTheSame() {
        FitResult one =
                FitFixture.fit(UNKNOWNS, celsius(9, 6.0), ERRORS, new Fit.Runs(RUNS.scenarios(), RUNS.simulation(), 1));
        FitResult three =
                FitFixture.fit(UNKNOWNS, celsius(9, 6.0), ERRORS, new Fit.Runs(RUNS.scenarios(), RUNS.simulation(), 3));

        assertEquals(one.fitted().mean(0), three.fitted().mean(0));
        assertEquals(one.fitted().root(0, 0), three.fitted().root(0, 0));
    }

    @Test
    void fit_toAReadingOfAnUnknownRoom_isRefused() {
        Reading reading = new Reading.RoomCelsius("hall", "attic", StudyFixture.FROM, 8.0);

        assertThrows(IllegalArgumentException.class, () -> FitFixture.fit(UNKNOWNS, List.of(reading), ERRORS, RUNS));
    }

    // EXACT: what was not fitted keeps its quantile.
    @Test
    void apply_leavesOtherKeysAlone() {
        FitResult result = FitFixture.fit(List.of(StudyFixture.START), celsius(3, 8.0), ERRORS, RUNS);

        Draw draw = result.fitted().apply(new Draw(Map.of("weather", 0.3, "start.store", 0.9)));

        assertEquals(0.3, draw.quantile("weather"));
        assertTrue(draw.quantile("start.store") > 0.5 && draw.quantile("start.store") < 0.9);
    }

    // EXACT: the law of the made-up run at the likely leakage of 0.6; of a law that passes 1 (leakage 0.2) a logger
    // reads 1.
    @Test
    void residual_ofAHumidityLogger_isAFractionOfOneAtMost() {
        List<Reading> one = List.of(new Reading.RoomHumidity("hall", "store", StudyFixture.FROM, 0.93));
        Draw tight = new Draw(Map.of("leakage.store", 0.0));

        FitResult likely = FitFixture.fit(UNKNOWNS, one, ERRORS, RUNS);
        FitResult full = FitFixture.fit(
                UNKNOWNS, one, ERRORS, new Fit.Runs(draw -> StudyFixture.scenario(tight), RUNS.simulation(), 1));

        assertEquals(0.9 - 0.1 * Math.log(0.6), likely.residuals().get(0).before(), 1e-12);
        assertTrue(likely.offsets().get("humidity.hall") < 0.0); // it reads less than the run says
        assertEquals(1.0, full.residuals().get(0).before());
        assertEquals("room humidity, hall", full.channels().get(0).name());
    }
}
