package org.limedry.cli.site;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Place;
import org.limedry.material.MaterialSheet;
import org.limedry.reference.Estimate;
import org.limedry.reference.MaterialRow;
import org.limedry.wall.Background;

/** Figures of the materials of walls: the firm's own where it has them, else those of the shipped table. */
final class Materials {
    private final Library library;
    private final Map<String, Entry> own;

    Materials(Entry site, Library library) {
        this.library = library;
        this.own = site.given(SiteKeys.OWN).orElse(Map.of());
    }

    /** Reports own figures that no material can have. */
    void check() {
        for (Background background : Background.values()) {
            ownOf(background.materialName()).ifPresent(entry -> {
                MaterialSheet.Storage table =
                        library.catalogue().sheet(background.materialName()).storage();
                double full = entry.given(OwnKeys.FREE_SATURATION).orElse(table.freeSaturationKgPerM3());
                double at80 = entry.given(OwnKeys.WATER_80).orElse(table.waterAt80KgPerM3());
                if (!(at80 < full)) {
                    Place at = entry.isGiven(OwnKeys.WATER_80)
                            ? entry.at(OwnKeys.WATER_80)
                            : entry.at(OwnKeys.FREE_SATURATION);
                    at.problem(at80 + " at 80 %, " + full + " soaked", "must hold more when soaked");
                }
            });
        }
    }

    private Optional<Entry> ownOf(String row) {
        return Arrays.stream(Background.values())
                .filter(background -> background.materialName().equals(row))
                .flatMap(background -> Optional.ofNullable(own.get(background.words())).stream())
                .findFirst();
    }

    /** Returns the suction at which a material begins to empty, kPa, with its range. */
    Estimate entrySuctionKPa(String row) {
        return ownOf(row)
                .flatMap(entry -> entry.given(OwnKeys.ENTRY_SUCTION))
                .or(() -> tableRow(row).entrySuctionKPa())
                .orElseGet(() -> exactly(likely(row).storage().entrySuctionPa() / Guesses.pascals(1.0)));
    }

    /** Returns the water absorption A of a material, kg/(m2 s^0.5), with its range. */
    Estimate absorption(String row) {
        return ownOf(row)
                .flatMap(entry -> entry.given(OwnKeys.ABSORPTION))
                .or(() -> tableRow(row).absorptionKgPerM2RootS())
                .orElseGet(() -> exactly(0.0));
    }

    /** Tells whether the firm has figures of its own for a material. */
    boolean isOwn(String row) {
        return ownOf(row).isPresent();
    }

    private MaterialRow tableRow(String row) {
        return library.table().named(row);
    }

    private static Estimate exactly(double value) {
        return new Estimate(value, value, value);
    }

    /** Returns a material with every figure likely. */
    MaterialSheet likely(String row) {
        MaterialSheet sheet = library.catalogue().sheet(row);
        return ownOf(row).map(entry -> withOwn(sheet, entry)).orElse(sheet);
    }

    private static MaterialSheet withOwn(MaterialSheet sheet, Entry own) {
        MaterialSheet.Storage storage = sheet.storage();
        MaterialSheet.Transport transport = sheet.transport();
        MaterialSheet.Thermal thermal = sheet.thermal();
        return new MaterialSheet(
                sheet.name(),
                new MaterialSheet.Storage(
                        own.given(OwnKeys.FREE_SATURATION).orElse(storage.freeSaturationKgPerM3()),
                        own.given(OwnKeys.WATER_80).orElse(storage.waterAt80KgPerM3()),
                        own.given(OwnKeys.ENTRY_SUCTION)
                                .map(kPa -> Guesses.pascals(kPa.likely()))
                                .orElse(storage.entrySuctionPa())),
                new MaterialSheet.Transport(
                        own.given(OwnKeys.ABSORPTION).map(Estimate::likely).orElse(transport.absorptionKgPerM2SqrtS()),
                        own.given(OwnKeys.VAPOUR_RESISTANCE).orElse(transport.vapourResistance())),
                new MaterialSheet.Thermal(
                        own.given(OwnKeys.DENSITY).orElse(thermal.densityKgPerM3()),
                        own.given(OwnKeys.HEAT_CAPACITY).orElse(thermal.heatCapacityJPerKgK()),
                        own.given(OwnKeys.CONDUCTIVITY).orElse(thermal.dryConductivityWPerMK()),
                        thermal.conductivityGrowthM3PerKg()));
    }
}
