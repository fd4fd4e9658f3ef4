package org.limedry.lime;

import org.limedry.units.Check;

/**
 * The front at which lime turns to carbonate, moving in from the face.
 *
 * <p>The front is taken for a line though it is a zone of some millimetres. The coefficient belongs to 200 kg/m3 of
 * Ca(OH)2 and is not scaled: a richer mix is in truth slower, a leaner one faster. No activation energy was found; only the
 * stop below 0 C is kept. A front covered by a new coat stops.
 */
public final class Carbonation {
    /** Share of the hydroxide that turns to carbonate behind the front (S27: 80 to 90 %). */
    public static final double DEGREE = 0.85;

    /** Carbon dioxide at which the coefficient holds, parts per million. */
    public static final double REFERENCE_PPM = 420.0;

    /** Carbon dioxide of a room below which hardening starves, parts per million (judgement, no source). */
    public static final double STARVED_PPM = 300.0;

    private static final double NONE_BELOW = 0.30;
    private static final double HALF_AT = 0.50;
    private static final double FULL_FROM = 0.60;

    private Carbonation() {}

    /**
     * Returns the growth of the squared depth of the front.
     *
     * <p>{@code d(x^2)/dt = k^2 (C / 420 ppm) (1 - S)^2 f_RH}.
     *
     * <p><b>Source:</b> front model (diffusion through the part that is done); shape of the factors FROM MEMORY (material
     * notes D). <b>Valid:</b> a drained coat in air up to some thousand ppm. <b>Accuracy:</b> k 1.4 (0.6 to 2.0)
     * mm/day^0.5, COMPUTED, not measured.
     *
     * @param coefficientMPerSqrtS k of a drained coat at 420 ppm, m/s^0.5; at least 0
     * @param carbonDioxidePpm carbon dioxide of the room air, parts per million; at least 0
     * @param saturation pore saturation at the front, fraction; in [0, 1]
     * @param relativeHumidity relative humidity in the pores at the front, fraction; at least 0
     * @param celsius temperature at the front, C
     * @return m2/s; 0 below 0 C
     */
    public static double squaredDepthRateM2PerS(
            double coefficientMPerSqrtS,
            double carbonDioxidePpm,
            double saturation,
            double relativeHumidity,
            double celsius) {
        Check.nonNegative(coefficientMPerSqrtS, "coefficientMPerSqrtS", "m/s^0.5");
        Check.nonNegative(carbonDioxidePpm, "carbonDioxidePpm", "ppm");
        Check.inClosed(saturation, 0.0, 1.0, "saturation", "");
        Check.finite(celsius, "celsius", "C");
        if (celsius < 0.0) {
            return 0.0;
        }
        double open = 1.0 - saturation;
        double squared = coefficientMPerSqrtS * coefficientMPerSqrtS;
        return squared * (carbonDioxidePpm / REFERENCE_PPM) * open * open * humidityFactor(relativeHumidity);
    }

    /**
     * Returns the factor for too little water in the pores: none below 30 % relative humidity, half at 50 %, full from 60
     * %, straight between. Too much water is not here but in the saturation.
     *
     * @param relativeHumidity relative humidity in the pores, fraction; at least 0
     */
    public static double humidityFactor(double relativeHumidity) {
        Check.nonNegative(relativeHumidity, "relativeHumidity", "");
        if (relativeHumidity < HALF_AT) {
            return Math.max(0.0, 0.5 * (relativeHumidity - NONE_BELOW) / (HALF_AT - NONE_BELOW));
        }
        return Math.min(1.0, 0.5 + 0.5 * (relativeHumidity - HALF_AT) / (FULL_FROM - HALF_AT));
    }

    /**
     * Returns the hydroxide turned to carbonate by an advance of the front, kg/m2.
     *
     * @param hydroxideKgPerM3 Ca(OH)2 of the coat as laid, kg/m3; at least 0
     * @param advanceM advance of the front, m; at least 0
     */
    public static double carbonatedKgPerM2(double hydroxideKgPerM3, double advanceM) {
        Check.nonNegative(hydroxideKgPerM3, "hydroxideKgPerM3", "kg/m3");
        Check.nonNegative(advanceM, "advanceM", "m");
        return DEGREE * hydroxideKgPerM3 * advanceM;
    }

    /** Returns the water set free at the front, kg/m2, by hydroxide turned to carbonate, kg/m2. */
    public static double waterReleasedKgPerM2(double carbonatedKgPerM2) {
        return Stoichiometry.WATER_PER_CARBONATED_HYDROXIDE * carbonatedKgPerM2;
    }

    /** Returns the carbon dioxide taken from the room, kg/m2, by hydroxide turned to carbonate, kg/m2. */
    public static double carbonDioxideTakenKgPerM2(double carbonatedKgPerM2) {
        return Stoichiometry.CARBON_DIOXIDE_PER_HYDROXIDE * carbonatedKgPerM2;
    }
}
