package org.limedry.air;

import java.util.OptionalDouble;

/**
 * What counts as saturated: a formula, the phase that counts below 0 °C, and the enhancement in moist air.
 *
 * @param formula the saturation formula
 * @param belowZero the phase over which humidity is counted below 0 °C; from 0 °C up it is always water
 * @param enhancement factor on the saturation pressure
 */
public record Saturation(SaturationFormula formula, Phase belowZero, Enhancement enhancement) {
    /** WMO Magnus over water at all temperatures, as meteorology counts relative humidity; ideal air. */
    public static final Saturation METEOROLOGY =
            new Saturation(SaturationFormula.WMO8_MAGNUS, Phase.WATER, Enhancement.NONE);

    /** Returns the phase that counts at a temperature. */
    public Phase phaseAt(double celsius) {
        return celsius < 0.0 ? belowZero : Phase.WATER;
    }

    /**
     * Returns the saturation vapour pressure in moist air.
     *
     * @param celsius temperature, °C; in the range of the formula over the phase that counts there
     * @param pressurePa barometric pressure, Pa
     * @return saturation vapour pressure, Pa
     * @throws IllegalArgumentException if an argument is NaN or outside its range, or the formula lacks the phase
     */
    public double pressurePa(double celsius, double pressurePa) {
        return enhancement.factor(pressurePa) * formula.pressurePa(phaseAt(celsius), celsius);
    }

    /**
     * Returns the temperature at which moist air of this vapour pressure is saturated over one phase. Very dry air is
     * followed below the range of a formula, see {@link SaturationFormula#extrapolatedSaturationCelsius}.
     *
     * @param vapourPressurePa vapour pressure, Pa; 0 or above
     * @param pressurePa barometric pressure, Pa
     * @return dew or frost point, °C; empty when there is none or the formula does not cover it
     */
    public OptionalDouble saturationCelsius(Phase phase, double vapourPressurePa, double pressurePa) {
        if (vapourPressurePa == 0.0 || !formula.covers(phase)) {
            return OptionalDouble.empty();
        }
        return formula.extrapolatedSaturationCelsius(phase, vapourPressurePa / enhancement.factor(pressurePa));
    }

    /**
     * Returns the temperature at which moist air of this vapour pressure is saturated, over the phase that counts at that
     * temperature.
     *
     * @param vapourPressurePa vapour pressure, Pa; 0 or above
     * @param pressurePa barometric pressure, Pa
     * @return temperature, °C; empty when there is none or the formula does not cover it
     */
    public OptionalDouble saturationCelsius(double vapourPressurePa, double pressurePa) {
        OptionalDouble overWater = saturationCelsius(Phase.WATER, vapourPressurePa, pressurePa);
        boolean waterCounts = belowZero == Phase.WATER || overWater.orElse(-1.0) >= 0.0;
        return waterCounts ? overWater : saturationCelsius(Phase.ICE, vapourPressurePa, pressurePa);
    }
}
