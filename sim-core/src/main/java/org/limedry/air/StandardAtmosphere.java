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

    private static void checkAltitude(double altitudeM) {
        Check.inClosed(altitudeM, LOWEST_M, HIGHEST_M, "altitudeM", "m");
    }
}
