package org.limedry.air;

import org.limedry.units.Check;
import org.limedry.units.Units;

/** Barometric pressure by height above the sea. Weather moves the true pressure a few percent to either side. */
public final class StandardAtmosphere {
    private static final double SEA_LEVEL_PA = 101_325.0;
    private static final double SEA_LEVEL_CELSIUS = 15.0;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double LOWEST_M = -500.0;
    private static final double HIGHEST_M = 11_000.0;
    private static final double GRAVITY_M_PER_S2 = 9.80665;

    /** g·M/(R·lapse) with the constants of the standard of 1976: M 28.9644 g/mol, R 8.31432 J/(mol K). */
    private static final double EXPONENT = GRAVITY_M_PER_S2 * 28.9644e-3 / (8.31432 * LAPSE_K_PER_M);

    private StandardAtmosphere() {}

    /**
     * Returns the pressure of the standard atmosphere, {@code p = 101325·(1 - 0.0065·z/288.15)^5.255876}.
     *
     * <p><b>Source:</b> U.S. Standard Atmosphere 1976, lowest layer, second-hand. <b>Valid:</b> -500 to 11 000 m.
     * <b>Accuracy:</b> 1 Pa of its table.
     *
     * @param altitudeM height above sea level, m; in [-500, 11 000]
     * @return pressure, Pa
     * @throws IllegalArgumentException if {@code altitudeM} is NaN or outside that range
     */
    public static double pressurePa(double altitudeM) {
        checkAltitude(altitudeM);
        return SEA_LEVEL_PA * Math.pow(1.0 - LAPSE_K_PER_M * altitudeM / Units.kelvin(SEA_LEVEL_CELSIUS), EXPONENT);
    }

    /**
     * Returns the same pressure in the rounded form of ASHRAE, {@code p = 101325·(1 - 2.25577e-5·z)^5.2559}.
     *
     * <p><b>Source:</b> ASHRAE Handbook Fundamentals (SI) 2017, chapter 1, eq. 3, second-hand. <b>Valid:</b> -500 to
     * 11 000 m. <b>Accuracy:</b> 1 Pa of its table.
     *
     * @param altitudeM height above sea level, m; in [-500, 11 000]
     * @return pressure, Pa
     * @throws IllegalArgumentException if {@code altitudeM} is NaN or outside that range
     */
    public static double ashraePressurePa(double altitudeM) {
        checkAltitude(altitudeM);
        return SEA_LEVEL_PA * Math.pow(1.0 - 2.25577e-5 * altitudeM, 5.2559); // eq. 3
    }

    /**
     * Returns the pressure by the formula of irrigation practice, {@code p = 101300·((293 - 0.0065·z)/293)^5.26}.
     *
     * <p><b>Source:</b> Allen et al. 1998, FAO-56, eq. 7, second-hand. <b>Valid:</b> not stated; -500 to 11 000 m is ours.
     *
     * @param altitudeM height above sea level, m; in [-500, 11 000]
     * @return pressure, Pa
     * @throws IllegalArgumentException if {@code altitudeM} is NaN or outside that range
     */
    public static double fao56PressurePa(double altitudeM) {
        checkAltitude(altitudeM);
        return 101_300.0 * Math.pow((293.0 - LAPSE_K_PER_M * altitudeM) / 293.0, 5.26); // eq. 7
    }

    /**
     * Returns the temperature of the standard atmosphere, {@code t = 15 - 0.0065·z}.
     *
     * <p><b>Source:</b> ASHRAE Handbook Fundamentals (SI) 2017, chapter 1, eq. 4, second-hand. <b>Valid:</b> -500 to
     * 11 000 m.
     *
     * @param altitudeM height above sea level, m; in [-500, 11 000]
     * @return temperature, °C
     * @throws IllegalArgumentException if {@code altitudeM} is NaN or outside that range
     */
    public static double celsius(double altitudeM) {
        checkAltitude(altitudeM);
        return SEA_LEVEL_CELSIUS - LAPSE_K_PER_M * altitudeM; // eq. 4
    }

    /**
     * Returns the pressure at a station from the pressure that its weather service reduced to sea level, {@code p =
     * p0·exp(-g·z / (Rd·T))}, an isothermal column of dry air.
     *
     * <p><b>Source:</b> hydrostatic balance of an ideal gas. <b>Valid:</b> low stations; -500 to 11 000 m is checked.
     * <b>Accuracy:</b> the service's own reduction is not known; the difference is below 0.1 hPa at 100 m.
     *
     * @param seaLevelPressurePa pressure reduced to mean sea level, Pa; above 0
     * @param altitudeM height of the station, m; in [-500, 11 000]
     * @param celsius air temperature, °C; above absolute zero
     * @return pressure at the station, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double stationPressurePa(double seaLevelPressurePa, double altitudeM, double celsius) {
        Check.positive(seaLevelPressurePa, "seaLevelPressurePa", "Pa");
        checkAltitude(altitudeM);
        Check.positive(Units.kelvin(celsius), "kelvin", "K");
        double scaleHeightM = AirConstants.DRY_AIR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(celsius) / GRAVITY_M_PER_S2;
        return seaLevelPressurePa * Math.exp(-altitudeM / scaleHeightM);
    }

    private static void checkAltitude(double altitudeM) {
        Check.inClosed(altitudeM, LOWEST_M, HIGHEST_M, "altitudeM", "m");
    }
}
