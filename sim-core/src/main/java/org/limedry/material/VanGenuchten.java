package org.limedry.material;

import org.limedry.units.Check;

/**
 * Retention {@code S = (1 + (a p)^n)^-(1-1/n)} (van Genuchten 1980, Soil Sci. Soc. Am. J. 44, 892, eq. 3 with m =
 * 1-1/n; FROM MEMORY), water = free saturation times S.
 *
 * @param freeSaturationKgPerM3 water at zero suction, kg/m3; above 0
 * @param entrySuctionPa {@code 1/a}, Pa; above 0
 * @param exponent n; above 1
 */
public record VanGenuchten(double freeSaturationKgPerM3, double entrySuctionPa, double exponent) implements Retention {
    public VanGenuchten {
        Check.positive(freeSaturationKgPerM3, "freeSaturationKgPerM3", "kg/m3");
        Check.positive(entrySuctionPa, "entrySuctionPa", "Pa");
        Check.inOpen(exponent, 1.0, 100.0, "exponent", "");
    }

    /**
     * Returns the curve through three numbers that tables give: {@code n = 1 + ln(w_f / w_80) / ln(a p_80)}.
     *
     * <p>This is the dry-end form of the curve, so w_80 is met to within {@code (a p_80)^-n}.
     *
     * @param freeSaturationKgPerM3 free saturation w_f, kg/m3; above {@code waterAt80KgPerM3}
     * @param waterAt80KgPerM3 water at {@code suctionAt80Pa}, kg/m3; above 0
     * @param suctionAt80Pa suction that belongs to 80 % relative humidity, Pa; above {@code entrySuctionPa}
     * @param entrySuctionPa {@code 1/a}, Pa
     */
    public static VanGenuchten through(
            double freeSaturationKgPerM3, double waterAt80KgPerM3, double suctionAt80Pa, double entrySuctionPa) {
        Check.inOpen(waterAt80KgPerM3, 0.0, freeSaturationKgPerM3, "waterAt80KgPerM3", "kg/m3");
        Check.inOpen(entrySuctionPa, 0.0, suctionAt80Pa, "entrySuctionPa", "Pa");
        double exponent =
                1.0 + Math.log(freeSaturationKgPerM3 / waterAt80KgPerM3) / Math.log(suctionAt80Pa / entrySuctionPa);
        return new VanGenuchten(freeSaturationKgPerM3, entrySuctionPa, exponent);
    }

    /** Returns the saturation at a suction, fraction of free saturation. */
    public double saturation(double suctionPa) {
        return Math.exp(-(1.0 - 1.0 / exponent) * Math.log1p(Math.pow(suctionPa / entrySuctionPa, exponent)));
    }

    /**
     * Returns the suction at a saturation, Pa.
     *
     * @param saturation fraction of free saturation; in (0, 1)
     */
    public double suctionPa(double saturation) {
        Check.inOpen(saturation, 0.0, 1.0, "saturation", "");
        double m = 1.0 - 1.0 / exponent;
        return entrySuctionPa * Math.pow(Math.expm1(-Math.log(saturation) / m), 1.0 / exponent);
    }

    @Override
    public double waterKgPerM3(double suctionPa) {
        return freeSaturationKgPerM3 * saturation(suctionPa);
    }

    @Override
    public double slopeKgPerM3(double suctionPa) {
        double x = Math.pow(suctionPa / entrySuctionPa, exponent);
        double share = Double.isInfinite(x) ? 1.0 : x / (1.0 + x);
        return -(exponent - 1.0) * waterKgPerM3(suctionPa) * share;
    }
}
