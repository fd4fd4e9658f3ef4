package org.limedry.cli.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** EXACT: least, most and whole days of the figures put in. */
final class DaysRangeTest {
    @Test
    void range_ofReckonings_isTheLeastAndTheMostInWholeDays() {
        DaysRange range = DaysRange.of(List.of(25.2, 0.3, 39.8), 25);

        assertEquals(new DaysRange(0.3, 39.8, 0, 40), range);
        assertEquals("between 0 and 40", range.words());
        assertEquals("0 to 40", range.brief());
        assertTrue(range.mayBeNothing());
    }

    @Test
    void range_figureMovedByTheSum_isTakenIn() {
        DaysRange range = DaysRange.of(List.of(25.2, 25.4), 26);

        assertEquals(new DaysRange(25.2, 25.4, 25, 26), range);
        assertFalse(range.mayBeNothing());
    }

    @Test
    void range_ofTwoSigns_mayBeNothing() {
        DaysRange range = DaysRange.of(List.of(4.0, -3.0), 4);

        assertTrue(range.mayBeNothing());
        assertEquals("between \u22123 and 4", range.words());
        assertEquals("between 3 early and 4 late", range.lateWords());
    }

    @Test
    void range_noneInEveryReckoning_isNoMayBe() {
        DaysRange range = DaysRange.of(List.of(0.1, -0.2), 0);

        assertFalse(range.mayBeNothing());
        assertEquals("0 in every reckoning", range.words());
    }

    @Test
    void range_ofAnEarlyJob_isToldInEarlyDays() {
        assertEquals("between 2 and 9", DaysRange.of(List.of(-9.0, -2.0), -5).lateWords());
        assertEquals("between 2 and 9", DaysRange.of(List.of(9.0, 2.0), 5).lateWords());
        assertEquals("7 in every reckoning", DaysRange.of(List.of(7.0, 7.2), 7).lateWords());
    }

    @Test
    void range_ofNothing_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> DaysRange.of(List.of(), 0));
        assertThrows(IllegalArgumentException.class, () -> new DaysRange(2.0, 1.0, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> new DaysRange(Double.NaN, 1.0, 1, 2));
    }
}
