package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.limedry.air.MagnusForm;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;

/** MBV_SQUARE: a layer sealed behind in air that is 8 h at 75 % and 16 h at 33 %, day after day. */
final class HumidCycleProof implements Benchmark {
    private static final double CELSIUS = 23.0;
    private static final double SATURATION_PA = MagnusForm.ISO_WATER.pressurePa(CELSIUS);
    private static final double LOW = 0.33;
    private static final double HIGH = 0.75;
    private static final int DAYS = 40;
    private static final double DEEP_M = 0.5;
    private static final double NO_FILM = 1.0e-5;

    @Override
    public String name() {
        return "MBV_SQUARE";
    }

    @Override
    public String setUp() {
        return "Linear sorption, isothermal at 23 C, day " + DAYS
                + " is judged; a layer without end is 0.5 m, a face without" + " film has 1e-5 s/m.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT, "table benchmarks/MBV_SQUARE, Fourier series; own error 1e-3 g/m2 (materials invented)");
    }

    @Override
    public String bands() {
        return "1 % (stated with the table)";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load("benchmarks/MBV_SQUARE").rows().stream()
                .map(row ->
                        new Aim(row.text("case"), "g/m2", row.number("swing_g_m2"), 0.01 * row.number("swing_g_m2")))
                .toList();
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/MBV_SQUARE").rows()) {
            found.put(row.text("case"), 1000.0 * swingKgPerM2(row, gridFactor));
        }
        return found;
    }

    private static double swingKgPerM2(ReferenceTable.Row row, double gridFactor) {
        double permeability = row.number("delta_kg_msPa");
        double thicknessM = row.number("d_m(0=semi-infinite)");
        double film = row.number("beta_s_m(0=no film)");
        Material material = new Material(
                row.text("case"),
                new LinearSorption(row.number("xi_kg_m3_per_RH"), CELSIUS),
                Closed.instance(),
                water -> permeability,
                water -> 0.5,
                1.0e6);
        double mean = (8.0 * HIGH + 16.0 * LOW) / 24.0;
        LayerPlan layer = new LayerPlan(
                "layer", material, thicknessM > 0.0 ? thicknessM : DEEP_M, CELSIUS, Lab.suctionPa(mean, CELSIUS));
        Course air = new Course(
                Lab.START, hour -> CELSIUS, hour -> SATURATION_PA * (hour % 24.0 < 8.0 ? HIGH : LOW), hour -> 0.0);
        double[] range = {Double.POSITIVE_INFINITY, 0.0};
        new Lab()
                .constants(Lab.isothermal())
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .course("cycle", air)
                .wall(
                        "w",
                        List.of(layer),
                        new Side.Sealed(),
                        new Side.Course("cycle", 100.0, film > 0.0 ? film : NO_FILM))
                .run(24.0 * DAYS, (hour, site) -> {
                    if (hour >= 24.0 * (DAYS - 1)) {
                        double water = site.walls().get(0).waterKgPerM2();
                        range[0] = Math.min(range[0], water);
                        range[1] = Math.max(range[1], water);
                    }
                });
        return range[1] - range[0];
    }
}
