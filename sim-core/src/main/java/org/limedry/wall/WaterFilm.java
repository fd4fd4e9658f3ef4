package org.limedry.wall;

/**
 * Water standing on a face: a smooth store in place of "film only at zero suction", and its run-off.
 *
 * <p>{@code m = 0.02 ln(1 + 10 Pa / p)} kg/m2 and run-off above 0.1 kg/m2 at {@code (m - 0.1) / 600 s}, as in the
 * whole-room benchmark, where a film with a hard limit gives the same within its error columns. A thick film, as mist and
 * prewetting make, runs faster, {@code (1 + ((m - 0.1) / 0.01)^2)} times: the flow of a laminar film grows with the cube of
 * its thickness; the length 0.01 kg/m2 is judgement. To this comes what a face
 * adsorbs per e-fold of suction: 2e-7 kg/m2 on a porous face (a monolayer is about 3e-7) and 5e-5 kg/m2 on one that does
 * not drink, for dust and scratches. The second has no source; it holds 1 g on a square metre of dry glass, and lets the
 * solver pass the drying of a pane in minutes rather than in seconds.
 */
final class WaterFilm {
    private static final double STORE_KG_PER_M2 = 0.02;
    private static final double STORE_PA = 10.0;
    private static final double ADSORBED_POROUS_KG_PER_M2 = 2.0e-7;
    private static final double ADSORBED_CLOSED_KG_PER_M2 = 5.0e-5;
    /** What a face holds before water runs, kg/m2. */
    static final double HELD_KG_PER_M2 = 0.1;

    private static final double RUN_OFF_S = 600.0;
    private static final double THICK_KG_PER_M2 = 0.01;
    private static final double SERIES_BELOW = 1.0e-3;

    private WaterFilm() {}

    /** Returns the water on a face, kg/m2. */
    static double waterKgPerM2(double logSuction, boolean closed) {
        double adsorbed = closed ? ADSORBED_CLOSED_KG_PER_M2 : ADSORBED_POROUS_KG_PER_M2;
        return STORE_KG_PER_M2 * logOfOnePlus(STORE_PA * Math.exp(-logSuction))
                + adsorbed * (TransportTable.LARGEST_LOG_SUCTION - logSuction);
    }

    /** Returns the slope of the water on a face by ln p, kg/m2. */
    static double slopeKgPerM2(double logSuction, boolean closed) {
        double adsorbed = closed ? ADSORBED_CLOSED_KG_PER_M2 : ADSORBED_POROUS_KG_PER_M2;
        double suctionPa = Math.exp(logSuction);
        return -STORE_KG_PER_M2 * STORE_PA / (STORE_PA + suctionPa) - adsorbed;
    }

    /** Returns the run-off from a face that carries {@code waterKgPerM2}, kg/(m2 s). */
    static double runOffKgPerM2S(double waterKgPerM2) {
        double excess = Math.max(0.0, waterKgPerM2 - HELD_KG_PER_M2);
        double thick = excess / THICK_KG_PER_M2;
        return excess * (1.0 + thick * thick) / RUN_OFF_S;
    }

    /** Returns the slope of the run-off by the water, 1/s. */
    static double runOffSlopePerS(double waterKgPerM2) {
        double thick = Math.max(0.0, waterKgPerM2 - HELD_KG_PER_M2) / THICK_KG_PER_M2;
        return waterKgPerM2 > HELD_KG_PER_M2 ? (1.0 + 3.0 * thick * thick) / RUN_OFF_S : 0.0;
    }

    /** Returns ln(1 + x) within 1e-12 of itself for x of at least 0; the library's log1p takes a quarter of a whole run. */
    private static double logOfOnePlus(double x) {
        return x < SERIES_BELOW ? x * (1.0 - x * (1.0 / 2.0 - x * (1.0 / 3.0 - x / 4.0))) : Math.log(1.0 + x);
    }
}
