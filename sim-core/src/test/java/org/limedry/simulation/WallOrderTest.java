package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.air.MagnusForm;
import org.limedry.proof.benchmarks.Course;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.proof.benchmarks.SheetMaterials;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/** Order of a whole wall in time and in space, on a smooth day and a half: plaster on brick wetted and warmed by its air. */
final class WallOrderTest {
    private static final double CELSIUS = 12.0;
    private static final double HUMIDITY = 0.6;

    /** So loose that every step is the longest one. */
    private static final double NO_CONTROL = 0.1;

    /** What is compared. */
    private record End(double plasterKgPerM2, double brickKgPerM2, double faceCelsius, double faceHumidity) {
        double at(int k) {
            return switch (k) {
                case 0 -> plasterKgPerM2;
                case 1 -> brickKgPerM2;
                case 2 -> faceCelsius;
                default -> faceHumidity;
            };
        }
    }

    // EXACT: RODAS3 is of third order; with a boundary that moves in time the faces keep between two and three (found
    // 2.9 for the plaster and 2.4 at the face). Reference: steps of a 128th of an hour.
    @Test
    void wall_withHalfTheStep_errsByAnOrderBetweenTwoAndThreeLess() {
        End reference = run(1.0, NO_CONTROL, 3600.0 / 128.0);
        End coarse = run(1.0, NO_CONTROL, 3600.0 / 8.0);
        End fine = run(1.0, NO_CONTROL, 3600.0 / 16.0);

        double plaster = order(coarse.at(0) - reference.at(0), fine.at(0) - reference.at(0));
        double face = order(coarse.at(2) - reference.at(2), fine.at(2) - reference.at(2));

        assertTrue(plaster > 2.6 && plaster < 3.2, () -> "plaster " + plaster);
        assertTrue(face > 2.2 && face < 3.2, () -> "face " + face);
    }

    // EXACT: central differences on a grid that changes smoothly are of second order. Tolerance: the next term of the
    // series; found 1.9 to 2.0.
    @Test
    void wall_withHalfOfEveryCell_errsByTwoOrdersLess() {
        End coarse = run(2.0, 1.0e-5, 300.0);
        End fine = run(4.0, 1.0e-5, 300.0);
        End finest = run(8.0, 1.0e-5, 300.0);

        for (int k = 0; k < 4; k++) {
            assertEquals(2.0, order(coarse.at(k) - fine.at(k), fine.at(k) - finest.at(k)), 0.2);
        }
    }

    private static double order(double coarse, double fine) {
        return Math.log(Math.abs(coarse / fine)) / Math.log(2.0);
    }

    private static End run(double gridFactor, double tolerance, double longestS) {
        double suctionPa = Lab.suctionPa(HUMIDITY, CELSIUS);
        List<LayerPlan> layers = List.of(
                new LayerPlan("brick", SheetMaterials.roomBrick(), 0.1, CELSIUS, suctionPa),
                new LayerPlan("plaster", SheetMaterials.roomCoat(), 0.02, CELSIUS, suctionPa));
        WallView wall = new Lab()
                .accuracy(tolerance, gridFactor)
                .longestStep(longestS)
                .course("air", air())
                .wall("wall", layers, new Side.Sealed(), new Side.Course("air", 8.0, 5.0e-8))
                .wallAfter(36.0);
        return new End(
                wall.layerWaterKgPerM2(1),
                wall.layerWaterKgPerM2(0),
                wall.innerCelsius(),
                wall.innerRelativeHumidity());
    }

    private static Course air() {
        return new Course(
                Lab.START,
                WallOrderTest::celsius,
                hour -> (HUMIDITY + 0.1 * swing(hour)) * MagnusForm.ISO_WATER.pressurePa(celsius(hour)),
                hour -> 0.0);
    }

    private static double celsius(double hour) {
        return CELSIUS + 4.0 * swing(hour);
    }

    /** Starts smoothly from rest. */
    private static double swing(double hour) {
        return 1.0 - Math.cos(Math.PI * hour / 12.0);
    }
}
