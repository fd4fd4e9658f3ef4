package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When two hand tests cannot both be right. */
final class HandTestTest {
    private static HandTest test(String wall, int coat, int day, HandTest.Result result) {
        return new HandTest(wall, coat, LocalDate.of(2026, 11, day).atTime(8, 0).toInstant(ZoneOffset.UTC), result);
    }

    // EXACT: a coat that was ready on the 6th is ready from then on; before that it may be anything.
    @ParameterizedTest
    @CsvSource({
        "HARD, 5, false",
        "HARD, 6, false",
        "NAIL_NOT_KNUCKLE, 13, false",
        "DENTS, 5, false",
        "DENTS, 6, true",
        "DENTS, 13, true"
    })
    void contradicts_readyOnTheSixth_refusesDentsFromThenOn(HandTest.Result result, int day, boolean contradicts) {
        HandTest ready = test("north", 1, 6, HandTest.Result.HARD);
        HandTest other = test("north", 1, day, result);

        assertEquals(contradicts, ready.contradicts(other));
        assertEquals(contradicts, other.contradicts(ready));
    }

    // EXACT: what is said of one coat says nothing of another.
    @Test
    void contradicts_otherCoatOrWall_never() {
        HandTest ready = test("north", 1, 6, HandTest.Result.HARD);

        assertEquals(false, ready.contradicts(test("north", 2, 13, HandTest.Result.DENTS)));
        assertEquals(false, ready.contradicts(test("east", 1, 13, HandTest.Result.DENTS)));
    }
}
