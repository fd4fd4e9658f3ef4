package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.limedry.air.MagnusForm;
import org.limedry.material.LiquidTransport;
import org.limedry.material.Material;
import org.limedry.material.Retention;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.units.Units;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/**
 * EN 15026 annex A: a half space at 20 C and 50 % meets air of 30 C and 95 %.
 *
 * @param variant A has one reference temperature in sorption and permeability, B the local one
 * @param transfer heat transfer of the face, W/(m2 K); the vapour transfer is this times 1e-10 s/m per W/(m2 K)
 */
record En15026Proof(Variant variant, double transfer) implements Benchmark {
    /** How the sheet's ambiguity is settled. */
    enum Variant {
        A,
        B
    }

    private static final double GAS_CONSTANT = 462.0;
    private static final double FULL = 146.0;
    private static final double DEEP_M = 16.0;
    private static final double VAPOUR_PER_HEAT = 1.0e-7;

    /** Retention of the sheet: {@code w = 146 / (1 + (8e-8 p)^1.6)^0.375}. */
    private record SheetRetention() implements Retention {
        @Override
        public double waterKgPerM3(double suctionPa) {
            return FULL / Math.pow(1.0 + Math.pow(8.0e-8 * suctionPa, 1.6), 0.375);
        }

        @Override
        public double slopeKgPerM3(double suctionPa) {
            double x = Math.pow(8.0e-8 * suctionPa, 1.6);
            return -0.6 * waterKgPerM3(suctionPa) * x / (1.0 + x);
        }

        @Override
        public double freeSaturationKgPerM3() {
            return FULL;
        }
    }

    /** Conductivity of the sheet, a polynomial of ln K in w - 73. */
    private record SheetLiquid(Retention retention) implements LiquidTransport {
        private static final double[] POLYNOMIAL = {-39.2619, 0.0704, -1.7420e-4, -2.7953e-6, -1.1566e-7, 2.5969e-9};

        @Override
        public double conductivityS(double suctionPa) {
            double z = retention.waterKgPerM3(suctionPa) - 73.0;
            double sum = 0.0;
            for (int k = POLYNOMIAL.length - 1; k >= 0; k--) {
                sum = sum * z + POLYNOMIAL[k];
            }
            return Math.exp(sum);
        }
    }

    @Override
    public String name() {
        return "EN15026 variant " + variant;
    }

    @Override
    public String setUp() {
        return "A layer 16 m deep, sealed behind; the face is held by transfers of "
                + String.format(Locale.ROOT, "%.0e W/(m2 K) and %.0e s/m.", transfer, transfer * VAPOUR_PER_HEAT);
    }

    @Override
    public Source origin() {
        return new Source(
                Label.COMPUTED,
                "collocation of the similarity equation (SciPy), checked by finite volumes; own error 0.001 kg/m3");
    }

    @Override
    public String bands() {
        return "w 2.5 %, T 0.25 K, uptake 1 % (stated with the table; heat taken as uptake)";
    }

    @Override
    public List<Aim> aims() {
        String table = variant == Variant.A ? "benchmarks/EN15026" : "benchmarks/EN15026_variantB";
        return ReferenceTable.load(table).rows().stream().map(En15026Proof::aim).toList();
    }

    private static Aim aim(ReferenceTable.Row row) {
        double value = row.number("value");
        double band = switch (row.text("quantity")) {
            case "w" -> 0.025 * value;
            case "T" -> 0.25;
            default -> 0.01 * value;
        };
        return new Aim(key(row), row.text("unit"), value, band);
    }

    private static String key(ReferenceTable.Row row) {
        String place = row.text("quantity").length() > 1 ? "" : ", x = " + row.text("x_m") + " m";
        return row.text("quantity") + place + ", " + row.text("days") + " d";
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Lab lab = lab(gridFactor);
        Map<String, Double> found = new HashMap<>();
        WallView start = lab.wallAfter(1.0e-9);
        for (int days : new int[] {7, 30}) {
            WallView wall = lab.wallAfter(24.0 * days);
            for (ReferenceTable.Row row :
                    ReferenceTable.load("benchmarks/EN15026").rows()) {
                if (row.number("days") == days) {
                    found.put(key(row), value(wall, start, row));
                }
            }
        }
        return found;
    }

    private Lab lab(double gridFactor) {
        boolean fixed = variant == Variant.A;
        Constants constants = new Constants(
                new MagnusForm(610.5, 17.269, 237.3),
                GAS_CONSTANT,
                1000.0,
                2.5e6,
                4187.0,
                fixed ? OptionalDouble.of(20.0) : OptionalDouble.empty(),
                fixed ? 0.0 : -1.0);
        double suctionPa = -1000.0 * GAS_CONSTANT * Units.kelvin(20.0) * Math.log(0.5);
        List<LayerPlan> layers = List.of(new LayerPlan("wall", material(), DEEP_M, 20.0, suctionPa));
        return new Lab()
                .constants(constants)
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .wall("w", layers, new Side.Sealed(), new Side.Air(30.0, 0.95, transfer, transfer * VAPOUR_PER_HEAT));
    }

    private static Material material() {
        SheetRetention retention = new SheetRetention();
        return new Material(
                "sheet",
                retention,
                new SheetLiquid(retention),
                En15026Proof::permeability,
                water -> 1.5 + 0.0158 * water,
                1.824e6);
    }

    private static double permeability(double water) {
        double open = 1.0 - water / FULL;
        return 0.018 / (8.314 * Units.kelvin(20.0)) * 26.1e-6 / 200.0 * open / (0.503 * open * open + 0.497);
    }

    private static double value(WallView wall, WallView start, ReferenceTable.Row row) {
        double depthM = DEEP_M - row.number("x_m");
        return switch (row.text("quantity")) {
            case "w" -> new SheetRetention().waterKgPerM3(wall.suctionPaAt(depthM));
            case "T" -> wall.celsiusAt(depthM);
            case "uptake_per_area" -> wall.waterKgPerM2() - start.waterKgPerM2();
            default -> heatJPerM2(wall);
        };
    }

    /**
     * Returns the warmth gained, {@code integral of (rho c + c_w w) (T - 20 C)}, w as it is in the end: the sheet counts
     * {@code c_w w} as it was while the layer warmed, which differs by less than 0.2 %.
     */
    private static double heatJPerM2(WallView wall) {
        int samples = 40_000;
        double sum = 0.0;
        for (int k = 0; k < samples; k++) {
            double depthM = (k + 0.5) * DEEP_M / samples;
            double water = new SheetRetention().waterKgPerM3(wall.suctionPaAt(depthM));
            sum += (1.824e6 + 4187.0 * water) * (wall.celsiusAt(depthM) - 20.0);
        }
        return sum * DEEP_M / samples;
    }
}
