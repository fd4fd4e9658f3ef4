package org.limedry.material;

import org.limedry.units.Check;

/**
 * Liquid conductivity from the water absorption coefficient: {@code K = D |dw/dp|} with {@code D = D_s exp(6 (S-1))
 * S^4 / (S^4 + 0.35^4)} and {@code D_s = r (A / (0.5512 w_s))^2}.
 *
 * <p>The exponential diffusivity and its sorptivity factor 0.5512 for the exponent 6 follow Hall and Hoff (sharp-front
 * theory; FROM MEMORY), the factor itself is recomputed in the capillary benchmark. The last factor ends the liquid
 * path at the dry end; it has no source: without it the last stage of drying runs 2 to 3 times too fast. Where it is
 * used, {@code r} restores the absorption coefficient.
 *
 * @param retention the material's retention
 * @param absorptionKgPerM2SqrtS A, kg/(m2 s^0.5); at least 0
 * @param dryEnd whether the liquid path ends at the dry end
 * @param rescale r; above 0, 1 without the dry-end factor
 */
public record CapillaryLaw(Retention retention, double absorptionKgPerM2SqrtS, boolean dryEnd, double rescale)
        implements LiquidTransport {
    /** Exponent of the diffusivity. */
    public static final double EXPONENT = 6.0;

    /** Sorptivity over the root of the diffusivity at saturation, for {@link #EXPONENT} (capillary benchmark A). */
    public static final double SORPTIVITY_FACTOR = 0.551228;

    /** Saturation at which the dry-end factor is one half. */
    public static final double DRY_END_SATURATION = 0.35;

    public CapillaryLaw {
        Check.nonNegative(absorptionKgPerM2SqrtS, "absorptionKgPerM2SqrtS", "kg/(m2 s^0.5)");
        Check.positive(rescale, "rescale", "");
    }

    /** Returns the diffusivity at free saturation, m2/s. */
    public double saturatedDiffusivityM2PerS() {
        double root = absorptionKgPerM2SqrtS / (SORPTIVITY_FACTOR * retention.freeSaturationKgPerM3());
        return rescale * root * root;
    }

    /**
     * Returns the diffusivity.
     *
     * @param saturation fraction of free saturation
     * @return m2/s
     */
    public double diffusivityM2PerS(double saturation) {
        double full = saturatedDiffusivityM2PerS() * Math.exp(EXPONENT * (saturation - 1.0));
        if (!dryEnd) {
            return full;
        }
        double s4 = Math.pow(saturation, 4);
        return full * s4 / (s4 + Math.pow(DRY_END_SATURATION, 4));
    }

    @Override
    public double conductivityS(double suctionPa) {
        double saturation = retention.waterKgPerM3(suctionPa) / retention.freeSaturationKgPerM3();
        return diffusivityM2PerS(saturation) * -retention.slopeKgPerM3(suctionPa) / suctionPa;
    }
}
