package org.limedry.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.material.CapillaryLaw;
import org.limedry.material.Catalogue;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.material.VanGenuchten;
import org.limedry.reference.MaterialTable;

final class TransportTableTest {
    /** Not a divisor of the knots' distance, so that places between knots are met. */
    private static final double SAMPLE = 0.00371;

    private static final double FULL = 280.0;
    private final double[] found = new double[TransportTable.WIDTH];

    static List<String> materials() {
        return List.of(
                Catalogue.OLD_BRICK,
                Catalogue.AIR_LIME_PLASTER,
                Catalogue.LIME_RUBBLE,
                Catalogue.GRANITE,
                Catalogue.SOFTWOOD,
                Catalogue.LATH_LAYER);
    }

    // EXACT: the material's own functions with the small store. Tolerance: the claim of the table, 1e-6.
    @ParameterizedTest
    @MethodSource("materials")
    void table_ofACatalogueMaterial_followsItsFunctions(String name) {
        Material material = Catalogue.of(MaterialTable.load()).material(name);
        TransportTable table = new TransportTable(material);
        double full = material.retention().freeSaturationKgPerM3();
        double dry = material.vapourPermeabilityKgPerMSPa().at(0.0);

        for (double u = lowest(); u < TransportTable.LARGEST_LOG_SUCTION; u += SAMPLE) {
            table.evaluate(u, found, 0);
            double suctionPa = Math.exp(u);
            double own = material.retention().waterKgPerM3(suctionPa);
            double water = own + 4.0e-4 * full * Math.log1p(10.0 / suctionPa);
            assertEquals(water, found[0], 1.0e-6 * water);
            assertEquals(found[0], table.waterKgPerM3(u), 0.0);
            assertEquals(found[1], table.waterSlopeKgPerM3(u), 0.0);
            assertEquals(material.vapourPermeabilityKgPerMSPa().at(own), found[4], 1.0e-6 * dry);
            double conductivity = material.conductivityWPerMK().at(own);
            assertEquals(conductivity, found[6], 1.0e-6 * conductivity);
        }
    }

    // EXACT: without the dry-end factor the potential is D_s w_f / 6 (e^(6(S-1)) - e^(6(S_dry-1))), and the small store
    // adds D near saturation times its water. Tolerance: the claim of the table, 1e-5.
    @Test
    void potential_ofTheExponentialLaw_followsItsClosedForm() {
        VanGenuchten retention = new VanGenuchten(FULL, 6.25e4, 1.62);
        CapillaryLaw law = new CapillaryLaw(retention, 0.25, false, 1.0);
        TransportTable table = new TransportTable(material(law, retention));
        double dry = Math.exp(6.0 * (retention.saturation(1.0e11) - 1.0));
        double nearSaturation = law.diffusivityM2PerS(retention.saturation(1.0e3));

        for (double u = lowest(); u < Math.log(1.0e9); u += SAMPLE) {
            table.evaluate(u, found, 0);
            double suctionPa = Math.exp(u);
            double wet = Math.exp(6.0 * (retention.saturation(suctionPa) - 1.0));
            double own = law.saturatedDiffusivityM2PerS() * FULL / 6.0 * (wet - dry);
            double expected = own + nearSaturation * 4.0e-4 * FULL * Math.log1p(10.0 / suctionPa);
            assertEquals(expected, found[2], 1.0e-5 * expected);
        }
    }

    // EXACT: slopes are those of the pieces; a difference over 2e-6 in ln p errs by 1e-9 of the curvature.
    @Test
    void slopes_ofAllQuantities_areDerivativesOfTheValues() {
        TransportTable table =
                new TransportTable(Catalogue.of(MaterialTable.load()).material(Catalogue.OLD_BRICK));
        double[] above = new double[TransportTable.WIDTH];
        double[] below = new double[TransportTable.WIDTH];

        for (double u = lowest(); u < Math.log(1.0e9); u += 0.317) {
            table.evaluate(u, found, 0);
            table.evaluate(u + 1.0e-6, above, 0);
            table.evaluate(u - 1.0e-6, below, 0);
            for (int q = 0; q < TransportTable.WIDTH; q += 2) {
                double slope = (above[q] - below[q]) / 2.0e-6;
                assertEquals(slope, found[q + 1], 1.0e-8 * Math.abs(found[q]) + 1.0e-6 * Math.abs(slope));
            }
        }
    }

    // EXACT: glass holds and passes nothing; its token store is 1e-9 kg/m3 per e-fold of suction.
    @Test
    void table_ofAClosedMaterial_passesNothing() {
        Closed none = Closed.instance();
        Material glass = new Material("glass", none, none, none, water -> 1.1, 1.9e6);
        TransportTable table = new TransportTable(glass);

        table.evaluate(Math.log(2.0e5), found, 0);

        assertTrue(table.isClosed());
        assertEquals(0.0, found[2], 0.0);
        assertEquals(0.0, found[4], 0.0);
        assertEquals(1.1, found[6], 1.0e-12);
        assertEquals(-1.0e-9, found[1], 1.0e-15);
    }

    private static double lowest() {
        return TransportTable.LEAST_LOG_SUCTION + 0.5 * SAMPLE;
    }

    private static Material material(CapillaryLaw law, VanGenuchten retention) {
        return new Material("brick", retention, law, water -> 0.0, water -> 0.6 + 0.006 * water, 1.4e6);
    }
}
