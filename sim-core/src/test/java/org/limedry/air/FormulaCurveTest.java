package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class FormulaCurveTest {
    @Test
    void curve_ofAMagnusFormulaOverWater_isTheForm() {
        assertSame(MagnusForm.ISO_WATER, SaturationFormula.ISO13788.curve(Phase.WATER));
    }

    // EXACT: the formula itself in its range, its inverse, and the slope by a wider difference.
    // Tolerance of the slope: curvature over 0.1 K.
    @ParameterizedTest
    @EnumSource(
            value = SaturationFormula.class,
            names = {"WAGNER_1994", "IAPWS_R14_08"},
            mode = EnumSource.Mode.EXCLUDE)
    void curve_inTheRangeOfItsFormula_isTheFormula(SaturationFormula formula) {
        SaturationCurve curve = formula.curve(Phase.WATER);

        double pressure = formula.pressurePa(Phase.WATER, 17.3);

        assertEquals(pressure, curve.pressurePa(17.3), 1.0e-12 * pressure); // rounding
        assertEquals(17.3, curve.celsius(pressure), 1.0e-9); // accuracy of the inverse
        double slope = (curve.pressurePa(17.35) - curve.pressurePa(17.25)) / 0.1;
        assertEquals(slope, curve.slopePaPerK(17.3), 1.0e-5 * slope);
    }

    // EXACT: over ice below 0 C, over water above.
    @Test
    void curve_withIce_countsOverIceBelowZero() {
        SaturationCurve curve = SaturationFormula.ISO13788.curve(Phase.ICE);

        assertEquals(MagnusForm.ISO_ICE.pressurePa(-7.0), curve.pressurePa(-7.0), 0.0);
        assertEquals(MagnusForm.ISO_WATER.pressurePa(7.0), curve.pressurePa(7.0), 0.0);
    }

    @Test
    void curve_ofAFormulaWithoutIce_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> SaturationFormula.FAO56.curve(Phase.ICE));
    }
}
