package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.limedry.air.MagnusForm;
import org.limedry.lime.CoatMortar;
import org.limedry.material.Material;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.proof.benchmarks.SheetMaterials;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallNodes;
import org.limedry.wall.WallView;

/**
 * A second opinion on the wall: the same equations on the same nodes, written again and integrated by an explicit method of
 * eighth order. What differs is the method in time, the unknowns and the tables; a coat dries on thirsty brick.
 *
 * <p>COMPUTED: Commons Math 3.6.1, {@code DormandPrince853Integrator(1e-6, 60, 1e-10, 1e-10)} on {@link PlainWall}, in the
 * test itself.
 */
final class OtherIntegratorTest {
    private static final double BRICK_M = 0.06;
    private static final double COAT_M = 0.012;
    private static final double GRID_FACTOR = 0.5;
    private static final double BRICK_CELSIUS = 9.0;
    private static final double BRICK_PA = 4.0e6;
    private static final double COAT_CELSIUS = 12.0;
    private static final double SATURATION = 0.93;
    private static final PlainWall.Air AIR = new PlainWall.Air(15.0, 0.55, 8.0, 2.5e-8);
    private static final Material BRICK = SheetMaterials.roomBrick();
    private static final CoatMortar MORTAR = SheetMaterials.inertMortar(SheetMaterials.roomCoat(), SATURATION);

    /** What is compared. */
    private record End(double coatKgPerM2, double brickKgPerM2, double faceCelsius, double faceHumidity) {}

    // COMPUTED: see above, 2 h: by then the coat has lost more than a third of its water to brick and air.
    @Test
    void solver_afterTwoHours_agreesWithAnExplicitMethod() {
        End solver = solver(2.0, 1.0e-6, 3600.0);
        End other = other(2.0);

        assertTrue(solver.coatKgPerM2() < 0.7 * MORTAR.freeWaterKgPerM3() * COAT_M);
        assertNear(other, solver);
    }

    // COMPUTED: see above, 20 s in steps of at most a twentieth of a second: both take the same water over the contact,
    // so
    // the right-hand sides are the same.
    @Test
    void solver_inTinySteps_takesTheSameRates() {
        End solver = solver(20.0 / 3600.0, 0.1, 0.05);
        End other = other(20.0 / 3600.0);

        double taken = MORTAR.freeWaterKgPerM3() * COAT_M - other.coatKgPerM2();
        assertTrue(taken > 0.01, () -> "taken " + taken);
        assertNear(other, solver);
    }

    /** The solver takes 1.3e-5 kg/m2 of film from its coat; beyond that found 6e-6 kg/m2, 1.2e-6 K and 4e-8. */
    private static void assertNear(End expected, End found) {
        assertEquals(expected.coatKgPerM2(), found.coatKgPerM2(), 3.0e-5);
        assertEquals(expected.brickKgPerM2(), found.brickKgPerM2(), 3.0e-5);
        assertEquals(expected.faceCelsius(), found.faceCelsius(), 1.0e-5);
        assertEquals(expected.faceHumidity(), found.faceHumidity(), 1.0e-6);
    }

    private static End solver(double hours, double tolerance, double longestS) {
        LayerPlan brick = new LayerPlan("brick", BRICK, BRICK_M, BRICK_CELSIUS, BRICK_PA);
        Side room = new Side.Air(AIR.celsius(), AIR.relativeHumidity(), AIR.heatWPerM2K(), AIR.vapourSPerM());
        WallView wall = new Lab()
                .accuracy(tolerance, GRID_FACTOR)
                .longestStep(longestS)
                .wall("wall", List.of(brick), new Side.Sealed(), room)
                .coat("wall", MORTAR, COAT_M, COAT_CELSIUS, 0.0)
                .wallAfter(hours);
        return new End(
                wall.coatWaterKgPerM2(1),
                wall.waterKgPerM2() - wall.coatWaterKgPerM2(1),
                wall.innerCelsius(),
                wall.innerRelativeHumidity());
    }

    private static End other(double hours) {
        double[] links = WallNodes.linksM(BRICK_M, GRID_FACTOR, COAT_M);
        int oldLinks = WallNodes.linksM(BRICK_M, GRID_FACTOR).length;
        PlainWall wall = new PlainWall(links, oldLinks, BRICK, MORTAR.material(), AIR);
        double[] y = start(links, oldLinks);
        new DormandPrince853Integrator(1.0e-6, 60.0, 1.0e-10, 1.0e-10).integrate(wall, 0.0, y, 3600.0 * hours, y);
        int last = links.length;
        return new End(
                wall.waterKgPerM2(y, oldLinks, last),
                wall.waterKgPerM2(y, 0, oldLinks),
                y[2 * last + 1],
                PlainWall.vapourPa(y, last) / MagnusForm.ISO_WATER.pressurePa(y[2 * last + 1]));
    }

    /** The contact holds half a link of either at one suction, found by bisection, and is as warm as both together. */
    private static double[] start(double[] links, int oldLinks) {
        double coatPa = MORTAR.laidSuctionPa();
        double[] y = new double[2 * links.length + 2];
        for (int node = 0; node <= links.length; node++) {
            y[2 * node] = Math.log(node < oldLinks ? BRICK_PA : coatPa);
            y[2 * node + 1] = node < oldLinks ? BRICK_CELSIUS : COAT_CELSIUS;
        }
        double before = 0.5 * links[oldLinks - 1];
        double after = 0.5 * links[oldLinks];
        Material coat = MORTAR.material();
        double water = before * BRICK.retention().waterKgPerM3(BRICK_PA) + after * MORTAR.freeWaterKgPerM3();
        double low = Math.log(coatPa);
        double high = Math.log(BRICK_PA);
        for (int k = 0; k < 60; k++) {
            double middle = Math.exp(0.5 * (low + high));
            double held = before * BRICK.retention().waterKgPerM3(middle)
                    + after * coat.retention().waterKgPerM3(middle);
            low = held > water ? Math.log(middle) : low;
            high = held > water ? high : Math.log(middle);
        }
        y[2 * oldLinks] = low;
        double brickHeat = before
                * (BRICK.dryHeatCapacityJPerM3K() + 4187.0 * BRICK.retention().waterKgPerM3(BRICK_PA));
        double coatHeat = after * (coat.dryHeatCapacityJPerM3K() + 4187.0 * MORTAR.freeWaterKgPerM3());
        y[2 * oldLinks + 1] = (brickHeat * BRICK_CELSIUS + coatHeat * COAT_CELSIUS) / (brickHeat + coatHeat);
        return y;
    }
}
