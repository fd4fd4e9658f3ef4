package org.limedry.simulation;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** All benchmarks, each run once however many tests look at it. */
final class Proofs {
    static final double EN15026_TRANSFER = 1.0e5;

    private static final List<ProofCase> CASES = List.of(
            new HeatProof(),
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
            new WallYearProof());
    private static final Map<ProofCase, List<Figure>> FIGURES = new ConcurrentHashMap<>();

    private Proofs() {}

    static List<ProofCase> cases() {
        return CASES;
    }

    static List<Figure> figures(ProofCase proof) {
        return FIGURES.computeIfAbsent(proof, ProofCase::figures);
    }
}
