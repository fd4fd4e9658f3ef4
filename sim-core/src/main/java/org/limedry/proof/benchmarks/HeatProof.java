package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.complex.Complex;
import org.limedry.material.Material;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.SiteView;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/** HEAT: conduction and periodic response of closed materials. */
final class HeatProof implements Benchmark {
    private static final double CAPACITY = 1.36e6;
    private static final Material PLASTER = Lab.closed(0.7, CAPACITY);
    private static final double DEEP_M = 3.0;
    private static final Side SEALED = new Side.Sealed();
    private static final Pattern DEPTH = Pattern.compile("T\\(x=([0-9.]+) m");
    private static final Pattern HOUR = Pattern.compile("(\\d+) h");

    @Override
    public String name() {
        return "HEAT";
    }

    @Override
    public String setUp() {
        return "Closed materials, moisture at rest. Half spaces are 3 m deep and sealed behind; the surface step is held by"
                + " a transfer of 1e5 W/(m2 K); the periodic wall runs 20 days before the day that is judged. Tolerance 1e-4, a twentieth of the ordinary one.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT,
                "table benchmarks/HEAT, closed forms (Carslaw and Jaeger; transfer matrices as in ISO 13786)");
    }

    @Override
    public String bands() {
        return "0.05 K; heat and periodic response 1 %; lag 0.1 h (stated with the table)";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load("benchmarks/HEAT").rows().stream()
                .map(row -> new Aim(
                        key(row.text("case"), row.text("quantity")),
                        row.text("unit"),
                        row.number("value"),
                        band(row.text("unit"), row.number("value"))))
                .toList();
    }

    private static double band(String unit, double value) {
        return switch (unit) {
            case "C" -> 0.05;
            case "h" -> 0.1;
            default -> 0.01 * value;
        };
    }

    private static String key(String text, String quantity) {
        return text.replaceAll("[ _,].*", "") + ": " + quantity;
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        Lab step = lab(gridFactor).wall("w", List.of(plaster(DEEP_M)), SEALED, still(10.0, 1.0e5));
        Lab film = lab(gridFactor).wall("w", List.of(plaster(DEEP_M)), SEALED, still(10.0, 8.0));
        Lab slab = lab(gridFactor).wall("w", List.of(plaster(0.24)), SEALED, still(10.0, 8.0));
        for (Aim expected : aims()) {
            String quantity = expected.quantity();
            if (quantity.startsWith("step")) {
                found.put(quantity, inHalfSpace(step.wallAfter(hour(quantity)), quantity));
            } else if (quantity.startsWith("convective")) {
                found.put(quantity, inHalfSpace(film.wallAfter(hour(quantity)), quantity));
            } else if (quantity.startsWith("\"slab") || quantity.startsWith("slab")) {
                WallView wall = slab.wallAfter(hour(quantity));
                found.put(quantity, quantity.contains("adiabatic") ? wall.outerCelsius() : wall.innerCelsius());
            } else if (quantity.startsWith("contact")) {
                found.put(quantity, contactCelsius(gridFactor));
            }
        }
        periodic(gridFactor, found);
        return found;
    }

    private static Lab lab(double gridFactor) {
        return new Lab().accuracy(1.0e-4, gridFactor);
    }

    private static LayerPlan plaster(double thicknessM) {
        return new LayerPlan("plaster", PLASTER, thicknessM, 20.0, 1.0e6);
    }

    private static Side still(double celsius, double heatTransferWPerM2K) {
        return new Side.Air(celsius, 0.5, heatTransferWPerM2K, 0.0);
    }

    private static double hour(String quantity) {
        Matcher matcher = HOUR.matcher(quantity);
        if (!matcher.find()) {
            throw new IllegalStateException("no hour in " + quantity);
        }
        return Double.parseDouble(matcher.group(1));
    }

    private static double inHalfSpace(WallView wall, String quantity) {
        Matcher matcher = DEPTH.matcher(quantity);
        if (matcher.find()) {
            return wall.celsiusAt(DEEP_M - Double.parseDouble(matcher.group(1)));
        }
        int samples = 30_000;
        double sum = 0.0;
        for (int k = 0; k < samples; k++) {
            sum += 20.0 - wall.celsiusAt((k + 0.5) * DEEP_M / samples);
        }
        return CAPACITY * sum * DEEP_M / samples;
    }

    private static double contactCelsius(double gridFactor) {
        Material light = Lab.closed(0.05, 1.2e5);
        List<LayerPlan> halves = List.of(
                new LayerPlan("light", light, DEEP_M, 5.0, 1.0e6),
                new LayerPlan("heavy", PLASTER, DEEP_M, 20.0, 1.0e6));
        return lab(gridFactor).wall("w", halves, SEALED, SEALED).wallAfter(6.0).celsiusAt(DEEP_M);
    }

    private static void periodic(double gridFactor, Map<String, Double> found) {
        String prefix = "periodic: ";
        Course swing =
                new Course(Lab.START, hour -> 10.0 + 5.0 * Math.cos(Math.PI * hour / 12.0), hour -> 500.0, hour -> 0.0);
        Side moving = new Side.Course("swing", 1.0 / 0.04, 0.0);
        Side movingInside = new Side.Course("swing", 1.0 / 0.13, 0.0);
        double steady = response(gridFactor, still(0.0, 1.0 / 0.04), still(10.0, 1.0 / 0.13), swing, 0)
                        .getReal()
                / 10.0;
        Complex across =
                response(gridFactor, moving, still(10.0, 1.0 / 0.13), swing, 1).divide(5.0);
        Complex own = response(gridFactor, still(10.0, 1.0 / 0.04), movingInside, swing, 1)
                .divide(5.0);
        found.put(prefix + "U", steady);
        found.put(prefix + "|Y12| periodic transmittance", across.abs());
        found.put(prefix + "decrement factor f", across.abs() / steady);
        // Heat into the wall by its inner face falls as the air outside grows warm, so the opposite sign is delayed.
        double lag = across.negate().getArgument() / Math.PI * -12.0;
        found.put(prefix + "time lag out->in", lag < 0.0 ? lag + 24.0 : lag);
        found.put(prefix + "|internal admittance|", own.abs());
    }

    /** Returns the mean (harmonic 0) or the daily amplitude (harmonic 1) of the heat into the inner face, W/m2. */
    private static Complex response(double gridFactor, Side outside, Side inside, Course swing, int harmonic) {
        List<LayerPlan> layers = List.of(
                new LayerPlan("render", Lab.closed(0.8, 1.53e6), 0.020, 10.0, 1.0e6),
                new LayerPlan("brick", Lab.closed(0.6, 1.36e6), 0.365, 10.0, 1.0e6),
                new LayerPlan("plaster", PLASTER, 0.020, 10.0, 1.0e6));
        Complex[] sum = {Complex.ZERO};
        BiConsumer<Double, SiteView> look = (hour, site) -> {
            if (hour > 480.0 && hour == Math.rint(hour)) {
                double heat =
                        (airCelsius(inside, swing, hour) - site.walls().get(0).innerCelsius()) / 0.13;
                Complex turn =
                        Complex.valueOf(0.0, -Math.PI * harmonic * hour / 12.0).exp();
                sum[0] = sum[0].add(turn.multiply(heat));
            }
        };
        lab(gridFactor)
                .course("swing", swing)
                .wall("w", layers, outside, inside)
                .run(504.0, look);
        return sum[0].divide(harmonic == 0 ? 24.0 : 12.0);
    }

    private static double airCelsius(Side side, Course swing, double hour) {
        return side instanceof Side.Air air ? air.celsius() : swing.celsius().applyAsDouble(hour);
    }
}
