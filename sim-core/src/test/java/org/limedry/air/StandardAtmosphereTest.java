package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StandardAtmosphereTest {
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
        }
    }
}
