package org.limedry.air;

import org.limedry.units.Check;

/**
 * A saturation vapour pressure of the Magnus form, with its closed inverse and slope.
 *
 * <p>{@code p = p0 · exp(a·t / (b + t))}, t in °C. The form carries no range of validity: it is evaluated wherever it is
 * asked, so a caller that needs the range of the source goes through {@link SaturationFormula}.
 *
 * @param referencePa p0, the pressure at 0 °C, Pa; above 0
 * @param slope a, dimensionless; above 0
 * @param offsetCelsius b, °C; above 0
 */
public record MagnusForm(double referencePa, double slope, double offsetCelsius) implements SaturationCurve {
    /** Over water. Source: WMO-No. 8, annex 4.B, eq. 4.B.1, second-hand. Valid: -45 to 60 °C. */
    public static final MagnusForm WMO_WATER = new MagnusForm(611.2, 17.62, 243.12);

    /** Over ice. Source: WMO-No. 8, annex 4.B, eq. 4.B.2, second-hand. Valid: -65 to 0.01 °C (range FROM MEMORY). */
    public static final MagnusForm WMO_ICE = new MagnusForm(611.2, 22.46, 272.62);

    /** Over water. Source: ISO 13788:2012, annex E (prefactor FROM MEMORY). Valid: from 0 °C. */
    public static final MagnusForm ISO_WATER = new MagnusForm(610.5, 17.269, 237.3);

    /** Over ice. Source: ISO 13788:2012, annex E (prefactor FROM MEMORY). Valid: below 0 °C. */
    public static final MagnusForm ISO_ICE = new MagnusForm(610.5, 21.875, 265.5);

    public MagnusForm {
        Check.positive(referencePa, "referencePa", "Pa");
        Check.positive(slope, "slope", "");
        Check.positive(offsetCelsius, "offsetCelsius", "°C");
    }

    /**
     * Returns the saturation vapour pressure, {@code p0 · exp(a·t / (b + t))}.
     *
     * @param celsius temperature, °C; above the pole at {@code -offsetCelsius}, NaN gives NaN
     * @return saturation vapour pressure, Pa
     */
    @Override
    public double pressurePa(double celsius) {
        return referencePa * Math.exp(slope * celsius / (offsetCelsius + celsius));
    }

    /**
     * Returns the derivative of {@link #pressurePa} by temperature, {@code p · a·b / (b + t)²}.
     *
     * @param celsius temperature, °C; above the pole at {@code -offsetCelsius}, NaN gives NaN
     * @return slope of the saturation vapour pressure, Pa/K
     */
    @Override
    public double slopePaPerK(double celsius) {
        double fromPole = offsetCelsius + celsius;
        return pressurePa(celsius) * slope * offsetCelsius / (fromPole * fromPole);
    }

    /**
     * Returns the temperature at which this pressure is the saturation pressure: the closed inverse of {@link
     * #pressurePa}, {@code t = b·ln(p/p0) / (a - ln(p/p0))}.
     *
     * @param pressurePa vapour pressure, Pa; above 0 and below {@code p0 · exp(a)}
     * @return dew point (for a water form) or frost point (for an ice form), °C
     * @throws IllegalArgumentException if {@code pressurePa} is NaN or outside that range
     */
    @Override
    public double celsius(double pressurePa) {
        Check.inOpen(pressurePa, 0.0, referencePa * Math.exp(slope), "pressurePa", "Pa");
        double logarithm = Math.log(pressurePa / referencePa);
        return offsetCelsius * logarithm / (slope - logarithm);
    }
}
