package org.limedry.study.airing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.limedry.study.airing.AiringFixture.COLD;
import static org.limedry.study.airing.AiringFixture.HEATED;
import static org.limedry.study.airing.AiringFixture.line;
import static org.limedry.study.airing.AiringFixture.quiet;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.limedry.study.airing.AiringStudy.Choice;

/** EXACT throughout: choices on made-up laws, worked out by hand. */
final class AiringStudyTest {
    private static final double[] HOURS = {0.0, 2.0, 4.0, 8.0, 12.0, 24.0};

    private static final AiringStudy FALLING = new AiringStudy(
            List.of(line(COLD, hours -> 80.0 - 2.0 * hours, HOURS), line(HEATED, hours -> 40.0 - 2.0 * hours, HOURS)),
            140.0);

    @Test
    void within_coldMakesIt_isColdAndNoLongerThanNeeded() {
        AiringFinding found = chosen(FALLING.within(65.0));

        assertEquals(COLD, found.level().heat());
        assertEquals(8.0, found.level().airing().doorHours());
    }

    @Test
    void within_onlyHeatMakesIt_isHeatedAndNoLongerThanNeeded() {
        AiringFinding found = chosen(FALLING.within(37.0));

        assertEquals(HEATED, found.level().heat());
        assertEquals(2.0, found.level().airing().doorHours());
    }

    // Open day and night it would be ready in no time, but nobody leaves a door open by night.
    @Test
    void within_onlyByNight_isTooLateAndTellsTheSoonestByDay() {
        Choice.TooLate late = assertInstanceOf(Choice.TooLate.class, FALLING.within(10.0));

        assertEquals(16.0, late.soonest().days());
        assertEquals(12.0, late.soonest().level().airing().doorHours());
    }

    // Idle 80 days, best 16 by day: three quarters of 64 saved is 32 days left, first met by heat and 4 hours.
    @Test
    void best_fallingLaws_savesThreeQuarters() {
        AiringFinding found = chosen(FALLING.best());

        assertEquals(HEATED, found.level().heat());
        assertEquals(4.0, found.level().airing().doorHours());
    }

    @Test
    void best_nothingSavesADay_isToLeaveItShutAndCold() {
        AiringStudy study =
                new AiringStudy(List.of(line(COLD, hours -> 6.0, HOURS), line(HEATED, hours -> 5.0, HOURS)), 140.0);

        AiringFinding found = chosen(study.best());

        assertTrue(found.level().airing().isShut());
        assertEquals(COLD, found.level().heat());
    }

    // Idle counts as the 140 days of the run, best 40: 65 days or less is good, first met at 4 hours.
    @Test
    void best_shutNeverReady_countsItAsLongAsTheRun() {
        AiringStudy study = new AiringStudy(
                List.of(line(
                        COLD, hours -> hours == 0.0 ? Double.POSITIVE_INFINITY : 100.0 - 10.0 * hours, 0, 2, 4, 6)),
                140.0);

        assertEquals(4.0, chosen(study.best()).level().airing().doorHours());
    }

    @Test
    void best_nothingEverReady_isTooLate() {
        AiringStudy study = new AiringStudy(List.of(line(COLD, hours -> Double.POSITIVE_INFINITY, HOURS)), 140.0);

        assertInstanceOf(Choice.TooLate.class, study.best());
    }

    @Test
    void best_fastestDriesTooFast_isNotChosen() {
        AiringFinding.Watch fast = new AiringFinding.Watch(true, false);
        AiringFinding.Watch soft = new AiringFinding.Watch(false, true);
        AiringStudy study = new AiringStudy(
                List.of(new AiringLine(
                        COLD,
                        List.of(
                                AiringFixture.finding(Airing.SHUT, COLD, 10.0, soft),
                                quiet(Airing.doors(4.0), COLD, 20.0),
                                AiringFixture.finding(Airing.doors(8.0), COLD, 5.0, fast)))),
                140.0);

        assertEquals(4.0, chosen(study.best()).level().airing().doorHours());
    }

    @Test
    void best_noneIsSound_saysSo() {
        AiringFinding.Watch fast = new AiringFinding.Watch(true, false);
        AiringStudy study = new AiringStudy(
                List.of(new AiringLine(COLD, List.of(AiringFixture.finding(Airing.SHUT, COLD, 10.0, fast)))), 140.0);

        assertInstanceOf(Choice.NoneIsSound.class, study.best());
        assertInstanceOf(Choice.NoneIsSound.class, study.within(100.0));
    }

    @Test
    void within_fanOrDoors_isDoors() {
        AiringStudy study = new AiringStudy(
                List.of(new AiringLine(
                        COLD, List.of(quiet(Airing.fan(0.05), COLD, 10.0), quiet(Airing.doors(12.0), COLD, 10.0)))),
                140.0);

        assertEquals(12.0, chosen(study.within(11.0)).level().airing().doorHours());
    }

    @Test
    void heatSetback_heatedShutRoomIsSlower_isFound() {
        AiringStudy study = new AiringStudy(
                List.of(
                        line(COLD, hours -> 92.0 - hours, HOURS),
                        line(HEATED, hours -> hours == 0.0 ? 104.0 : 60.0 - 2.0 * hours, HOURS)),
                140.0);

        AiringStudy.HeatSetback pair = study.heatSetback().orElseThrow();

        assertEquals(92.0, pair.cold().days());
        assertEquals(104.0, pair.heated().days());
    }

    @Test
    void heatSetback_heatHelpsEverywhere_isNone() {
        assertEquals(Optional.empty(), FALLING.heatSetback());
    }

    private static AiringFinding chosen(Choice choice) {
        return assertInstanceOf(Choice.Do.class, choice).finding();
    }
}
