package org.limedry.study.airing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.limedry.study.airing.AiringFixture.COLD;
import static org.limedry.study.airing.AiringFixture.line;
import static org.limedry.study.airing.AiringFixture.quiet;
import static org.limedry.study.airing.AiringFixture.ranged;
import static org.limedry.study.airing.AiringFixture.with;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** EXACT throughout: marks on made-up laws, worked out by hand. */
final class AiringLineTest {
    private static final double ROUNDING = 1e-12; // a few roundings of numbers of order 1

    // Shut 40 days, so a step counts from 2 days; 1 day lost for each hour: 38 is reached at 2 hours, 0.03 m3/s.
    @Test
    void worksFrom_straightLaw_isWhereTheFirstStepThatCountsIsReached() {
        AiringLine line = line(COLD, hours -> 40.0 - hours, 0.0, 4.0, 8.0);

        assertEquals(0.03, line.worksFromM3PerS().orElseThrow(), ROUNDING);
    }

    @Test
    void worksFrom_nothingHelps_isEmpty() {
        AiringLine line = line(COLD, hours -> 40.0 - 0.1 * hours, 0.0, 4.0, 8.0);

        assertEquals(OptionalDouble.empty(), line.worksFromM3PerS());
    }

    // The wait that does not end has no place to measure from: the last level without an end is what is known.
    @Test
    void worksFrom_shutNeverReady_isTheLastLevelThatIsNotReadyEither() {
        AiringLine line = line(COLD, hours -> hours < 4.0 ? Double.POSITIVE_INFINITY : 90.0, 0.0, 2.0, 4.0);

        assertEquals(0.03, line.worksFromM3PerS().orElseThrow(), ROUNDING);
    }

    @Test
    void worksFrom_nothingShutWasTried_isEmpty() {
        AiringLine line = line(COLD, hours -> 40.0 - hours, 2.0, 8.0);

        assertEquals(OptionalDouble.empty(), line.worksFromM3PerS());
    }

    @Test
    void worksFrom_membersDisagree_isNoDifference() {
        RoomWait shut = ranged(40.0, List.of(20.0, 30.0, 40.0, 50.0, 60.0));
        RoomWait mixed = ranged(30.0, List.of(25.0, 35.0, 30.0, 40.0, 50.0));
        RoomWait clear = ranged(30.0, List.of(15.0, 25.0, 30.0, 40.0, 50.0));

        assertEquals(OptionalDouble.empty(), shutThen(shut, mixed).worksFromM3PerS());
        assertTrue(shutThen(shut, clear).worksFromM3PerS().isPresent());
    }

    private static AiringLine shutThen(RoomWait shut, RoomWait other) {
        return new AiringLine(
                COLD,
                List.of(with(quiet(Airing.SHUT, COLD, 1.0), shut), with(quiet(Airing.doors(4.0), COLD, 1.0), other)));
    }

    @Test
    void tooFast_secondLevel_isWhereItLies() {
        AiringFinding.Watch fast = new AiringFinding.Watch(true, false);
        AiringLine line = new AiringLine(
                COLD,
                List.of(
                        AiringFixture.finding(Airing.doors(8.0), COLD, 10.0, fast),
                        quiet(Airing.SHUT, COLD, 20.0),
                        AiringFixture.finding(Airing.doors(4.0), COLD, 12.0, fast)));

        assertEquals(0.05, line.tooFastFromM3PerS().orElseThrow(), ROUNDING);
    }

    @Test
    void setback_fallsThenRises_isFromTheBestToTheWorst() {
        AiringLine line = line(COLD, hours -> 80.0 + Math.abs(hours - 4.0) * 3.0, 0.0, 2.0, 4.0, 8.0, 12.0);

        AiringLine.Setback setback = line.setback().orElseThrow();

        assertEquals(4.0, setback.less().level().airing().doorHours());
        assertEquals(12.0, setback.more().level().airing().doorHours());
        assertTrue(setback.isByCold());
    }

    @Test
    void setback_waterComesIn_isNotByCold() {
        AiringFinding wet = with(quiet(Airing.doors(2.0), COLD, 90.0), new AiringFinding.Water(-50.0, 60.0, 0.0));
        AiringLine line = new AiringLine(COLD, List.of(quiet(Airing.SHUT, COLD, 57.0), wet));

        assertFalse(line.setback().orElseThrow().isByCold());
    }

    // 5 % of 80 days is 4 days: 3 more do not count.
    @Test
    void setback_smallRise_isNone() {
        AiringLine line = line(COLD, hours -> 80.0 + 3.0 * hours / 12.0, 0.0, 12.0);

        assertEquals(Optional.empty(), line.setback());
    }

    @Test
    void setback_readyOnlyWhenShut_isFound() {
        AiringLine line = line(COLD, hours -> hours > 0.0 ? Double.POSITIVE_INFINITY : 60.0, 0.0, 2.0);

        assertTrue(line.setback().isPresent());
    }

    @Property(tries = 200)
    void setback_moreAirAlwaysSooner_isNone(
            @ForAll @DoubleRange(min = 1.0, max = 130.0) double shut,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double lost) {
        AiringLine line = line(COLD, hours -> shut * Math.exp(-lost * hours), 0.0, 1.0, 2.0, 6.0, 12.0, 24.0);

        assertEquals(Optional.empty(), line.setback());
    }
}
