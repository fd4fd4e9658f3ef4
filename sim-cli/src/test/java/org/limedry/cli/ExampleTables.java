package org.limedry.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** The tables of the wall cases in docs/examples/wall, from the formulas of the benchmark sheets. */
final class ExampleTables {
    private static final String SUCTION = "suctionPa,waterKgPerM3,liquidConductivityS\n";
    private static final String WATER = "waterKgPerM3,vapourPermeabilityKgPerMSPa,conductivityWPerMK\n";
    private static final String SERIES = "hour,celsius,rhPercent\n";

    private final Map<String, String> files = new LinkedHashMap<>();

    private ExampleTables() {}

    /** Returns every table by its file name. */
    static Map<String, String> all() {
        ExampleTables tables = new ExampleTables();
        tables.halfSpace();
        tables.constantDiffusivity();
        tables.freshCoat();
        tables.linearSorption();
        tables.dry();
        tables.sorptivity();
        return tables.files;
    }

    /** EN 15026 annex A, as the sheet EN15026 transcribes it. */
    private void halfSpace() {
        DoubleUnaryOperator water = p -> 146.0 / Math.pow(1.0 + Math.pow(8.0e-8 * p, 1.6), 0.375);
        double[] c = {-39.2619, 0.0704, -1.7420e-4, -2.7953e-6, -1.1566e-7, 2.5969e-9};
        DoubleUnaryOperator conductivity = p -> {
            double z = water.applyAsDouble(p) - 73.0;
            return Math.exp(c[0] + z * (c[1] + z * (c[2] + z * (c[3] + z * (c[4] + z * c[5])))));
        };
        suction("en15026-suction.csv", new double[] {1.0e3, 2.0e9}, 601, water, conductivity);
        StringBuilder rows = new StringBuilder(WATER);
        for (int w = 0; w <= 146; w++) {
            double open = 1.0 - w / 146.0;
            double delta = 0.018 / (8.314 * 293.15) * 26.1e-6 / 200.0 * open / (0.503 * open * open + 0.497);
            rows.append(row(w, delta, 1.5 + 0.0158 * w));
        }
        files.put("en15026-water.csv", rows.toString());
    }

    /** HAMSTAD benchmark 2: K = D |dw/dp| with D = 6e-10 m2/s. */
    private void constantDiffusivity() {
        double scale = 1000.0 * 461.5 * 293.15;
        DoubleUnaryOperator water = p -> 116.0 / Math.pow(1.0 + p / (0.118 * scale), 0.869);
        DoubleUnaryOperator conductivity = p -> 6.0e-10 * water.applyAsDouble(p) * 0.869 / (0.118 * scale + p);
        suction("hamstad2-suction.csv", new double[] {1.0e5, 1.0e9}, 601, water, conductivity);
        files.put("hamstad2-water.csv", WATER + row(0.0, 1.0e-15, 0.15) + row(116.0, 1.0e-15, 0.15));
    }

    private void freshCoat() {
        mualem("fresh-brick", new double[] {280.0, 3.0e-5, 1.8, 2.0e-9});
        mualem("fresh-coat", new double[] {380.0, 8.0e-6, 1.5, 1.0e-10});
        files.put(
                "fresh-brick-water.csv", WATER + row(0.0, 2.0e-10 / 12.0, 0.6) + row(280.0, 0.0, 0.6 + 1.5e-3 * 280.0));
        files.put(
                "fresh-coat-water.csv", WATER + row(0.0, 2.0e-10 / 10.0, 0.6) + row(380.0, 0.0, 0.6 + 1.2e-3 * 380.0));
    }

