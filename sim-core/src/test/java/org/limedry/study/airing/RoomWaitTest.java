package org.limedry.study.airing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.Outcome;
import org.limedry.study.EnsembleResult;
import org.limedry.study.StudyFixture;

/** EXACT throughout: days put in by each test. */
final class RoomWaitTest {
    private static final Set<String> NORTH = Set.of("north");
    private static final double MILLISECOND_DAYS = 1.0 / 86_400_000.0; // dates are kept to the millisecond here

    @Test
    void of_withoutMembers_isTheLastCoatOfTheLikelyRun() {
        RoomWait wait = RoomWait.of(result(12.0), NORTH, StudyFixture.FROM);

        assertEquals(12.0, wait.likelyDays().orElseThrow(), MILLISECOND_DAYS);
        assertFalse(wait.isRanged());
    }

    // Of four members the one-in-five place is the first, the four-in-five place the fourth: 0.2 and 0.8 times 5.
    @Test
    void of_fourMembers_isRangedAndTakesTheLikelyIn() {
        RoomWait wait = RoomWait.of(result(9.0, 10.0, 20.0, 30.0, 40.0), NORTH, StudyFixture.FROM);

        assertEquals(9.0, wait.earliestDays().orElseThrow(), MILLISECOND_DAYS);
        assertEquals(40.0, wait.latestDays().orElseThrow(), MILLISECOND_DAYS);
        assertTrue(wait.isRanged());
    }

    @Test
    void of_membersThatNeverEnd_hasNoLatest() {
        RoomWait wait = RoomWait.of(result(9.0, 10.0, 20.0, 30.0, 999.0), NORTH, StudyFixture.FROM);

        assertEquals(OptionalDouble.empty(), wait.latestDays());
        assertEquals(Double.POSITIVE_INFINITY, wait.memberDays().get(3));
    }

    @Test
    void of_coatsOfOtherWalls_areNotWaitedFor() {
        assertEquals(
                OptionalDouble.empty(),
                RoomWait.of(result(12.0), Set.of("south"), StudyFixture.FROM).likelyDays());
    }

    @Test
    void differsClearly_endlessAgainstEndless_doesNot() {
        RoomWait endless = new RoomWait(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));

        assertFalse(endless.differsClearlyFrom(endless));
    }

    private static EnsembleResult result(double likely, double... members) {
        return StudyFixture.result(
                outcome(likely),
                DoubleStream.of(members).mapToObj(RoomWaitTest::outcome).toList());
    }

    private static Outcome outcome(double days) {
        return StudyFixture.outcome(
                new Outcome.Ending.Complete(),
                StudyFixture.coat(1, StudyFixture.ready(3.0), false),
                StudyFixture.coat(2, StudyFixture.ready(days), false));
    }
}
