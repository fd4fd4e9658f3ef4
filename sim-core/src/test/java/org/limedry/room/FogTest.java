package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

final class FogTest {
    private static final double SATURATED_KG_PER_M3 = 0.0092;

    // EXACT: nothing falls out of air that can hold what it has.
    @Test
    void fog_inAirUpToSaturation_isNone() {
        assertEquals(0.0, Fog.kgPerS(40.0, 0.0091, SATURATED_KG_PER_M3));
        assertEquals(0.0, Fog.kgPerS(40.0, SATURATED_KG_PER_M3, SATURATED_KG_PER_M3));
    }

    // EXACT: 1 % above saturation, 0.000092 kg/m3 in 40 m3, falls out at a tenth of itself a second; at 2 % at a fifth.
    @Test
    void fog_aboveSaturation_fallsOutWithinSeconds() {
        double onePercentKg = 40.0 * 0.01 * SATURATED_KG_PER_M3;

        assertEquals(onePercentKg / 10.0, Fog.kgPerS(40.0, 1.01 * SATURATED_KG_PER_M3, SATURATED_KG_PER_M3), 1e-14);
        assertEquals(
                2.0 * onePercentKg / 5.0, Fog.kgPerS(40.0, 1.02 * SATURATED_KG_PER_M3, SATURATED_KG_PER_M3), 1e-14);
    }
}
