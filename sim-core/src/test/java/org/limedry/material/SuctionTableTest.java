package org.limedry.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SuctionTableTest {
    /** A power of suction other than -1, the power -1 itself, a fall to 0, 0 to 0, and 17 decades in one piece. */
    private static final double[] SUCTION = {2.0e2, 3.0e3, 5.0e4, 7.0e5, 4.0e6, 9.0e8};

    private static final double[] WATER = {251.0, 247.0, 160.0, 160.0, 21.0, 0.5};
    private static final double[] CONDUCTIVITY = {3.0e-9, 8.0e-10, 8.0e-10 * 3.0 / 50.0, 0.0, 0.0, 6.0e-12};
    private final SuctionTable table = new SuctionTable(SUCTION, WATER, CONDUCTIVITY);

    // EXACT: the rows themselves.
    @Test
    void table_atItsRows_givesThem() {
        for (int k = 0; k < SUCTION.length; k++) {
            assertEquals(WATER[k], table.waterKgPerM3(SUCTION[k]), 1.0e-12 * WATER[0]); // rounding of ln
            assertEquals(
                    CONDUCTIVITY[k], table.conductivityS(SUCTION[k]), 1.0e-13 * CONDUCTIVITY[0]); // rounding of exp
        }
    }

    // EXACT: in the middle of ln suction water is the mean, conductivity the geometric mean or, beside a 0, the mean.
    @Test
    void table_betweenRows_isLinearInTheLogarithmOfSuction() {
        for (int k = 0; k < SUCTION.length - 1; k++) {
            double middle = Math.sqrt(SUCTION[k] * SUCTION[k + 1]);
            double a = CONDUCTIVITY[k];
            double b = CONDUCTIVITY[k + 1];
            double conductivity = a > 0.0 && b > 0.0 ? Math.sqrt(a * b) : 0.5 * (a + b);

            assertEquals(0.5 * (WATER[k] + WATER[k + 1]), table.waterKgPerM3(middle), 1.0e-11); // rounding of ln
            assertEquals(conductivity, table.conductivityS(middle), 1.0e-12 * CONDUCTIVITY[0]); // rounding of exp
        }
    }

    // EXACT: held constant past the ends, so without a slope.
    @ParameterizedTest
    @CsvSource({"0, 251.0, 3.0e-9", "199, 251.0, 3.0e-9", "-5, 251.0, 3.0e-9", "1e10, 0.5, 6.0e-12"})
    void table_pastItsEnds_isHeld(double suctionPa, double water, double conductivity) {
        assertEquals(water, table.waterKgPerM3(suctionPa), 0.0);
        assertEquals(conductivity, table.conductivityS(suctionPa), 0.0);
        assertEquals(0.0, table.slopeKgPerM3(suctionPa), 0.0);
    }

    // EXACT: (21 - 160) / ln(4e6 / 7e5) on the fourth piece.
    @Test
    void slope_onAPiece_isThatOfTheChord() {
        assertEquals((21.0 - 160.0) / Math.log(4.0e6 / 7.0e5), table.slopeKgPerM3(1.0e6), 1.0e-12); // rounding of ln
    }

    // COMPUTED: the integral of the conductivity over suction by Gauss of 20 points on 400 parts a piece, an
    // independent
    // sum of the interpolated conductivity. Tolerance: what that sum loses on a power over 17 decades.
    @Test
    void potential_isTheIntegralOfTheConductivity() {
        GaussIntegrator gauss = new GaussIntegratorFactory().legendre(20, 0.0, 1.0);
        for (double from : new double[] {1.0e2, 2.0e2, 1.1e3, 3.0e3, 2.0e4, 6.0e5, 7.0e5, 2.0e6, 5.0e6, 3.0e8}) {
            double sum = 0.0;
            int parts = 4000;
            double width = Math.log(9.0e8 / from) / parts;
            for (int part = 0; part < parts; part++) {
                double left = Math.log(from) + part * width;
                sum += width
                        * gauss.integrate(x -> {
                            double suctionPa = Math.exp(left + x * width);
                            return table.conductivityS(suctionPa) * suctionPa;
                        });
            }

            assertEquals(sum, table.potentialKgPerMS(from), 1.0e-6 * sum, "from " + from); // kinks inside a part
        }
    }

    // EXACT: past the driest row its conductivity goes on, so the potential falls below 0 by K (p - p_last).
    @Test
    void potential_pastTheDriestRow_goesOnFalling() {
        assertEquals(-6.0e-12 * 1.0e8, table.potentialKgPerMS(1.0e9), 1.0e-18);
    }

    // EXACT: K = 1e-8 (p / 1e2)^m down to 1e-25 at 1e9 Pa: K p of the wet end over (m + 1), the dry end negligible.
    @Test
    void potential_overSeventeenDecades_isNotLost() {
        SuctionTable wide = new SuctionTable(
                new double[] {1.0e2, 1.0e9}, new double[] {200.0, 1.0}, new double[] {1.0e-8, 1.0e-25});
        double order = Math.log(1.0e-17) / Math.log(1.0e7) + 1.0;

        assertEquals(-1.0e-6 / order, wide.potentialKgPerMS(1.0e2), 1.0e-15);
        double dryFlow = 1.0e-25 * 1.0e9;
        double before = dryFlow * (Math.exp(order * Math.log(5.0e8 / 1.0e9)) - 1.0) / -order;
        assertEquals(before, wide.potentialKgPerMS(5.0e8), 1.0e-10 * before); // rounding of exp
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.0e2, 1.0e2, 0.0, -1.0, Double.NaN})
    void table_secondSuctionNotAboveTheFirst_isRefused(double second) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new SuctionTable(new double[] {2.0e2, second}, new double[] {9.0, 8.0}, new double[] {0.0, 0.0}));
    }

    @Test
    void table_waterThatRisesWithSuction_isRefused() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> new SuctionTable(new double[] {2.0, 3.0}, new double[] {8.0, 9.0}, new double[] {0.0, 0.0}));

        assertTrue(refused.getMessage().contains("never rising"), refused.getMessage());
    }

    @Test
    void table_ofOneRow_isRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new SuctionTable(new double[] {2.0}, new double[] {8.0}, new double[] {0.0}));
    }
}
