package org.limedry.study.options;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;
import org.limedry.room.Opening;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.StudyFixture;

/** Ways of doing a job compared. EXACT: days are those that each test puts in. */
final class OptionsTest {
    private static final Instant END = StudyFixture.FROM.plus(Duration.ofDays(StudyFixture.RUN_DAYS));
    private static final double ROUNDING_DAYS = 1e-6; // milliseconds of the fixture

    private static Outcome outcome(double days) {
        return StudyFixture.outcome(
                new Outcome.Ending.Complete(), StudyFixture.coat(1, StudyFixture.ready(days), false));
    }

    private static EnsembleResult result(double likely, double... members) {
        return StudyFixture.result(
                outcome(likely),
                Arrays.stream(members).mapToObj(OptionsTest::outcome).toList());
    }

    private static Options against(EnsembleResult base) {
        return new Options(base, Set.of("north"), END);
    }

    @Test
    void saved_withoutMembers_isTheDifferenceOfTheLikelyDays() {
        Options.Saved saved = against(result(30.0)).saved(result(21.5), 0);

        assertEquals(8.5, saved.likely(), ROUNDING_DAYS);
        assertTrue(saved.low().isEmpty() && saved.high().isEmpty());
        assertFalse(saved.atLeast() || saved.atMost());
    }

    @Test
    void saved_ofAWayMovedLater_countsTheDaysWaited() {
        assertEquals(-61.0, against(result(30.0)).saved(result(11.0), 80).likely(), ROUNDING_DAYS);
    }

    @Test
    void saved_withMembers_isTakenMemberByMember() {
        Options.Saved saved =
                against(result(30.0, 20.0, 30.0, 40.0, 50.0)).saved(result(20.0, 15.0, 22.0, 29.0, 36.0), 0);

        assertEquals(5.0, saved.low().orElseThrow(), ROUNDING_DAYS); // differences 5, 8, 11, 14: place 0.2 * 5 = 1
        assertEquals(14.0, saved.high().orElseThrow(), ROUNDING_DAYS); // place 0.8 * 5 = 4
    }

    @Test
    void saved_againstAJobThatIsNeverReady_isAtLeast() {
        Options.Saved saved = against(result(999.0)).saved(result(20.0), 0);

        assertEquals(40.0, saved.likely(), ROUNDING_DAYS);
        assertTrue(saved.atLeast());
        assertFalse(saved.atMost());
    }

    @Test
    void saved_countsOnlyTheWallsAskedFor() {
        Options other = new Options(result(30.0), Set.of("south"), END);

        assertEquals(0.0, other.saved(result(10.0), 0).likely());
    }

    @Test
    void tie_withMembers_isADifferenceWithoutASureSign() {
        Options options = against(result(30.0, 30.0, 31.0, 32.0, 33.0));
        EnsembleResult one = result(20.0, 20.0, 21.0, 22.0, 23.0);
        EnsembleResult swings = result(19.0, 18.0, 23.0, 19.0, 26.0);
        EnsembleResult sure = result(17.0, 18.0, 18.0, 20.0, 20.0);

        assertTrue(options.isTie(one, swings));
        assertFalse(options.isTie(one, sure));
    }

    @Test
    void tie_withoutMembers_isADayOrATenth() {
        Options options = against(result(50.0));

        assertTrue(options.isTie(result(49.0), result(48.1)));
        assertFalse(options.isTie(result(49.0), result(47.9)));
        assertTrue(options.isTie(result(20.0), result(17.0)));
        assertFalse(options.isTie(result(20.0), result(16.5)));
    }

    @Test
    void measure_changesItsRoomAndNoOther() {
        Scenario scenario = StudyFixture.scenario(Draw.likely());
        RoomPlan store = scenario.rooms().get(0);
        Opening door = new Opening("door", 0.9, 2.0, 0.0, "N", Optional.empty(), Schedule.never());
        Opening inner = new Opening("inner", 0.8, 2.0, 0.0, "", Optional.of("hall"), Schedule.never());
        Scenario two = scenario.withRooms(List.of(store.withOpenings(List.of(door, inner))));
        Schedule always = Schedule.always(scenario.from(), scenario.until());

        Scenario open = new Measure("open", "store", Optional.of(always), List.of(), false, false).on(two);
        Scenario sheeted = new Measure("sheets", "store", Optional.of(always), List.of(), false, true).on(two);

        assertEquals(always, open.rooms().get(0).openings().get(0).open());
        assertEquals(Schedule.never(), open.rooms().get(0).openings().get(1).open());
        assertEquals(Schedule.never(), sheeted.rooms().get(0).openings().get(0).open());
        assertEquals(0.5 * store.leakagePerHour(), sheeted.rooms().get(0).leakagePerHour());
        assertThrows(
                IllegalArgumentException.class,
                () -> new Measure("x", "attic", Optional.empty(), List.of(), false, false).on(two));
    }
}
