package org.limedry.room;

import org.limedry.units.Units;

/**
 * Fresh air into a room by openings, cracks and fans.
 *
 * <p>Does not model wind direction, gusts, rain on the sill, screens in an opening, or air that comes in by one room and
 * leaves by another. Every function is continuous; the larger of two flows and {@code |dT|} leave a kink, never a jump.
 * NaN gives NaN: the arguments of the hot loop are not checked.
 */
public final class AirFlow {
    /** Standard acceleration of free fall, m/s2. Exact by definition (3rd CGPM, 1901). */
    static final double GRAVITY_M_PER_S2 = 9.80665;

    /** Rounds square roots of a temperature difference at zero, K: below it the buoyant flow no longer falls. */
    static final double ROUNDING_K = 0.01;

    private static final double WIND_TERM = 0.001;
    private static final double BUOYANCY_TERM_M_PER_S2_K = 0.0035;
    private static final double TURBULENCE_TERM_M2_PER_S2 = 0.01;

    private AirFlow() {}

    /**
     * Returns the fresh air that a room gets now: openings and leakage as the root of their squares, fans on top.
     *
     * <p>{@code Q = sqrt((f max(single-sided sum, stack, cross))^2 + leakage^2) + fans}; f is the factor on openings.
     *
     * <p><b>Source:</b> superposition of unlike driving forces in quadrature, ASHRAE Handbook Fundamentals, chapter
     * Ventilation and Infiltration, FROM MEMORY. <b>Valid:</b> as for its parts. <b>Accuracy:</b> not stated; a factor 1.5
     * either way is ordinary for the parts.
     *
     * @param state what stands open
     * @param roomCelsius room air, °C
     * @param outdoorCelsius outdoor air, °C
     * @param windMPerS wind at the building, m/s; at least 0
     * @return flow of fresh air, m3/s
     */
    public static double freshAirM3PerS(OpenState state, double roomCelsius, double outdoorCelsius, double windMPerS) {
        double openings = state.openingFactor() * throughOpeningsM3PerS(state, roomCelsius, outdoorCelsius, windMPerS);
        double leakage = state.leakageM3PerS();
        return Math.sqrt(openings * openings + leakage * leakage) + state.fansM3PerS();
    }

    /** The larger of the three mechanisms: a hard maximum, continuous with a kink where the lead changes. */
    private static double throughOpeningsM3PerS(
            OpenState state, double roomCelsius, double outdoorCelsius, double windMPerS) {
        double singleSided = 0.0;
        double differenceK = roomCelsius - outdoorCelsius;
        for (OpenState.Gap gap : state.gaps()) {
            singleSided += singleSidedM3PerS(gap.areaM2(), gap.heightM(), differenceK, windMPerS);
        }
        double meanKelvin = Units.kelvin(0.5 * (roomCelsius + outdoorCelsius));
        double stack = state.stackCoefficientM3PerS() * rootOfBuoyancy(differenceK, meanKelvin);
        double cross = state.crossAreaM2() * windMPerS;
        return Math.max(singleSided, Math.max(stack, cross));
    }

    /**
     * Returns the air exchanged by one opening in one side of a room.
     *
     * <p>{@code Q = (A / 2) sqrt(0.001 U^2 + 0.0035 h |dT| + 0.01)}
     *
     * <p><b>Source:</b> de Gids and Phaff 1982, Ventilation rates and energy consumption due to open windows, Air
     * Infiltration Review 4(1), 4-5; constants also in EN 16798-7. FROM MEMORY; agrees with the orifice form of {@link
     * DoorFlow} within 15 % in still air at 5 to 20 K. <b>Valid:</b> windows and doors of houses. <b>Accuracy:</b> by one
     * abstract the EN 16798-7 method can be as much as 77 % too low (roof windows).
     *
     * @param areaM2 clear area A, m2; above 0
     * @param heightM clear height h, m; above 0
     * @param differenceK temperature indoors less outdoors dT, K
     * @param windMPerS wind U, m/s; at least 0
     * @return flow each way, m3/s
     */
    public static double singleSidedM3PerS(double areaM2, double heightM, double differenceK, double windMPerS) {
        double speed2 = WIND_TERM * windMPerS * windMPerS
                + BUOYANCY_TERM_M_PER_S2_K * heightM * Math.abs(differenceK)
                + TURBULENCE_TERM_M2_PER_S2;
        return 0.5 * areaM2 * Math.sqrt(speed2);
    }

    /**
     * Returns the area of two openings that the same air passes one after the other, {@code A1 A2 / sqrt(A1^2 + A2^2)}.
     *
     * <p><b>Source:</b> orifice flow in series, FROM MEMORY. <b>Valid:</b> equal discharge coefficients.
     * <b>Accuracy:</b> exact for orifices.
     *
     * @param oneM2 first area, m2; above 0
     * @param otherM2 second area, m2; at least 0
     * @return effective area, m2
     */
    static double inSeriesM2(double oneM2, double otherM2) {
        return oneM2 * otherM2 / Math.hypot(oneM2, otherM2);
    }

    /** Returns {@code sqrt(sqrt(dT^2 + 0.01^2) / T)}: smooth, with no infinite slope at dT = 0. */
    static double rootOfBuoyancy(double differenceK, double meanKelvin) {
        double roundedK = Math.sqrt(differenceK * differenceK + ROUNDING_K * ROUNDING_K);
        return Math.sqrt(roundedK / meanKelvin);
    }
}
