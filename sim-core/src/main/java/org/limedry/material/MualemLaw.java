package org.limedry.material;

import org.limedry.units.Check;

/**
 * Liquid conductivity {@code K = K_s S^0.5 (1 - (1 - S^(1/m))^m)^2}, m = 1-1/n (Mualem 1976, Water Resour. Res. 12, 513,
 * closed by van Genuchten 1980; FROM MEMORY).
 *
 * @param retention the material's retention
 * @param saturatedS K_s, s; above 0
 */
public record MualemLaw(VanGenuchten retention, double saturatedS) implements LiquidTransport {
    public MualemLaw {
        Check.positive(saturatedS, "saturatedS", "s");
    }

    @Override
    public double conductivityS(double suctionPa) {
        double m = 1.0 - 1.0 / retention.exponent();
        double x = Math.pow(suctionPa / retention.entrySuctionPa(), retention.exponent());
        // S^(1/m) = 1/(1+x), and 1 - (x/(1+x))^m without cancellation at the dry end.
        double bracket = -Math.expm1(-m * Math.log1p(1.0 / x));
        return saturatedS * Math.sqrt(retention.saturation(suctionPa)) * bracket * bracket;
    }
}
