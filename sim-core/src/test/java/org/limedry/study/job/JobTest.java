package org.limedry.study.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.simulation.Warning;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.ReadyRange;
import org.limedry.study.StudyFixture;

/** What is told of a whole job: its end, its risks, its gangs. EXACT throughout: counted by hand on made-up outcomes. */
final class JobTest {
    private static final Outcome.Ending COMPLETE = new Outcome.Ending.Complete();
    private static final ZoneId UTC = ZoneOffset.UTC;
    private static final CoatMortar MORTAR = new CoatMortar(
            "base",
            new Material("none", Closed.instance(), Closed.instance(), Closed.instance(), Closed.instance(), 1.6e6),
            300.0,
            180.0,
            0.0,
            30_000.0,
            true,
            4.0e-6);

    private static Instant day(double day) {
        return StudyFixture.FROM.plusSeconds(Math.round(86_400.0 * day));
    }

    private static Outcome ready(double... days) {
        CoatResult[] coats = Arrays.stream(days)
                .mapToObj(day -> StudyFixture.coat(1, StudyFixture.ready(day), false))
                .toArray(CoatResult[]::new);
        return StudyFixture.outcome(COMPLETE, coats);
    }

    private static EnsembleResult result(Outcome likely, Outcome... members) {
        return StudyFixture.result(likely, List.of(members));
    }

    // With four members the 1-in-5 value is the lowest, the 4-in-5 value the highest. Which coat is last changes.
    @Test
    void job_isReadyWithItsLastCoat_whicheverItIs() {
        EnsembleResult result = result(ready(10, 12), ready(9, 11), ready(20, 1), ready(13, 14), ready(12, 2));

        ReadyRange job = result.job().orElseThrow();

        assertEquals(Optional.of(day(12)), result.jobReady());
        assertEquals(
                List.of(Optional.of(day(11)), Optional.of(day(12)), Optional.of(day(20))),
                List.of(job.earliest(), job.likely(), job.latest()));
    }

    @Test
    void job_withACoatThatIsNeverReady_hasNoEnd() {
        assertEquals(Optional.empty(), result(ready(10, 99)).jobReady());
        assertEquals(Optional.empty(), result(ready(10, 12)).job());
    }

    // Frost: night of day 0 (23:00 to 01:00), night of day 1 twice, noon to noon: two nights. Haste: 2 days by
    // midnight.
    // Wet hours: the plastered wall's 7, not the ceiling's 99. Heat: 2 kW, but for a
    // moment between the first and the second of three hours: 1, 1 and 2 kWh by the mean of their ends.
    @Test
    void figures_countNightsDaysAndHeat() {
        Scenario scenario = StudyFixture.scenario(Draw.likely())
                .withCoats(List.of(new CoatPlan("north", 1, MORTAR, 0.01, 8.0, 0.0, new Laying.On(StudyFixture.FROM))));
        Outcome plain = ready(10);
        Outcome outcome = new Outcome(
                plain.ending(),
                plain.reached(),
                plain.coats(),
                plain.account(),
                List.of(),
                List.of(face("north", 7.0), face("ceiling", 99.0)),
                history(2000.0, 0.0, 2000.0, 2000.0),
                List.of(
                        warning(Warning.Kind.FROST_AIR, 23.0, 25.0),
                        warning(Warning.Kind.FROST_WET_FACE, 46.0, 48.0),
                        warning(Warning.Kind.FROST_AIR, 49.0, 60.0),
                        warning(Warning.Kind.TOO_FAST, 20.0, 30.0),
                        warning(Warning.Kind.TOO_COLD, 80.0, 99.0)),
                plain.statistics());

        JobFigures figures = JobFigures.of(scenario, outcome, UTC);

        assertEquals(new JobFigures(2, 7.0, plain.account().suckedBackKg(), 4.0, 2), figures);
    }

    private static Outcome.FaceResult face(String wall, double dewHours) {
        return new Outcome.FaceResult(wall, "store", 10.0, true, dewHours, 0.0, 0.0, 0.0, 0.0);
    }

    private static Warning warning(Warning.Kind kind, double fromHour, double untilHour) {
        return new Warning(kind, "north", day(fromHour / 24.0), day(untilHour / 24.0), 1.0);
    }

    private static History history(double... heaterWatts) {
        Series heat = Series.of(heaterWatts);
        Series none = Series.of(new double[heaterWatts.length]);
        return new History(
                List.of(),
                none,
                none,
                List.of(new History.RoomHours("store", none, none, none, none, none, none, heat, none)),
                List.of(),
                List.of());
    }

    // 5 October 2026 is a Monday. Gang x is on site on days 0, 1, 10 and 11, and free for eight days between.
    @Test
    void gang_isFreeBetweenItsCoats() {
        Outcome outcome = StudyFixture.outcome(
                COMPLETE, worked("x", 0, 1, 1.5), worked("y", 0, 0, 0.5), worked("x", 10, 11, 2.0), unbegun());

        List<GangTime> times = GangTime.of(outcome, UTC, 5);

        GangTime.Stretch free = new GangTime.Stretch(LocalDate.of(2026, 10, 7), LocalDate.of(2026, 10, 14));
        assertEquals(List.of(new GangTime("x", 4, List.of(free)), new GangTime("y", 1, List.of())), times);
        assertEquals(List.of(), GangTime.of(outcome, UTC, 9).get(0).free());
    }

    private static CoatResult worked(String gang, int begun, int laid, double days) {
        Outcome.Work work = new Outcome.Work(gang, day(begun), day(begun), days);
        return new CoatResult(
                "north", 1, Optional.of(day(laid)), Optional.empty(), false, Optional.of(work), 3.0, 1.0, 0.0);
    }

    private static CoatResult unbegun() {
        return new CoatResult("north", 2, Optional.empty(), Optional.empty(), false, Optional.empty(), 0.0, 0.0, 0.0);
    }

    @Test
    void draw_ofSomeKeys_leavesTheOthersLikely() {
        Draw draw = new Draw(Map.of("a", 0.1, "b", 0.9));

        assertEquals(new Draw(Map.of("b", 0.9)), draw.of(Set.of("b", "c")));
    }
}
