package org.limedry.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Retention, liquid conductivity and vapour permeability at points where they are closed forms. */
final class WaterLawsTest {
    /** With n = 2 and three times the square of the entry suction, x = 3: S = 1/2. */
    private static final VanGenuchten RETENTION = new VanGenuchten(280.0, 5.0e4, 2.0);

    private static final double HALF_FULL_PA = 5.0e4 * Math.sqrt(3.0);
    private static final double ROUNDING = 1.0e-13; // some ten operations

    // EXACT: S = (1 + 3)^-(1/2), dw/d ln p = -(n - 1) w x/(1 + x) = -140 x 3/4.
    @Test
    void retention_whereTheBracketIsFour_isHalfFull() {
        assertEquals(140.0, RETENTION.waterKgPerM3(HALF_FULL_PA), 140.0 * ROUNDING);
        assertEquals(-105.0, RETENTION.slopeKgPerM3(HALF_FULL_PA), 105.0 * ROUNDING);
        assertEquals(HALF_FULL_PA, RETENTION.suctionPa(0.5), HALF_FULL_PA * ROUNDING);
    }

    // EXACT: the slope is the derivative. Tolerance: a central difference of 1e-4 in ln p errs by 1e-8 / 6 times n^3 at
    // most, and by rounding over 1e-4.
    @Property(tries = 300)
    void slope_ofAnyRetention_isItsDerivative(
            @ForAll @DoubleRange(min = 1.05, max = 4.0) double exponent,
            @ForAll @DoubleRange(min = 5.0, max = 22.0) double logSuction) {
        VanGenuchten retention = new VanGenuchten(310.0, 3.3e4, exponent);

        double before = retention.waterKgPerM3(Math.exp(logSuction - 1.0e-4));
        double after = retention.waterKgPerM3(Math.exp(logSuction + 1.0e-4));

        assertEquals((after - before) / 2.0e-4, retention.slopeKgPerM3(Math.exp(logSuction)), 310.0 * 3.0e-8);
    }

    // EXACT: at (1e10)^40 nothing is left, and the slope of nothing is 0, not infinity by infinity.
    @Test
    void slope_farBeyondTheRangeOfNumbers_isZero() {
        VanGenuchten steep = new VanGenuchten(280.0, 5.0e4, 40.0);

        assertEquals(0.0, steep.slopeKgPerM3(5.0e14), 0.0);
    }

    // EXACT: S = 1/2 and m = 1/2 give K = K_s sqrt(1/2) (1 - sqrt(3/4))^2.
    @Test
    void mualem_halfFull_isItsClosedForm() {
        MualemLaw law = new MualemLaw(RETENTION, 3.0e-9);

        double bracket = 1.0 - Math.sqrt(0.75);
        double expected = 3.0e-9 * Math.sqrt(0.5) * bracket * bracket;
        assertEquals(expected, law.conductivityS(HALF_FULL_PA), expected * 10.0 * ROUNDING);
    }

    // EXACT: D = r (A / (0.551228 w_f))^2 exp(6 (1/2 - 1)), with the dry end times (1/16) / (1/16 + 0.35^4); K = D
    // |dw/d ln p| / p.
    @Test
    void capillaryLaw_halfFull_isItsClosedForm() {
        CapillaryLaw open = new CapillaryLaw(RETENTION, 0.25, false, 1.1);
        CapillaryLaw ending = new CapillaryLaw(RETENTION, 0.25, true, 1.1);

        double root = 0.25 / (0.551228 * 280.0);
        double diffusivity = 1.1 * root * root * Math.exp(-3.0);
        double share = 0.0625 / (0.0625 + Math.pow(0.35, 4.0));
        assertEquals(diffusivity, open.diffusivityM2PerS(0.5), diffusivity * ROUNDING);
        assertEquals(diffusivity * share, ending.diffusivityM2PerS(0.5), diffusivity * ROUNDING);
        double conductivity = diffusivity * 105.0 / HALF_FULL_PA;
        assertEquals(conductivity, open.conductivityS(HALF_FULL_PA), conductivity * ROUNDING);
        assertEquals(conductivity * share, ending.conductivityS(HALF_FULL_PA), conductivity * ROUNDING);
    }

    // EXACT: 2e-10 / 8 times (1 - S), and none in full pores.
    @Test
    void vapourResistance_closesAsPoresFill() {
        VapourResistance permeability = new VapourResistance(2.0e-10, 8.0, 280.0);

        assertEquals(1.25e-11, permeability.at(140.0), 1.25e-11 * ROUNDING);
        assertEquals(0.0, permeability.at(280.0));
        assertEquals(0.0, permeability.at(281.0));
    }

    // EXACT: more suction never holds more water nor passes more of it.
    @Property(tries = 300)
    void drier_holdsLessAndPassesLess(
            @ForAll @DoubleRange(min = 4.0, max = 20.0) double logSuction,
            @ForAll @DoubleRange(min = 0.01, max = 2.0) double further) {
        MualemLaw law = new MualemLaw(RETENTION, 3.0e-9);
        double wetter = Math.exp(logSuction);
        double drier = Math.exp(logSuction + further);

        assertTrue(RETENTION.waterKgPerM3(drier) < RETENTION.waterKgPerM3(wetter));
        assertTrue(law.conductivityS(drier) < law.conductivityS(wetter));
    }
}