    private void mualem(String name, double[] law) {
        double m = 1.0 - 1.0 / law[2];
        DoubleUnaryOperator saturation = p -> Math.pow(1.0 + Math.pow(law[1] * p, law[2]), -m);
        DoubleUnaryOperator conductivity = p -> {
            double x = Math.pow(law[1] * p, law[2]);
            // 1 - (1 - S^(1/m))^m with S^(1/m) = 1/(1 + x), so that a dry end keeps its digits.
            double inner = -Math.expm1(m * -Math.log1p(1.0 / x));
            return law[3] * Math.sqrt(saturation.applyAsDouble(p)) * inner * inner;
        };
        suction(
                name + "-suction.csv",
                new double[] {1.0e1, 1.0e9},
                401,
                p -> law[0] * saturation.applyAsDouble(p),
                conductivity);
    }

    /** MBV_SQUARE: water 20 kg/m3 times the relative humidity at 23 C, no liquid. */
    private void linearSorption() {
        double scale = 1000.0 * 461.5 * 296.15;
        suction("linear-suction.csv", new double[] {1.0e5, 1.0e9}, 801, p -> 20.0 * Math.exp(-p / scale), p -> 0.0);
        files.put("linear-water.csv", WATER + row(0.0, 2.0e-11, 0.5) + row(20.0, 2.0e-11, 0.5));
        StringBuilder rows = new StringBuilder(SERIES).append("0,23,75\n");
        for (int day = 0; day < 20; day++) {
            rows.append(24 * day + 8).append(",23,75\n").append(24 * day + 8).append(".0005,23,33\n");
            rows.append(24 * day + 24).append(",23,33\n").append(24 * day + 24).append(".0005,23,75\n");
        }
        files.put("humid-cycle.csv", rows.append("481,23,75\n").toString());
    }

    /** Materials without water, for heat and for steady vapour: permeability 2e-10 over the resistance factor. */
    private void dry() {
        files.put("dry-suction.csv", SUCTION + row(1.0e3, 0.0, 0.0) + row(1.0e9, 0.0, 0.0));
        dryMaterial("dry-plaster-water.csv", 10.0, 0.70);
        dryMaterial("dry-brick-water.csv", 10.0, 0.60);
        dryMaterial("dry-render-water.csv", 15.0, 0.80);
    }

    private void dryMaterial(String name, double resistance, double conductivity) {
        double delta = 2.0e-10 / resistance;
        files.put(name, WATER + row(0.0, delta, conductivity) + row(1.0, delta, conductivity));
    }

    /**
     * CAPILLARY A: D = D_s exp(n (theta - 1)) with D_s 1e-7 m2/s. With theta falling by 1 from 1e4 to 1e9 Pa, linear in ln
     * suction, ln K = ln(D |dw/dp|) is linear in it too: two rows say the law without error.
     */
    private void sorptivity() {
        for (int n : new int[] {4, 6}) {
            double decades = Math.log(1.0e9 / 1.0e4);
            double wet = 1.0e-7 * 200.0 / (1.0e4 * decades);
            double dry = 1.0e-7 * Math.exp(-n) * 200.0 / (1.0e9 * decades);
            files.put("sorptivity" + n + "-suction.csv", SUCTION + row(1.0e4, 200.0, wet) + row(1.0e9, 0.0, dry));
        }
        files.put("sorptivity-water.csv", WATER + row(0.0, 0.0, 0.6) + row(200.0, 0.0, 0.6));
    }

    private void suction(
            String name, double[] range, int rows, DoubleUnaryOperator water, DoubleUnaryOperator conductivity) {
        StringBuilder text = new StringBuilder(SUCTION);
        for (int k = 0; k < rows; k++) {
            double p = range[0] * Math.pow(range[1] / range[0], k / (rows - 1.0));
            text.append(row(p, water.applyAsDouble(p), conductivity.applyAsDouble(p)));
        }
        files.put(name, text.toString());
    }

    /** Nine digits: Math.exp may differ in the last of sixteen between machines. */
    private static String row(double a, double b, double c) {
        return String.format(Locale.ROOT, "%.9g,%.9g,%.9g%n", a, b, c).replace(System.lineSeparator(), "\n");
    }
}
