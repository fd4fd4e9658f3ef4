package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.limedry.material.Closed;
import org.limedry.material.LiquidTransport;
import org.limedry.material.Material;
import org.limedry.material.Retention;
import org.limedry.material.VanGenuchten;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.wall.LayerPlan;

/** CAPILLARY A: uptake of a medium with exponential diffusivity. */
final class SorptivityProof implements Benchmark {
    private static final double FULL = 280.0;
    private static final double SATURATED_DIFFUSIVITY = 2.6e-6;
    private static final double HOURS = 2.0;

    /** Diffusivity {@code D_s exp(n (S - 1))}. */
    private record ExponentialLaw(Retention retention, double exponent) implements LiquidTransport {
        @Override
        public double conductivityS(double suctionPa) {
            double saturation = retention.waterKgPerM3(suctionPa) / retention.freeSaturationKgPerM3();
            double diffusivity = SATURATED_DIFFUSIVITY * Math.exp(exponent * (saturation - 1.0));
            return diffusivity * -retention.slopeKgPerM3(suctionPa) / suctionPa;
        }
    }

    @Override
    public String name() {
        return "CAPILLARY A";
    }

    @Override
    public String setUp() {
        return "A layer 0.6 m deep, sealed behind, without vapour and latent heat, starts at a saturation of 0.0005; its"
                + " face is held wet by saturated air. Uptake over the root of 2 h.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.COMPUTED,
                "table benchmarks/CAPILLARY, shooting (SciPy), checked by finite volumes; own error 1e-7");
    }

    @Override
    public String bands() {
        return "1 % on the finest grid (stated with the table)";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load("benchmarks/CAPILLARY").rows().stream()
                .filter(row -> row.text("quantity").startsWith("sorptivity"))
                .map(row -> new Aim(key(row), row.text("unit"), row.number("value"), 0.01 * row.number("value")))
                .toList();
    }

    private static String key(ReferenceTable.Row row) {
        return row.text("quantity") + ", " + row.text("case").replaceAll(".*, ", "");
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        for (Aim expected : aims()) {
            double exponent = Double.parseDouble(expected.quantity().replaceAll(".*n=", ""));
            found.put(expected.quantity(), sorptivity(exponent, gridFactor));
        }
        return found;
    }

    private static double sorptivity(double exponent, double gridFactor) {
        VanGenuchten retention = new VanGenuchten(FULL, 6.0e4, 1.62);
        Material material = new Material(
                "medium", retention, new ExponentialLaw(retention, exponent), Closed.instance(), water -> 1.0, 1.4e6);
        LayerPlan layer = new LayerPlan("layer", material, 0.6, 20.0, retention.suctionPa(5.0e-4));
        Lab lab = new Lab().accuracy(Accuracy.ordinary().tolerance(), gridFactor);
        double absorption = Uptake.absorptionKgPerM2SqrtS(lab, layer, 1.0, HOURS);
        return absorption / (FULL * Math.sqrt(SATURATED_DIFFUSIVITY));
    }
}
