package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.limedry.material.Catalogue;
import org.limedry.material.Material;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;
import org.limedry.reference.MaterialRow;
import org.limedry.reference.MaterialTable;
import org.limedry.simulation.Accuracy;
import org.limedry.wall.LayerPlan;

/** Every catalogue material with an absorption coefficient, put through a water uptake test. */
final class CatalogueUptakeProof implements Benchmark {
    private static final double HOURS = 4.0;
    /** Vapour transfer for each unit of A: then all faces stand equally close to saturation, some 70 Pa in the end. */
    private static final double TRANSFER_PER_A = 4.0;

    /** A suction at which nothing but a trace of water is left. */
    private static final double DRY_PA = 1.0e10;

    @Override
    public String name() {
        return "Catalogue uptake";
    }

    @Override
    public String setUp() {
        return "Each catalogue material with the dry-end factor, dry, one face held wet for 4 h; what it draws over the root"
                + " of time against its own coefficient A.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT, "by construction the coefficient that went in (materials table, mostly FROM MEMORY)");
    }

    @Override
    public String bands() {
        return "3 %";
    }

    @Override
    public List<Aim> aims() {
        return rows().stream()
                .map(row -> new Aim(row.name(), "kg/(m2 s^0.5)", absorption(row), 0.03 * absorption(row)))
                .toList();
    }

    @Override
    public Standing standing(String quantity, double gridFactor) {
        return quantity.equals(Catalogue.LATH_LAYER)
                ? new Standing.KnownShort(
                        "vapour carries a seventh: with so small an A the liquid path alone is not the uptake")
                : new Standing.Sound();
    }

    private static List<MaterialRow> rows() {
        return MaterialTable.load().rows().stream()
                .filter(row -> row.absorptionKgPerM2RootS().isPresent() && absorption(row) > 0.0)
                .toList();
    }

    private static double absorption(MaterialRow row) {
        return row.absorptionKgPerM2RootS().orElseThrow().likely();
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Catalogue catalogue = Catalogue.of(MaterialTable.load());
        Map<String, Double> found = new HashMap<>();
        for (MaterialRow row : rows()) {
            Material material = catalogue.material(row.name());
            // The front reaches about twice A sqrt(t) / w_f.
            double depthM = 6.0
                    * absorption(row)
                    * Math.sqrt(3600.0 * HOURS)
                    / material.retention().freeSaturationKgPerM3();
            LayerPlan layer = new LayerPlan("layer", material, depthM, 20.0, DRY_PA);
            Lab lab = new Lab().accuracy(Accuracy.ordinary().tolerance(), gridFactor);
            found.put(row.name(), Uptake.absorptionKgPerM2SqrtS(lab, layer, TRANSFER_PER_A * absorption(row), HOURS));
        }
        return found;
    }
}
