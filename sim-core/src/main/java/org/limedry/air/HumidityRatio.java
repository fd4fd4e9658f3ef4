package org.limedry.air;

import org.limedry.units.Check;

/** Water vapour by mass of dry air, and back. */
public final class HumidityRatio {
    private HumidityRatio() {}

    /**
     * Returns the humidity ratio, {@code W = 0.621945·e / (p - e)}.
     *
     * <p><b>Source:</b> ASHRAE Handbook Fundamentals (SI) 2017, chapter 1, eq. 20, second-hand. <b>Valid:</b> ideal gases.
     *
     * @param vapourPressurePa vapour pressure, Pa; 0 or above, below {@code pressurePa}
     * @param pressurePa barometric pressure, Pa
     * @return humidity ratio, kg/kg dry air
     * @throws IllegalArgumentException if {@code vapourPressurePa} is NaN or outside its range
     */
    public static double ofVapourPressure(double vapourPressurePa, double pressurePa) {
        Check.inClosedOpen(vapourPressurePa, 0.0, pressurePa, "vapourPressurePa", "Pa");
        return AirConstants.WATER_TO_DRY_AIR_MASS_RATIO * vapourPressurePa / (pressurePa - vapourPressurePa); // eq. 20
    }

    /**
     * Returns the vapour pressure of air with a humidity ratio, {@code e = p·W / (0.621945 + W)}: the inverse of {@link
     * #ofVapourPressure}.
     *
     * @param humidityRatio humidity ratio, kg/kg dry air; 0 or above
     * @param pressurePa barometric pressure, Pa; above 0
     * @return vapour pressure, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double vapourPressurePa(double humidityRatio, double pressurePa) {
        Check.nonNegative(humidityRatio, "humidityRatio", "kg/kg");
        Check.positive(pressurePa, "pressurePa", "Pa");
        return pressurePa * humidityRatio / (AirConstants.WATER_TO_DRY_AIR_MASS_RATIO + humidityRatio);
    }
}
