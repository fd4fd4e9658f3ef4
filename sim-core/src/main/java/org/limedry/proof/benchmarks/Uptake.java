package org.limedry.proof.benchmarks;

import java.util.List;
import org.limedry.air.MagnusForm;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/**
 * A water uptake test: a dry layer, sealed behind, with its face held wet by air that reaches saturation within 10 s; no
 * latent heat.
 */
final class Uptake {
    private static final double RAMP_HOURS = 10.0 / 3600.0;

    private Uptake() {}

    /**
     * Returns the water taken up over the root of time, kg/(m2 s^0.5).
     *
     * @param vapourTransferSPerM so large that the face stands close to saturation, kg/(m2 s Pa)
     */
    static double absorptionKgPerM2SqrtS(Lab lab, LayerPlan layer, double vapourTransferSPerM, double hours) {
        double saturationPa = MagnusForm.ISO_WATER.pressurePa(20.0);
        Course air = new Course(
                Lab.START,
                hour -> 20.0,
                hour -> saturationPa * Math.min(1.0, Math.max(1.0e-12, hour / RAMP_HOURS)),
                hour -> 0.0);
        lab.constants(Lab.isothermal())
                .course("wet", air)
                .wall("w", List.of(layer), new Side.Sealed(), new Side.Course("wet", 1.0e3, vapourTransferSPerM));
        double before = lab.wallAfter(1.0e-9).waterKgPerM2();
        WallView wall = lab.wallAfter(hours);
        return (wall.waterKgPerM2() - before) / Math.sqrt(3600.0 * hours);
    }
}
