package org.limedry.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.limedry.material.LinearTable;
import org.limedry.material.Material;
import org.limedry.material.SuctionTable;

final class TabulatedTransportTest {
    private static final SuctionTable SUCTION = new SuctionTable(
            new double[] {2.0e2, 3.0e3, 5.0e4, 7.0e5, 4.0e6, 9.0e8},
            new double[] {251.0, 247.0, 160.0, 160.0, 21.0, 0.5},
            new double[] {3.0e-9, 8.0e-10, 4.8e-11, 0.0, 0.0, 6.0e-20});
    private static final LinearTable PERMEABILITY =
            new LinearTable(new double[] {3.0, 50.0, 210.0}, new double[] {2.0e-11, 1.5e-11, 1.0e-13});
    private static final LinearTable CONDUCTIVITY = new LinearTable(new double[] {0.0, 200.0}, new double[] {0.6, 1.9});
    private static final Material MATERIAL =
            new Material("tabulated", SUCTION, SUCTION, PERMEABILITY, CONDUCTIVITY, 1.4e6);
    private static final Transport TRANSPORT = Transport.of(MATERIAL);
    private static final WallMesh MESH = WallMesh.emptyTabulated()
            .with(new double[] {0.001, 0.004, 0.002, 0.0005}, TRANSPORT)
            .with(new double[] {1.0e-4, 0.003, 1.0e-4}, Transport.of(coat()));

    private static Material coat() {
        SuctionTable coat =
                new SuctionTable(new double[] {1.0, 1.0e9}, new double[] {380.0, 0.0}, new double[] {1.0e-8, 1.0e-25});
        return new Material("coat", coat, coat, PERMEABILITY, CONDUCTIVITY, 1.3e6);
    }

    private final double[] found = new double[Transport.WIDTH];

    // EXACT: the table's own functions; the stores as the class states them.
    @Test
    void transport_followsTheTableToTheLetter() {
        for (double suctionPa :
                new double[] {0.0, 50.0, 2.0e2, 7.0e2, 3.0e3, 1.0e4, 3.0e5, 1.0e6, 4.0e6, 1.0e8, 2.0e9}) {
            double u = Math.log(suctionPa + 1000.0);
            double water = SUCTION.waterKgPerM3(suctionPa);
            TRANSPORT.evaluate(u, found, 0);

            assertEquals(water, TRANSPORT.ownKgPerM3(u), 1.0e-9 * 251.0); // rounding of ln near 0 suction
            double standing = 4.0e-4 * 251.0 / (1.0 + suctionPa / 1000.0);
            assertEquals(water + standing, found[0], 1.0e-6); // the store of 1e-8 kg/m3 per e-fold
            assertEquals(
                    SUCTION.potentialKgPerMS(suctionPa), found[2], 1.0e-12 * SUCTION.potentialKgPerMS(0.0)); // rounding
            assertEquals(PERMEABILITY.at(water), found[4], 1.0e-19); // rounding
            assertEquals(CONDUCTIVITY.at(water), found[6], 1.0e-11); // rounding
        }
    }

    // COMPUTED: central differences over 2e-6 of u, away from rows and ends.
    // Tolerance: the difference's own rounding and curvature.
    @Property(tries = 300)
    void slopes_areThoseOfThePieces(@ForAll @DoubleRange(min = 6.92, max = 24.0) double u) {
        double step = 1.0e-6;
        boolean besideARow = List.of(2.0e2, 3.0e3, 5.0e4, 7.0e5, 4.0e6, 9.0e8).stream()
                .anyMatch(row -> Math.abs(Math.log(row + 1000.0) - u) < 1.0e-4);
        double wet = SUCTION.waterKgPerM3(Math.exp(u) - 1000.0);
        boolean besideAWater = List.of(3.0, 50.0, 210.0, 200.0).stream().anyMatch(row -> Math.abs(row - wet) < 0.05);
        if (besideARow || besideAWater) {
            return;
        }
        double[] before = new double[Transport.WIDTH];
        double[] after = new double[Transport.WIDTH];
        TRANSPORT.evaluate(u - step, before, 0);
        TRANSPORT.evaluate(u + step, after, 0);

        TRANSPORT.evaluate(u, found, 0);

        double[] scale = {251.0, SUCTION.potentialKgPerMS(0.0), 2.0e-11, 1.9};
        for (int q = 0; q < 4; q++) {
            double slope = (after[2 * q] - before[2 * q]) / (2.0 * step);
            assertEquals(slope, found[2 * q + 1], 1.0e-6 * scale[q] + 1.0e-5 * Math.abs(slope), "quantity " + q);
        }
        assertEquals(found[0], TRANSPORT.waterKgPerM3(u), 1.0e-12); // another order of adding
        assertEquals(found[1], TRANSPORT.waterSlopeKgPerM3(u), 1.0e-12 * Math.abs(found[1])); // likewise
    }

    @Property(tries = 300)
    void water_alwaysFallsWithU(@ForAll @DoubleRange(min = -9.0, max = 25.3) double u) {
        assertTrue(TRANSPORT.waterSlopeKgPerM3(u) < 0.0);
    }

    // EXACT: the water that was put in, whatever the search starts from; 4 is the contact. Suction cannot be compared:
    // where a table is flat it is only as well known as 1e-8 kg/m3 allow.
    @Property(tries = 500)
    void logSuction_ofTheWaterOfASuction_holdsThatWater(
            @ForAll @IntRange(min = 0, max = 7) int node,
            @ForAll @DoubleRange(min = -9.0, max = 25.3) double u,
            @ForAll @DoubleRange(min = -60.0, max = 60.0) double guess) {
        double water = MESH.storedKgPerM2(node, u);

        double found = MESH.logSuction(node, water, guess, WallMesh.KEPT);

        assertEquals(water, MESH.storedKgPerM2(node, found), 1.0e-12 * Math.abs(water)); // last bits of u
    }

    @Test
    void logSuction_ofMoreOrLessWaterThanAnySuctionHolds_isNotANumber() {
        double most = MESH.storedKgPerM2(2, TransportTable.LEAST_LOG_SUCTION);

        assertTrue(Double.isNaN(MESH.logSuction(2, 1.01 * most, 10.0, WallMesh.KEPT)));
        assertTrue(Double.isNaN(MESH.logSuction(2, -10.0, 10.0, WallMesh.KEPT)));
    }

    @Test
    void mesh_ofTabulatedMaterials_carriesNoFilm() {
        assertEquals(0.0, MESH.filmKgPerM2(0, 1.0), 0.0);
        assertEquals(0.0, MESH.filmKgPerM2(7, 1.0), 0.0);
    }
}
