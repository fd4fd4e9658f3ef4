package org.limedry.lime;

import java.util.OptionalDouble;
import org.limedry.material.Catalogue;
import org.limedry.reference.DefaultsTable;
import org.limedry.reference.MaterialTable;

/** Mixes for tests. */
final class Mixes {
    private Mixes() {}

    static CoatMortars mortars() {
        return CoatMortars.of(DefaultsTable.load(), Catalogue.of(MaterialTable.load()));
    }

    static MixFigures withSandMoisture(MixFigures of, double kgPerKg) {
        return new MixFigures(
                of.limeBulkKgPerM3(), of.purity(), of.sandBulkKgPerM3(), kgPerKg, of.airFraction(), of.water());
    }

    static MixFigures withWater(MixFigures of, FreshWater water) {
        return new MixFigures(
                of.limeBulkKgPerM3(), of.purity(), of.sandBulkKgPerM3(), of.sandMoisture(), of.airFraction(), water);
    }

    static Mix plain(LimeKind lime, double limeParts, double sandParts) {
        return mix(lime, limeParts, sandParts, Mix.SandState.DRY, 0.0);
    }

    static Mix mix(LimeKind lime, double limeParts, double sandParts, Mix.SandState sand, double slagPercent) {
        return new Mix(
                "trial",
                lime,
                limeParts,
                sandParts,
                sand,
                Mix.Addition.SLAG,
                slagPercent,
                OptionalDouble.empty(),
                false);
    }

    static Mix measured(LimeKind lime, double sandParts, double waterPerLimeVolume) {
        return new Mix(
                "measured",
                lime,
                1.0,
                sandParts,
                Mix.SandState.DRY,
                Mix.Addition.SLAG,
                0.0,
                OptionalDouble.of(waterPerLimeVolume),
                false);
    }

    static Mix haired(LimeKind lime, double sandParts) {
        return new Mix(
                "haired",
                lime,
                1.0,
                sandParts,
                Mix.SandState.DAMP,
                Mix.Addition.SLAG,
                0.0,
                OptionalDouble.empty(),
                true);
    }
}
