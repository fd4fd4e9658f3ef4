package org.limedry.air;

import org.limedry.units.Check;

/**
 * A ventilated psychrometer: two thermometers, one in a wet or frozen wick, in moving air.
 *
 * @param coefficientPerK psychrometer coefficient at a wet bulb of 0 °C, 1/K; above 0
 * @param growthPerK relative growth of the coefficient per kelvin of the wet bulb, 1/K
 */
public record Psychrometer(double coefficientPerK, double growthPerK) {
    /** FROM MEMORY: Ferrel, {@code A = 6.60e-4·(1 + 0.00115·tw)}. */
    public static final Psychrometer FERREL = new Psychrometer(6.60e-4, 0.00115);

    public Psychrometer {
        Check.positive(coefficientPerK, "coefficientPerK", "1/K");
        Check.finite(growthPerK, "growthPerK", "1/K");
    }

    /**
     * Returns the vapour pressure of the air, {@code e = ps(tw) - A·p·(t - tw)}.
     *
     * @param dryCelsius dry bulb, °C
     * @param wetCelsius wet bulb, °C; in the range of the formula over the phase of the wick
     * @param pressurePa barometric pressure, Pa
     * @param wick whether the wick is wet or frozen
     * @param formula the saturation formula
     * @return vapour pressure, Pa; negative for readings that no air can give
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or the formula lacks the phase
     */
    public double vapourPressurePa(
            double dryCelsius, double wetCelsius, double pressurePa, Phase wick, SaturationFormula formula) {
        Check.finite(dryCelsius, "dryCelsius", "°C");
        Check.positive(pressurePa, "pressurePa", "Pa");
        double coefficient = coefficientPerK * (1.0 + growthPerK * wetCelsius);
        return formula.pressurePa(wick, wetCelsius) - coefficient * pressurePa * (dryCelsius - wetCelsius);
    }
}
