package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StandardAtmosphereTest {
    // EXACT: a column of 101 m at 9 C and of 24 m at 11 C weigh p g h / (R T) = 1240 and 293 Pa, to whole hPa.
    @Test
    void stationPressure_isBelowThatAtSeaLevel() {
        assertEquals(
                1200.0, 101_300.0 - StandardAtmosphere.stationPressurePa(101_300.0, 101.0, 9.0), 50.0); // whole hPa
        assertEquals(300.0, 101_300.0 - StandardAtmosphere.stationPressurePa(101_300.0, 24.0, 11.0), 50.0); // whole hPa
    }

    // EXACT: at sea level nothing is reduced; the lapse of the standard atmosphere matters only in second order.
    @Test
    void stationPressure_followsTheStandardAtmosphereNearTheGround() {
        assertEquals(101_300.0, StandardAtmosphere.stationPressurePa(101_300.0, 0.0, 9.0), 0.0); // exp(0) is 1
        assertEquals(
                StandardAtmosphere.pressurePa(150.0),
                StandardAtmosphere.stationPressurePa(101_325.0, 150.0, 15.0 - 0.0065 * 75.0),
                1.0); // mean temperature of the column; third order in 150 m over 8400 m
    }

    @Property
    void pressure_fallsWithHeight(
            @ForAll @DoubleRange(min = -500.0, max = 10_900.0) double altitudeM,
            @ForAll @DoubleRange(min = 0.1, max = 100.0) double higherByM) {
        assertTrue(StandardAtmosphere.pressurePa(altitudeM + higherByM) < StandardAtmosphere.pressurePa(altitudeM));
        assertTrue(StandardAtmosphere.fao56PressurePa(altitudeM + higherByM)
                < StandardAtmosphere.fao56PressurePa(altitudeM));
    }

    @Test
    void altitude_outsideTheLayer_isRefused() {
        for (double bad : new double[] {-500.1, 11_000.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.pressurePa(bad));
            assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.ashraePressurePa(bad));
            assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.fao56PressurePa(bad));
            assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.celsius(bad));
            assertThrows(
                    IllegalArgumentException.class, () -> StandardAtmosphere.stationPressurePa(101_300.0, bad, 9.0));
        }
        assertThrows(IllegalArgumentException.class, () -> StandardAtmosphere.stationPressurePa(0.0, 12.0, 9.0));
        assertThrows(
                IllegalArgumentException.class,
                () -> StandardAtmosphere.stationPressurePa(101_300.0, 12.0, Double.NaN));
    }
}
