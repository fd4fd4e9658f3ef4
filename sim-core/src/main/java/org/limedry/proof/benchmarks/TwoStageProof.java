package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.limedry.air.MagnusForm;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.material.Retention;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.SiteView;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/** CAPILLARY C: a slab dries at a constant rate until its face is dry, then as fast as water reaches the face. */
final class TwoStageProof implements Benchmark {
    private static final double DIFFUSIVITY = 1.0e-8;
    private static final double DRY = 20.0;
    private static final double START = 250.0;
    private static final double THICKNESS_M = 0.02;
    private static final double AIR_HUMIDITY = 0.5;

    /**
     * Water that is all above {@link #DRY} kg/m3 at suctions too small to lower the humidity of the pores, so that the face
     * dries at a constant rate until it comes to {@link #DRY}: {@code w = 20 + 380 / (1 + (p / 2 kPa)^2)}.
     */
    private record SheetRetention() implements Retention {
        private static final double RANGE = 380.0;
        private static final double HALF_PA = 2.0e3;

        @Override
        public double waterKgPerM3(double suctionPa) {
            double x = suctionPa / HALF_PA;
            return DRY + RANGE / (1.0 + x * x);
        }

        @Override
        public double slopeKgPerM3(double suctionPa) {
            double x = suctionPa / HALF_PA;
            return -2.0 * RANGE * x * x / ((1.0 + x * x) * (1.0 + x * x));
        }

        @Override
        public double freeSaturationKgPerM3() {
            return DRY + RANGE;
        }
    }

    @Override
    public String name() {
        return "CAPILLARY C";
    }

    @Override
    public String setUp() {
        return "Constant diffusivity in a material whose pores keep 100 % humidity down to a water content of 0.02, in air"
                + " of 50 %, without latent heat: the air takes a constant rate until the face is dry. Rates of the second"
                + " stage are left out below 1e-6 kg/(m2 s).";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.COMPUTED,
                "table benchmarks/CAPILLARY, closed form of the constant-flux slab, then series (SciPy); own error 2e-5 kg/m2");
    }

    @Override
    public String bands() {
        return "1 % of the water remaining, in the first stage as water and as the time it takes (stated with the table); rates 1 %";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load("benchmarks/CAPILLARY").rows().stream()
                .filter(row -> row.text("quantity").matches("stage1.*|two_stage.*"))
                .filter(row -> !row.text("quantity").equals("two_stage_rate") || row.number("value") > 1.0e-6)
                .map(row -> new Aim(key(row), row.text("unit"), row.number("value"), band(row)))
                .toList();
    }

    /** One percent of the water remaining; the first stage in the time that this water takes. */
    private static double band(ReferenceTable.Row row) {
        double value = row.number("value");
        return switch (row.text("quantity")) {
            case "stage1_water_lost" -> 0.01 * (5.0 - value);
            case "stage1_duration" -> {
                double flux = Double.parseDouble(row.text("case").replaceAll(".*flux | kg/m2s", ""));
                yield 0.01 * (5.0 - value * flux) / flux;
            }
            default -> 0.01 * value;
        };
    }

    private static String key(ReferenceTable.Row row) {
        String text = row.text("case");
        String last = text.substring(Math.max(text.lastIndexOf(','), text.lastIndexOf(';')) + 1)
                .strip();
        return row.text("quantity") + ", " + last.replaceFirst(".*flux", "flux");
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        for (double flux : new double[] {1.0e-5, 3.0e-5, 1.0e-4, 1.0e-3}) {
            firstStage(flux, gridFactor, found);
        }
        secondStage(gridFactor, found);
        return found;
    }

    private static void firstStage(double flux, double gridFactor, Map<String, Double> found) {
        double[] end = {Double.NaN, Double.NaN};
        double[] before = {0.0, START, Double.NaN};
        BiConsumer<Double, SiteView> look = (hour, site) -> {
            WallView wall = site.walls().get(0);
            double face = faceWater(wall);
            if (Double.isNaN(before[2])) {
                before[2] = wall.waterKgPerM2();
            }
            if (Double.isNaN(end[0]) && face < DRY + 0.05) {
                end[0] = 3600.0 * hour;
                end[1] = before[2] - wall.waterKgPerM2();
            }
        };
        lab(flux, gridFactor).run(1.2 * 4.6 / flux / 3600.0, look);
        String name = flux == 1.0e-4 ? "1e-04" : flux == 1.0e-3 ? "1e-03" : flux == 1.0e-5 ? "1e-05" : "3e-05";
        found.put("stage1_duration, flux " + name + " kg/m2s", end[0]);
        found.put("stage1_water_lost, flux " + name, end[1]);
    }

    private static void secondStage(double gridFactor, Map<String, Double> found) {
        double firstHours = ReferenceTable.load("benchmarks/CAPILLARY").rows().stream()
                .filter(row -> row.text("case").endsWith("flux 1e-04 kg/m2s"))
                .mapToDouble(row -> row.number("value") / 3600.0)
                .findFirst()
                .orElseThrow();
        for (int hours : new int[] {0, 1, 4, 12, 24, 48}) {
            WallView wall = lab(1.0e-4, gridFactor).wallAfter(firstHours + hours);
            found.put("two_stage_remaining_water, " + hours + " h after t1", wall.waterKgPerM2());
            found.put(
                    "two_stage_rate, " + hours + " h after t1",
                    -wall.innerFlow().vapourKgPerM2S());
        }
    }

    private static double faceWater(WallView wall) {
        return new SheetRetention().waterKgPerM3(wall.suctionPaAt(THICKNESS_M));
    }

    private static Lab lab(double flux, double gridFactor) {
        SheetRetention retention = new SheetRetention();
        Material material = new Material(
                "slab",
                retention,
                new ConstantDiffusivity(retention, DIFFUSIVITY),
                Closed.instance(),
                water -> 1.0,
                1.4e6);
        double startPa = 2.0e3 * Math.sqrt(380.0 / (START - DRY) - 1.0);
        double transfer = flux / ((1.0 - AIR_HUMIDITY) * MagnusForm.ISO_WATER.pressurePa(20.0));
        return new Lab()
                .constants(Lab.isothermal())
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .wall(
                        "w",
                        List.of(new LayerPlan("slab", material, THICKNESS_M, 20.0, startPa)),
                        new Side.Sealed(),
                        new Side.Air(20.0, AIR_HUMIDITY, 1.0e3, transfer));
    }
}
