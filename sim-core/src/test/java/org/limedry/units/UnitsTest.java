package org.limedry.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class UnitsTest {
    // EXACT: 25 °C is 298.15 K by the definition of the Celsius scale. No tolerance: both sums are exact to the last
    // bit.
    @Test
    void kelvin_ofTwentyFiveCelsius_isTheDefinition() {
        assertEquals(298.15, Units.kelvin(25.0));
    }

    // EXACT: 0 K is -273.15 °C.
    @Test
    void celsius_ofAbsoluteZero_isTheDefinition() {
        assertEquals(-273.15, Units.celsius(0.0));
    }

    @Property
    void celsius_undoesKelvin(@DoubleRange(min = -60.0, max = 90.0) @ForAll double celsius) {
        // One rounding at the size of 273 K each way: 2 ulp of 363 K.
        assertEquals(celsius, Units.celsius(Units.kelvin(celsius)), 2.0 * Math.ulp(363.0));
    }

    // EXACT: 12 mm is 0.012 m, and back.
    @Test
    void lengths_betweenMmAndM_scaleByAThousand() {
        assertEquals(0.012, Units.metresFromMm(12.0));
        assertEquals(12.0, Units.mmFromMetres(0.012));
    }

    // EXACT: 85 % is 0.85, and back.
    @Test
    void shares_betweenPercentAndFraction_scaleByAHundred() {
        assertEquals(0.85, Units.fractionFromPercent(85.0));
        assertEquals(85.0, Units.percentFromFraction(0.85));
    }

    // EXACT: 2.5 kW is 2500 W.
    @Test
    void watts_ofKilowatts_scaleByAThousand() {
        assertEquals(2500.0, Units.wattsFromKw(2.5));
    }

    // EXACT: 60 s/min · 60 min/h · 24 h/d.
    @Test
    void times_countSecondsInHoursAndDays() {
        assertEquals(2.5, Units.hoursFromSeconds(9000.0));
        assertEquals(216_000.0, Units.secondsFromDays(2.5));
        assertEquals(2.5, Units.daysFromSeconds(216_000.0));
        assertEquals(Units.SECONDS_PER_HOUR, 60.0 * Units.SECONDS_PER_MINUTE);
    }

    // EXACT: 180 m3/h is 0.05 m3/s.
    @Test
    void rates_perSecondFromPerHour_divideByTheSecondsOfAnHour() {
        assertEquals(0.05, Units.perSecondFromPerHour(180.0));
    }
}
