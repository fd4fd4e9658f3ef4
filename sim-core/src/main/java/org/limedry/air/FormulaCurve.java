package org.limedry.air;

import org.limedry.units.Check;

/**
 * A published formula as a curve, followed beyond the range of its source.
 *
 * <p>The slope is a central difference over 2 mK, within 1e-8 of itself for the published formulas: it serves the
 * linearisation of a step, never a result. With ice below 0 °C the curve has its kink there.
 *
 * @param formula the formula
 * @param belowZero the phase that counts below 0 °C
 */
record FormulaCurve(SaturationFormula formula, Phase belowZero) implements SaturationCurve {
    private static final double HALF_STEP_K = 1.0e-3;
    private static final double PRESSURE_PA = 101_325.0;

    FormulaCurve {
        Check.that(formula.covers(Phase.WATER), "formula", "one over water", formula);
        Check.that(formula.covers(belowZero), "belowZero", "a phase over which the formula is published", belowZero);
    }

    @Override
    public double pressurePa(double celsius) {
        return formula.extrapolatedPressurePa(celsius < 0.0 ? belowZero : Phase.WATER, celsius);
    }

    @Override
    public double slopePaPerK(double celsius) {
        return (pressurePa(celsius + HALF_STEP_K) - pressurePa(celsius - HALF_STEP_K)) / (2.0 * HALF_STEP_K);
    }

    @Override
    public double celsius(double pressurePa) {
        Saturation saturation = new Saturation(formula, belowZero, Enhancement.NONE);
        return saturation.saturationCelsius(pressurePa, PRESSURE_PA).orElse(Double.NaN);
    }
}
