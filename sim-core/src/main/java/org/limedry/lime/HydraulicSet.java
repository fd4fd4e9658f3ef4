package org.limedry.lime;

import org.limedry.units.Check;

/**
 * How far the hydraulic part of a coat has set, and so bound water.
 *
 * <p>Water bound is small: under 10 % of the mix water for natural hydraulic lime, a few percent for slag. Slag is given
 * the pace of natural hydraulic lime, which is probably too slow for it and hardly matters for the water.
 */
public final class HydraulicSet {
    /**
     * Equivalent age at which all but 1/e has set, days. Fitted to the strength of NHL 3.5 at 1:2.5 (S9: 7, 28 and 183 days
     * at 10, 25 and 91 % of the one-year strength), taking strength for set.
     */
    public static final double TIME_CONSTANT_DAYS = 85.0;

    private HydraulicSet() {}

    /**
     * Returns the share that has set, {@code 1 - exp(-t/85 d)}.
     *
     * @param equivalentAgeDays age at 20 C, days; at least 0
     * @return fraction
     */
    public static double degree(double equivalentAgeDays) {
        Check.nonNegative(equivalentAgeDays, "equivalentAgeDays", "days");
        return -Math.expm1(-equivalentAgeDays / TIME_CONSTANT_DAYS);
    }

    /**
     * Returns the water bound while a coat ages, kg/m3.
     *
     * @param finalKgPerM3 water bound in the end, kg/m3; at least 0
     * @param fromDays age at 20 C before, days; at least 0
     * @param untilDays age at 20 C after, days; at least {@code fromDays}
     */
    public static double boundKgPerM3(double finalKgPerM3, double fromDays, double untilDays) {
        Check.nonNegative(finalKgPerM3, "finalKgPerM3", "kg/m3");
        Check.atLeast(untilDays, fromDays, "untilDays", "days");
        return finalKgPerM3 * (degree(untilDays) - degree(fromDays));
    }
}
