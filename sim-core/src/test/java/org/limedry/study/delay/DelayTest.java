package org.limedry.study.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class DelayTest {
    private static final Instant START = Instant.parse("2026-09-07T08:00:00Z");
    private static final Instant END = day(100).orElseThrow();

    private static Optional<Instant> day(double day) {
        return Optional.of(START.plus(Duration.ofMinutes(Math.round(24 * 60 * day))));
    }

    // EXACT: by hand. Room alone 20 days, doors alone 4, both 30: room (20 + 26) / 2, doors (4 + 10) / 2.
    @Test
    void delay_twoCauses_areSharedOverBothOrders() {
        Delay delay = Delay.of(List.of(day(25), day(45), day(29), day(55)), day(55), END);

        assertEquals(List.of(23.0, 7.0), delay.causeDays());
        assertEquals(List.of(26.0, 10.0), delay.soonerDays());
        assertEquals(0.0, delay.otherDays());
        assertEquals(30.0, delay.totalDays());
        assertFalse(delay.isOpen());
    }

    // EXACT: the record says 3 days more than the run; the causes keep theirs.
    @Test
    void delay_recordOverrulesTheRun_restIsToldByItself() {
        Delay delay = Delay.of(List.of(day(25), day(45)), day(48), END);

        assertEquals(List.of(20.0), delay.causeDays());
        assertEquals(3.0, delay.otherDays());
        assertEquals(23.0, delay.totalDays());
    }

    // EXACT: not ready by day 100 counts as ready then, and says so.
    @Test
    void delay_notReadyByTheEnd_isAtLeastUpToTheEnd() {
        Delay delay = Delay.of(List.of(day(25), Optional.empty()), Optional.empty(), END);

        assertEquals(75.0, delay.totalDays());
        assertTrue(delay.isOpen());
    }

    // EXACT: no cause, no day.
    @Test
    void delay_withoutCauses_isNone() {
        Delay delay = Delay.of(List.of(day(25)), day(25), END);

        assertEquals(0.0, delay.totalDays());
        assertEquals(List.of(), delay.causeDays());
    }

    @Test
    void delay_setsOfCausesMissing_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Delay.of(List.of(day(1), day(2), day(3)), day(3), END));
    }
}
