package org.limedry.air;

import org.limedry.units.Units;

/**
 * Saturation vapour pressures, Pa, that are not of the Magnus form, by temperature in °C. No range is checked here; each is
 * cited, with its range, at its {@link SaturationFormula}.
 */
final class SaturationEquations {
    private static final double PA_PER_HPA = 100.0;
    private static final double TRIPLE_POINT_K = 273.16;
    private static final double TRIPLE_POINT_PA = 611.657;
    private static final double CRITICAL_POINT_K = 647.096;
    private static final double CRITICAL_POINT_PA = 22.064e6;

    private SaturationEquations() {}

    /** {@code p = 611.21 · exp((18.678 - t/234.5) · t / (257.14 + t))}. */
    static double buck1996Water(double celsius) {
        return 611.21 * Math.exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius));
    }

    /** {@code p = 611.15 · exp((23.036 - t/333.7) · t / (279.82 + t))}. */
    static double buck1996Ice(double celsius) {
        return 611.15 * Math.exp((23.036 - celsius / 333.7) * celsius / (279.82 + celsius));
    }

    /** {@code p = 288.68 · (1.098 + t/100)^8.02}. */
    static double dinWater(double celsius) {
        return 288.68 * Math.pow(1.098 + celsius / 100.0, 8.02);
    }

    /** {@code p = 4.689 · (1.486 + t/100)^12.30}. */
    static double dinIce(double celsius) {
        return 4.689 * Math.pow(1.486 + celsius / 100.0, 12.30);
    }

    /** {@code ln(p/hPa) = -6096.9385/T + 16.635794 - 2.711193e-2·T + 1.673952e-5·T² + 2.433502·ln T}. */
    static double sonntagWater(double celsius) {
        double t = Units.kelvin(celsius);
        return PA_PER_HPA
                * Math.exp(-6096.9385 / t + 16.635794 + (-2.711193e-2 + 1.673952e-5 * t) * t + 2.433502 * Math.log(t));
    }

    /** {@code ln(p/hPa) = -6024.5282/T + 24.721994 + 1.0613868e-2·T - 1.3198825e-5·T² - 0.49382577·ln T}. */
    static double sonntagIce(double celsius) {
        double t = Units.kelvin(celsius);
        return PA_PER_HPA
                * Math.exp(
                        -6024.5282 / t + 24.721994 + (1.0613868e-2 - 1.3198825e-5 * t) * t - 0.49382577 * Math.log(t));
    }

    /** ASHRAE eq. 6: the same terms as {@link #sonntagWater} and one in T³. */
    static double hylandWexlerWater(double celsius) {
        double t = Units.kelvin(celsius);
        double polynomial = 1.3914993 + (-4.8640239e-2 + (4.1764768e-5 - 1.4452093e-8 * t) * t) * t;
        return Math.exp(-5.8002206e3 / t + polynomial + 6.5459673 * Math.log(t)); // eq. 6
    }

    /** ASHRAE eq. 5: terms up to T⁴. */
    static double hylandWexlerIce(double celsius) {
        double t = Units.kelvin(celsius);
        double cubic = 6.2215701e-7 + (2.0747825e-9 - 9.484024e-13 * t) * t;
        double polynomial = 6.3925247 + (-9.677843e-3 + cubic * t) * t;
        return Math.exp(-5.6745359e3 / t + polynomial + 4.1635019 * Math.log(t)); // eq. 5
    }

    /** Goff and Gratch over water, by steam point over T. */
    static double goffGratchWater(double celsius) {
        double ratio = 373.16 / Units.kelvin(celsius);
        double exponent = -7.90298 * (ratio - 1.0)
                + 5.02808 * Math.log10(ratio)
                - 1.3816e-7 * (Math.pow(10.0, 11.344 * (1.0 - 1.0 / ratio)) - 1.0)
                + 8.1328e-3 * (Math.pow(10.0, -3.49149 * (ratio - 1.0)) - 1.0);
        return PA_PER_HPA * 1013.246 * Math.pow(10.0, exponent);
    }

    /** Goff and Gratch over ice, by ice point over T. */
    static double goffGratchIce(double celsius) {
        double ratio = TRIPLE_POINT_K / Units.kelvin(celsius);
        double exponent = -9.09718 * (ratio - 1.0) - 3.56654 * Math.log10(ratio) + 0.876793 * (1.0 - 1.0 / ratio);
        return PA_PER_HPA * 6.1071 * Math.pow(10.0, exponent);
    }

    /** Goff 1957 over water; the exponent in the last bracket is +4.76955, often misprinted with a minus. */
    static double goff1957Water(double celsius) {
        double ratio = TRIPLE_POINT_K / Units.kelvin(celsius);
        double exponent = 10.79574 * (1.0 - ratio)
                + 5.028 * Math.log10(ratio)
                + 1.50475e-4 * (1.0 - Math.pow(10.0, -8.2969 * (1.0 / ratio - 1.0)))
                + 0.42873e-3 * (Math.pow(10.0, 4.76955 * (1.0 - ratio)) - 1.0)
                + 0.78614;
        return PA_PER_HPA * Math.pow(10.0, exponent);
    }

    /** Murphy and Koop eq. 10, made for supercooled water. */
    static double murphyKoopWater(double celsius) {
        double t = Units.kelvin(celsius);
        double logT = Math.log(t);
        double cold = 53.878 - 1331.22 / t - 9.44523 * logT + 0.014025 * t;
        return Math.exp(54.842763 - 6763.22 / t - 4.210 * logT + 0.000367 * t + Math.tanh(0.0415 * (t - 218.8)) * cold);
    }

    /** Murphy and Koop eq. 7. */
    static double murphyKoopIce(double celsius) {
        double t = Units.kelvin(celsius);
        return Math.exp(9.550426 - 5723.265 / t + 3.53068 * Math.log(t) - 0.00728332 * t); // eq. 7
    }

    /** IAPWS SR1-86 by {@code v = 1 - T/Tc}. */
    static double wagnerPrussWater(double celsius) {
        double t = Units.kelvin(celsius);
        double v = 1.0 - t / CRITICAL_POINT_K;
        double sum = -7.85951783 * v
                + 1.84408259 * Math.pow(v, 1.5)
                - 11.7866497 * Math.pow(v, 3.0)
                + 22.6807411 * Math.pow(v, 3.5)
                - 15.9618719 * Math.pow(v, 4.0)
                + 1.80122502 * Math.pow(v, 7.5);
        return CRITICAL_POINT_PA * Math.exp(CRITICAL_POINT_K / t * sum);
    }

    /** Wagner 1994 by T over the triple point. */
    static double wagner1994Ice(double celsius) {
        double theta = Units.kelvin(celsius) / TRIPLE_POINT_K;
        return TRIPLE_POINT_PA
                * Math.exp(-13.928169 * (1.0 - Math.pow(theta, -1.5)) + 34.707823 * (1.0 - Math.pow(theta, -1.25)));
    }

    /** IAPWS R14-08 eq. 6, by T over the triple point. */
    static double iapwsIce(double celsius) {
        double theta = Units.kelvin(celsius) / TRIPLE_POINT_K;
        double sum = -21.2144006 * Math.pow(theta, 0.00333333333)
                + 27.3203819 * Math.pow(theta, 1.20666667)
                - 6.10598130 * Math.pow(theta, 1.70333333);
        return TRIPLE_POINT_PA * Math.exp(sum / theta);
    }
}
