package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FaceTransferTest {
    private static final Surfaces SURFACES = Surfaces.ordinary();

    // PRACTICE: physics notes, section 5 (common practice, no source): 3 still, 5 with a door open, 10 aimed.
    @ParameterizedTest
    @CsvSource({"false, false, 3", "true, false, 5", "false, true, 10", "true, true, 10"})
    void inside_isTheLargestThatApplies(boolean openingOpen, boolean aimed, double expectedWPerM2K) {
        assertEquals(expectedWPerM2K, FaceTransfer.insideWPerM2K(SURFACES, openingOpen, aimed));
    }

    // EXACT: 4 + 4 v at 2.5 m/s.
    @Test
    void outside_growsWithWind() {
        assertEquals(14.0, FaceTransfer.outsideWPerM2K(SURFACES, 2.5));
    }

    // EXACT: 7e-9 times 3.
    @Test
    void vapour_isProportionalToConvection() {
        assertEquals(2.1e-8, FaceTransfer.vapourSPerM(SURFACES, 3.0), 1e-23); // one rounding
    }

    // EXACT: 0.3 kg/(m2 day) as long as a wet face could give it; then 2.1e-8 (p_sat - p_v); nothing to damper air.
    @ParameterizedTest
    @CsvSource({"1228, 700, 3.4722e-6", "1228, 1128, 2.1e-6", "1228, 1300, 0"})
    void earthFloor_isHeldToTheWetFaceAndNeverTakes(double saturationPa, double vapourPa, double expectedKgPerM2S) {
        double rate = EarthFloor.kgPerM2S(3.4722e-6, 2.1e-8, saturationPa, vapourPa);

        assertEquals(expectedKgPerM2S, rate, 1e-21); // a few roundings
    }

    @Property
    void earthFloor_inDamperAir_neverGivesMore(
            @ForAll @DoubleRange(min = 0.0, max = 2000.0) double vapourPa,
            @ForAll @DoubleRange(min = 0.0, max = 500.0) double damperPa) {
        double drier = EarthFloor.kgPerM2S(3.5e-6, 2.1e-8, 1228.0, vapourPa);

        double damper = EarthFloor.kgPerM2S(3.5e-6, 2.1e-8, 1228.0, vapourPa + damperPa);

        assertTrue(damper <= drier && damper >= 0.0);
    }
}
