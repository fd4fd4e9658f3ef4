package org.limedry.cli.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** EXACT: the days put in by each test. */
final class DateBasisTest {
    private static final LocalDate LAST = LocalDate.of(2026, 11, 16);

    @Test
    void basis_modelledDay_isAForecastFromTheLastRecordOn() {
        assertEquals(DateBasis.MODEL, DateBasis.of(false, LAST.minusDays(1), LAST));
        assertEquals(DateBasis.FORECAST, DateBasis.of(false, LAST, LAST));
        assertEquals(DateBasis.FORECAST, DateBasis.of(false, LAST.plusDays(1), LAST));
        assertEquals(DateBasis.RECORD, DateBasis.of(true, LAST, LAST));
    }

    @Test
    void full_ofADay_saysWhatItStandsOn() {
        assertEquals("16 Nov 2026", DateBasis.RECORD.full(LAST));
        assertEquals("about 16 Nov 2026", DateBasis.MODEL.full(LAST));
        assertEquals("about 16 Nov 2026, forecast", DateBasis.FORECAST.full(LAST));
    }
}
