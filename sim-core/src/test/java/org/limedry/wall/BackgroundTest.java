package org.limedry.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.material.Catalogue;
import org.limedry.material.VanGenuchten;
import org.limedry.reference.MaterialTable;

final class BackgroundTest {
    private final Catalogue catalogue = Catalogue.of(MaterialTable.load());

    // EXACT: a brick wall of 340 mm is one layer of 340 mm.
    @Test
    void layers_ofBrick_areOneMaterial() {
        List<LayerPlan> layers = Background.OLD_BRICK.layers(catalogue::sheet, 0.34, Wetness.DAMP, 7.0);

        assertEquals(1, layers.size());
        assertEquals(0.34, layers.get(0).thicknessM());
        assertEquals(7.0, layers.get(0).startCelsius());
        assertEquals(Catalogue.OLD_BRICK, layers.get(0).name());
    }

    // EXACT: 15 mm of old plaster are part of the 340 mm.
    @Test
    void layers_ofOldPlaster_lieOnBrickTowardsTheRoom() {
        List<LayerPlan> layers = Background.OLD_PLASTER.layers(catalogue::sheet, 0.34, Wetness.DRY, 7.0);

        assertEquals(
                List.of(Catalogue.OLD_BRICK, Catalogue.AIR_LIME_PLASTER),
                List.of(layers.get(0).name(), layers.get(1).name()));
        assertEquals(0.34, layers.get(0).thicknessM() + layers.get(1).thicknessM());
        assertEquals(0.015, layers.get(1).thicknessM());
    }

    // PRACTICE: laths as a layer of 8 mm; assumed, no source.
    @Test
    void timberLath_isAnEightMillimetreLayerWithASealedBack() {
        List<LayerPlan> layers = Background.TIMBER_LATH.layers(catalogue::sheet, 0.12, Wetness.DRY, 7.0);

        assertEquals(1, layers.size());
        assertEquals(0.008, layers.get(0).thicknessM());
        assertEquals(new Side.Sealed(), Background.TIMBER_LATH.outerSide(new Side.Outdoors()));
        assertEquals(new Side.Outdoors(), Background.SANDSTONE.outerSide(new Side.Outdoors()));
    }

    // EXACT: 1 / (0.18 + 0.05 + 0.13) W/m2K behind laths, whatever the neighbour's own face has.
    @Test
    void timberLath_towardsANeighbour_keepsItsAirBehindTheCavity() {
        Side.Air side = (Side.Air) Background.TIMBER_LATH.outerSide(new Side.Air(12.0, 0.75, 8.0, 2e-8));

        assertEquals(12.0, side.celsius());
        assertEquals(0.75, side.relativeHumidity());
        assertEquals(1.0 / 0.36, side.heatTransferWPerM2K(), 1e-15);
        assertTrue(side.vapourTransferSPerM() < 1e-9);
    }

    // EXACT: Kelvin's law at 7 C: -ln(phi) 1000 461.5 280.15; half and 95 % of free saturation by the retention.
    @ParameterizedTest
    @CsvSource({"DRY, 0.60, -1", "DAMP, 0.90, -1", "WET, -1, 0.50", "SOAKED, -1, 0.95"})
    void wetness_setsTheStartingSuction(Wetness wetness, double humidity, double saturation) {
        VanGenuchten brick = catalogue.sheet(Catalogue.OLD_BRICK).storage().retention();

        double suctionPa = wetness.startSuctionPa(brick, 7.0, Constants.ordinary());

        if (humidity > 0.0) {
            // Some ulp of the exponential.
            assertEquals(humidity, Math.exp(-suctionPa / (1000.0 * 461.5 * 280.15)), 1e-14);
        } else {
            // The closed inverse of the retention loses a few digits near saturation.
            assertEquals(saturation, brick.saturation(suctionPa), 1e-12);
        }
    }
}
