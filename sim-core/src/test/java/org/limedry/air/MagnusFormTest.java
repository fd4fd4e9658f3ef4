package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MagnusFormTest {
    // EXACT: at 0 °C the exponent vanishes and the pressure is the prefactor.
    @Test
    void pressure_atZeroCelsius_isTheReference() {
        assertEquals(611.2, MagnusForm.WMO_WATER.pressurePa(0.0), 0.0); // exact: exp(0) is 1
        assertEquals(611.2, MagnusForm.WMO_ICE.pressurePa(0.0), 0.0); // exact: exp(0) is 1
        assertEquals(610.5, MagnusForm.ISO_WATER.pressurePa(0.0), 0.0); // exact: exp(0) is 1
        assertEquals(610.5, MagnusForm.ISO_ICE.pressurePa(0.0), 0.0); // exact: exp(0) is 1
    }

    // COMPUTED: Python 3.11 decimal, 30 digits: p0*exp(a*t/(b+t)).
    @ParameterizedTest
    @CsvSource({
        "611.2, 17.62, 243.12, 13.5, 1544.35095190518",
        "611.2, 22.46, 272.62, -7.5, 323.775889186553",
        "610.5, 17.269, 237.3, 13.5, 1546.62393657708",
        "610.5, 21.875, 265.5, -7.5, 323.234197698458"
    })
    void pressure_matchesTheFormula(
            double referencePa, double slope, double offset, double celsius, double expectedPa) {
        MagnusForm form = new MagnusForm(referencePa, slope, offset);

        double found = form.pressurePa(celsius);

        assertEquals(expectedPa, found, expectedPa * 1e-13); // a few ulp of exp(), the expected value has 15 digits
    }

    // EXACT: the slope is the derivative; a central difference of half-width h errs by h²·p'''/6.
    @Property
    void slope_isTheDerivativeOfThePressure(@ForAll @DoubleRange(min = -40.0, max = 60.0) double celsius) {
        MagnusForm form = MagnusForm.WMO_WATER;
        double h = 1e-3;
        double difference = (form.pressurePa(celsius + h) - form.pressurePa(celsius - h)) / (2.0 * h);

        double slope = form.slopePaPerK(celsius);

        assertEquals(difference, slope, slope * 1e-8); // h² p'''/(6 p') is below 1e-9, rounding p/h below 1e-9
    }

    @Property
    void celsius_isTheInverseOfThePressure(@ForAll @DoubleRange(min = -100.0, max = 100.0) double celsius) {
        MagnusForm form = MagnusForm.WMO_ICE;

        double back = form.celsius(form.pressurePa(celsius));

        assertEquals(celsius, back, 1e-11); // one ulp of p is 2e-16·p, times dt/dp of up to 20 K per factor e
    }

    @Property
    void pressure_rises(
            @ForAll @DoubleRange(min = -100.0, max = 100.0) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 10.0) double warmerByK) {
        MagnusForm form = MagnusForm.ISO_WATER;

        assertTrue(form.pressurePa(celsius + warmerByK) > form.pressurePa(celsius));
    }

    @Test
    void celsius_ofNoPressure_isRefused() {
        for (double bad : new double[] {0.0, -12.5, 1e12, Double.NaN}) {
            var e = assertThrows(IllegalArgumentException.class, () -> MagnusForm.WMO_WATER.celsius(bad));

            assertTrue(e.getMessage().startsWith("pressurePa: must be in (0, "), e.getMessage());
            assertTrue(e.getMessage().endsWith(" Pa, was " + bad), e.getMessage());
        }
    }

    @Test
    void construction_withoutAPositiveConstant_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new MagnusForm(0.0, 17.62, 243.12));
        assertThrows(IllegalArgumentException.class, () -> new MagnusForm(611.2, Double.NaN, 243.12));
        assertThrows(IllegalArgumentException.class, () -> new MagnusForm(611.2, 17.62, -243.12));
    }
}
