package org.limedry.material;

/**
 * Water held by a material at a given suction, wetting and drying alike (no hysteresis).
 *
 * <p>Implementations fall monotonically from {@link #freeSaturationKgPerM3()} at zero suction towards zero.
 */
public interface Retention {
    /**
     * Returns the water held.
     *
     * @param suctionPa suction (capillary pressure), Pa; at least 0
     * @return water, kg/m3
     */
    double waterKgPerM3(double suctionPa);

    /**
     * Returns the slope of the water by the natural logarithm of suction, {@code dw/d ln p}, kg/m3; at most 0.
     *
     * @param suctionPa suction, Pa; above 0
     */
    double slopeKgPerM3(double suctionPa);

    /** Returns the water held at zero suction, kg/m3. */
    double freeSaturationKgPerM3();
}
