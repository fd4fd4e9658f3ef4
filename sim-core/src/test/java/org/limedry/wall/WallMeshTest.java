package org.limedry.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.limedry.material.Catalogue;
import org.limedry.reference.MaterialTable;

final class WallMeshTest {
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final WallMesh MESH = WallMesh.empty(true)
            .with(new double[] {0.001, 0.004, 0.002, 0.0005}, table(Catalogue.OLD_BRICK))
            .with(new double[] {1.0e-4, 0.003, 1.0e-4}, table(Catalogue.AIR_LIME_PLASTER));

    // EXACT: the suction that was put in, whatever the search starts from; nodes 0 and 7 carry films, 4 is the contact.
    // Tolerance: the water comes back to rounding, the suction as far as a rounded water fixes it.
    @Property(tries = 500)
    void logSuction_ofTheWaterOfASuction_isThatSuction(
            @ForAll @IntRange(min = 0, max = 7) int node,
            @ForAll @DoubleRange(min = -9.2, max = 25.3) double logSuction,
            @ForAll @DoubleRange(min = -60.0, max = 60.0) double guess) {
        double water = MESH.storedKgPerM2(node, logSuction);

        double found = MESH.logSuction(node, water, guess, 1.0e-7);

        assertEquals(water, MESH.storedKgPerM2(node, found), 1.0e-14 * water);
        double rounding = 1.0e-14 * water / -MESH.storedSlopeKgPerM2(node, logSuction);
        assertEquals(logSuction, found, 1.0e-9 + rounding);
    }

    @Test
    void logSuction_ofMoreWaterThanTheNodeHolds_isNotANumber() {
        double most = MESH.storedKgPerM2(2, TransportTable.LEAST_LOG_SUCTION);

        assertTrue(Double.isNaN(MESH.logSuction(2, 1.01 * most, 10.0, 1.0e-7)));
    }

    // EXACT: halves of the links on both sides; a film only on the two faces.
    @Test
    void mesh_ofTwoLayers_knowsItsContactAndFaces() {
        assertEquals(8, MESH.nodes());
        assertEquals(4, MESH.lastNode(0));
        assertEquals(4, MESH.firstNode(1));
        assertEquals(2.5e-4, MESH.halfBeforeM(4), 1.0e-15);
        assertEquals(5.0e-5, MESH.halfAfterM(4), 1.0e-15);
        assertTrue(MESH.filmKgPerM2(7, 1.0) > 0.0);
        assertTrue(MESH.filmKgPerM2(0, 1.0) > 0.0);
        assertEquals(0.0, MESH.filmKgPerM2(4, 1.0), 0.0);
    }

    private static TransportTable table(String name) {
        return new TransportTable(CATALOGUE.material(name));
    }
}
