package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.material.Retention;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.units.Units;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/** HAMSTAD benchmark 2: a layer of 200 mm at 95 % dries towards 45 % on one face and 65 % on the other. */
final class LayerDryingProof implements Benchmark {
    private static final double THICKNESS_M = 0.2;
    private static final double CELSIUS = 20.0;

    /** Retention of the sheet: {@code w = 116 / (1 - ln(phi) / 0.118)^0.869}. */
    private record SheetRetention() implements Retention {
        private static final double FULL = 116.0;
        private static final double SCALE_PA = 0.118 * 1000.0 * 461.5 * Units.kelvin(CELSIUS);

        @Override
        public double waterKgPerM3(double suctionPa) {
            return FULL * Math.pow(1.0 + suctionPa / SCALE_PA, -0.869);
        }

        @Override
        public double slopeKgPerM3(double suctionPa) {
            return -0.869 * waterKgPerM3(suctionPa) * suctionPa / (SCALE_PA + suctionPa);
        }

        @Override
        public double freeSaturationKgPerM3() {
            return FULL;
        }
    }

    @Override
    public String name() {
        return "HAMSTAD_BM2";
    }

    @Override
    public String setUp() {
        return "Constant diffusivity 6e-10 m2/s, isothermal; faces held by 1e-3 s/m.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT,
                "table benchmarks/HAMSTAD_BM2, sine series; own error below 1e-9 (specification READ second hand)");
    }

    @Override
    public String bands() {
        return "0.5 kg/m3, water in the layer 0.5 % (stated with the table)";
    }

    @Override
    public List<Aim> aims() {
        List<Aim> all = new ArrayList<>();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/HAMSTAD_BM2").rows()) {
            all.add(new Aim(profileKey(row), "kg/m3", row.number("w_kg_m3"), 0.5));
        }
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/HAMSTAD_BM2_balance").rows()) {
            double water = row.number("water_kg_m2");
            all.add(new Aim("water, " + row.text("hours") + " h", "kg/m2", water, 0.005 * water));
        }
        return all;
    }

    private static String profileKey(ReferenceTable.Row row) {
        return "w at " + row.text("hours") + " h, x = " + row.text("x_m") + " m";
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        List<ReferenceTable.Row> profiles =
                ReferenceTable.load("benchmarks/HAMSTAD_BM2").rows();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/HAMSTAD_BM2_balance").rows()) {
            double hours = row.number("hours");
            WallView wall = lab(gridFactor).wallAfter(hours);
            found.put("water, " + row.text("hours") + " h", wall.waterKgPerM2());
            for (ReferenceTable.Row place : profiles) {
                if (place.number("hours") == hours) {
                    double suctionPa = wall.suctionPaAt(place.number("x_m"));
                    found.put(profileKey(place), new SheetRetention().waterKgPerM3(suctionPa));
                }
            }
        }
        return found;
    }

    private static Lab lab(double gridFactor) {
        SheetRetention retention = new SheetRetention();
        Material material = new Material(
                "layer",
                retention,
                new ConstantDiffusivity(retention, 6.0e-10),
                Closed.instance(),
                water -> 0.15,
                525.0 * 800.0);
        LayerPlan layer = new LayerPlan("layer", material, THICKNESS_M, CELSIUS, Lab.suctionPa(0.95, CELSIUS));
        return new Lab()
                .constants(Lab.isothermal())
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .wall(
                        "w",
                        List.of(layer),
                        new Side.Air(CELSIUS, 0.45, 25.0, 1.0e-3),
                        new Side.Air(CELSIUS, 0.65, 25.0, 1.0e-3));
    }
}
