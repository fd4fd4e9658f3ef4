package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.limedry.Refusal;

/** Arguments of moist air at the ends of their ranges and beyond. */
final class AirArgumentsTest {
    private static final double PRESSURE_PA = 98_000.0;
    private static final Saturation OVER_ICE =
            new Saturation(SaturationFormula.WMO8_MAGNUS, Phase.ICE, Enhancement.NONE);

    @Test
    void functions_refuseEachArgument() {
        Refusal.of(
                "dryCelsius",
                () -> AdiabaticSaturation.humidityRatio(
                        Double.NaN, 9.0, PRESSURE_PA, Phase.WATER, Saturation.METEOROLOGY));
        Refusal.of("pressurePa", () -> CarbonDioxideContent.kgPerM3(420.0, 10.0, 0.0));
        Refusal.of("formula", () -> new FormulaCurve(SaturationFormula.IAPWS_R14_08, Phase.ICE));
        Refusal.of("limit", () -> MoistAir.of(12.0, 0.7, PRESSURE_PA).surfaceCelsiusAt(1.01));
        Refusal.of("growthPerK", () -> new Psychrometer(6.6e-4, Double.NaN));
        Refusal.of(
                "pressurePa",
                () -> Psychrometer.FERREL.vapourPressurePa(
                        12.0, 9.0, Double.NaN, Phase.WATER, SaturationFormula.WMO8_MAGNUS));
        Refusal.of("insideCelsius", () -> TemperatureFactor.ofSurface(12.0, Double.POSITIVE_INFINITY, 7.5));
        Refusal.of("outsideCelsius", () -> TemperatureFactor.ofSurface(12.0, 17.5, Double.NEGATIVE_INFINITY));
        Refusal.of("transmittanceWPerM2K", () -> TemperatureFactor.ofTransmittance(-2.0, 0.13));
    }

    // EXACT: the definition: water from 0 C up, the phase asked for below.
    @Test
    void phase_atZero_isWater() {
        assertEquals(Phase.WATER, OVER_ICE.phaseAt(0.0));
        assertEquals(Phase.ICE, OVER_ICE.phaseAt(-1.0e-9));
    }

    // EXACT: 611.2 Pa is the saturation pressure of WMO Magnus at 0 C over both phases, so air of that vapour pressure
    // is saturated at 0 C, over water.
    @Test
    void air_saturatedAtZero_isSaturatedOverWater() {
        assertEquals(0.0, OVER_ICE.saturationCelsius(611.2, PRESSURE_PA).orElseThrow(), 1.0e-12); // rounding
        // The inverse of 611.2 exp(17.62 t / (243.12 + t)) where water counts below 0 C too; some ulp.
        double log = Math.log(500.0 / 611.2);
        assertEquals(
                243.12 * log / (17.62 - log),
                Saturation.METEOROLOGY.saturationCelsius(500.0, PRESSURE_PA).orElseThrow(),
                1.0e-12);
        // The inverse of 611.2 exp(22.46 t / (272.62 + t)); some ulp.
        assertEquals(
                272.62 * log / (22.46 - log),
                OVER_ICE.saturationCelsius(500.0, PRESSURE_PA).orElseThrow(),
                1.0e-12);
    }

    // EXACT: a surface at the dew point sees a relative humidity of 1, and dew forms from there on.
    @Test
    void dew_formsOnAFaceThatSeesSaturation() {
        MoistAir saturated = MoistAir.of(12.5, 1.0, PRESSURE_PA);

        assertEquals(1.0, saturated.relativeHumidityAt(12.5));
        assertTrue(saturated.condensesOn(12.5));
        assertFalse(saturated.condensesOn(12.6));
    }

    // EXACT: a formula tells no temperature of saturation outside the temperatures it was made for.
    @Test
    void pressureOutsideTheRangeOfAFormula_hasNoTemperature() {
        SaturationFormula formula = SaturationFormula.WAGNER_PRUSS_AUX;
        double lowestPa = formula.extrapolatedPressurePa(Phase.WATER, formula.lowestCelsius(Phase.WATER));
        double highestPa = formula.extrapolatedPressurePa(Phase.WATER, formula.maxCelsius(Phase.WATER));

        assertFalse(isToldAt(formula, 0.99 * lowestPa));
        assertTrue(isToldAt(formula, 1.01 * lowestPa));
        assertTrue(isToldAt(formula, 0.99 * highestPa));
        assertFalse(isToldAt(formula, 1.01 * highestPa));
    }

    private static boolean isToldAt(SaturationFormula formula, double pressurePa) {
        return formula.extrapolatedSaturationCelsius(Phase.WATER, pressurePa).isPresent();
    }
}
