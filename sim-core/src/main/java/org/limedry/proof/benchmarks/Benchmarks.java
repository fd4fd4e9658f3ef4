package org.limedry.proof.benchmarks;

import java.util.List;
import org.limedry.proof.figure.Proof;

/** The proofs of the solver. */
public final class Benchmarks {
    /** The part of a case that was run on the grid of a site. */
    public static final String ORDINARY_GRID = "ordinary grid";

    /** The part of a case that was run with two cells for one. */
    public static final String HALF_CELLS = "half cells";

    /** Surface transfer that stands for a face without resistance in EN 15026, W/(m2 K). */
    static final double EN15026_TRANSFER = 1.0e5;

    private Benchmarks() {}

    /** Returns one proof for each benchmark sheet. */
    public static List<Proof> all() {
        return List.of(
                new HeatProof(),
                new SteadyProof(),
                new En15026Proof(En15026Proof.Variant.A, EN15026_TRANSFER),
                new En15026Proof(En15026Proof.Variant.B, EN15026_TRANSFER),
                new LayerDryingProof(),
                new SorptivityProof(),
                new TwoStageProof(),
                new CatalogueUptakeProof(),
                new FreshCoatProof(),
                new HumidCycleProof(),
                new WetBulbProof(),
                new RoomBufferProof(),
                new RoomCoatsProof(),
                new WallYearProof(),
                new RoomYearProof());
    }
}
