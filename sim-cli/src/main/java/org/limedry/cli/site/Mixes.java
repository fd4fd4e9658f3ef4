package org.limedry.cli.site;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.lime.CoatMortars;
import org.limedry.lime.Mix;

/** From the keys of a mix to the mix. */
final class Mixes {
    private static final double LEAST_FREE_WATER = 50.0;
    private static final double MOST_FREE_WATER = 900.0;

    private Mixes() {}

    /** Reports what is wrong with the mixes of a site. */
    static void check(Entry site, CoatMortars mortars) {
        site.given(SiteKeys.MIXES).orElse(Map.of()).forEach((name, mix) -> check(name, mix, mortars));
    }

    private static void check(String name, Entry entry, CoatMortars mortars) {
        boolean sound = MixKeys.ALL.stream()
                        .allMatch(key -> !entry.isGiven(key) || entry.given(key).isPresent())
                && entry.isGiven(MixKeys.LIME)
                && entry.isGiven(MixKeys.SAND_PARTS);
        sound &= checkAddition(entry);
        sound &= checkBatch(entry);
        if (sound) {
            checkWater(of(name, entry), entry, mortars);
        }
    }

    private static boolean checkAddition(Entry entry) {
        boolean both = entry.given(MixKeys.SLAG).orElse(0.0) > 0.0
                && entry.given(MixKeys.POZZOLAN).orElse(0.0) > 0.0;
        if (both) {
            entry.at(MixKeys.POZZOLAN).problem("given beside slag", "must be one of the two");
        }
        return !both;
    }

    private static boolean checkBatch(Entry entry) {
        boolean water = entry.isGiven(MixKeys.WATER_LITRES);
        boolean alone = water != entry.isGiven(MixKeys.LIME_LITRES);
        if (alone) {
            Key<Double> given = water ? MixKeys.WATER_LITRES : MixKeys.LIME_LITRES;
            Key<Double> other = water ? MixKeys.LIME_LITRES : MixKeys.WATER_LITRES;
            entry.at(given).problem("given alone", "needs " + other.name());
        }
        return !alone;
    }

    private static void checkWater(Mix mix, Entry entry, CoatMortars mortars) {
        Key<Double> key = entry.isGiven(MixKeys.WATER_LITRES) ? MixKeys.WATER_LITRES : MixKeys.SAND_PARTS;
        try {
            long water = Math.round(mortars.masses(mix).freeWaterKgPerM3());
            if (!(water >= LEAST_FREE_WATER && water <= MOST_FREE_WATER)) {
                entry.at(key)
                        .problem(
                                "makes " + water + " litres of free water in a m3 of mortar",
                                "must be parts and water that make 50 to 900");
            }
        } catch (IllegalArgumentException e) {
            entry.at(key).problem("does not make a mortar", String.valueOf(e.getMessage()));
        }
    }

    /**
     * Returns a mix.
     *
     * @param entry keys without problems
     */
    static Mix of(String name, Entry entry) {
        Optional<Double> slag = entry.given(MixKeys.SLAG).filter(share -> share > 0.0);
        double addition = slag.or(() -> entry.given(MixKeys.POZZOLAN)).orElse(0.0);
        Optional<Double> water = entry.given(MixKeys.WATER_LITRES)
                .flatMap(litres -> entry.given(MixKeys.LIME_LITRES).map(lime -> litres / lime));
        return new Mix(
                name,
                entry.get(MixKeys.LIME),
                entry.get(MixKeys.LIME_PARTS),
                entry.get(MixKeys.SAND_PARTS),
                entry.get(MixKeys.SAND),
                slag.isPresent() ? Mix.Addition.SLAG : Mix.Addition.POZZOLAN,
                addition,
                water.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                entry.get(MixKeys.HAIR));
    }
}
