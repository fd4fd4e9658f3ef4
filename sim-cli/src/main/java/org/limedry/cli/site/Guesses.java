package org.limedry.cli.site;

import java.util.Arrays;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.climate.WeatherRecord;
import org.limedry.lime.Mix;
import org.limedry.lime.ReadinessRules;
import org.limedry.material.Assumed;
import org.limedry.reference.DefaultValue;
import org.limedry.reference.Estimate;
import org.limedry.wall.Background;

/** Every figure of a site that nobody can know: the user's own where given, else the default with its ground. */
final class Guesses {
    private static final String JUDGEMENT = "judgement";
    private static final String NO_SOURCE = "no source";
    private static final String YOURS = "yours";
    private static final double PA_PER_KPA = 1000.0;

    private final SiteParts parts;
    private final Materials materials;
    private final Optional<Entry> assume;

    Guesses(SiteParts parts, Materials materials) {
        this.parts = parts;
        this.materials = materials;
        this.assume = parts.entry().given(SiteKeys.ASSUME);
    }

    /** Returns how wet a wall is, percent of its measure. */
    Guess wetness(WallSpec spec, Wetness wetness) {
        String ground =
                wetness.isMeasured() ? YOURS : "your word or ours; the figure behind it is judgement, no source";
        return new Guess(
                "wetness",
                new Assumed(
                        "wetness of " + spec.name() + ", " + wetness.words(),
                        wetness.measure().unit(),
                        wetness.percent(),
                        false,
                        JUDGEMENT,
                        ground));
    }

    /** Returns the suction at which a material of walls begins to empty, kPa. */
    Guess wallEntrySuction(String row) {
        return new Guess(
                "wallEntrySuction",
                new Assumed(
                        "how hard a half-wet wall pulls: entry suction of " + words(row),
                        "kPa",
                        materials.entrySuctionKPa(row),
                        true,
                        materials.isOwn(row)
                                ? YOURS
                                : parts.library().table().named(row).entryStatus(),
                        ""));
    }

    /** Returns the water absorption of a material of walls, kg/(m2 s^0.5). */
    Guess wallAbsorption(String row) {
        return new Guess(
                "wallAbsorption",
                new Assumed(
                        "how fast the wall drinks: water absorption A of " + words(row),
                        "kg/m2s0.5",
                        materials.absorption(row),
                        true,
                        materials.isOwn(row)
                                ? YOURS
                                : parts.library().table().named(row).status(),
                        parts.library().table().named(row).source()));
    }

    /** Returns the free water of a mix, kg/m3. */
    Guess freeWater(Mix mix, Entry entry) {
        Assumed usual = parts.library().mortars().freeWater(mix);
        return new Guess(
                "freeWater",
                entry.given(MixKeys.FREE_WATER)
                        .map(range -> new Assumed(usual.words(), usual.unit(), range, true, YOURS, ""))
                        .orElse(usual));
    }

    /** Returns the suction at which a coat of a mix begins to empty, kPa. */
    Guess coatEntrySuction(Mix mix, Entry entry) {
        String row = parts.library().mortars().materialName(mix);
        Estimate usual = parts.library()
                .table()
                .named(row)
                .entrySuctionKPa()
                .orElseThrow(() -> new IllegalStateException(row + " has no entry suction"));
        Optional<Estimate> given = entry.given(MixKeys.ENTRY_SUCTION);
        return new Guess(
                "coatEntrySuction",
                new Assumed(
                        "how hard a coat holds its water: entry suction of " + mix.name(),
                        "kPa",
                        given.orElse(usual),
                        true,
                        given.isPresent()
                                ? YOURS
                                : parts.library().table().named(row).entryStatus(),
                        ""));
    }

    /** Returns the air changes of a room through cracks, 1/h. */
    Guess leakage(String room, Entry entry) {
        DefaultValue usual = parts.library().defaults().of("background air change old building");
        Optional<Estimate> given = entry.given(RoomKeys.LEAKAGE);
        return new Guess(
                "leakage." + room,
                new Assumed(
                        "air changes an hour through cracks, " + room,
                        "per hour",
                        given.orElse(usual.estimate()),
                        given.isEmpty(),
                        given.isPresent() ? YOURS : usual.status(),
                        given.isPresent() ? "" : usual.basis()));
    }

    /** Returns the air through open doors and windows against the formula. */
    Guess openingFlow() {
        return assumed(
                "openingFlow",
                AssumeKeys.OPENING_FLOW,
                new Assumed(
                        "air through open doors and windows, against the formula",
                        "times",
                        new Estimate(1.0, 0.5, 2.0),
                        true,
                        JUDGEMENT,
                        "de Gids and Phaff 1982; one test found such methods up to 77 % low (S84)"));
    }

    /** Returns what dehumidifiers take up against their plates. */
    Guess dehumidifierOutput() {
        return assumed(
                "dehumidifierOutput",
                AssumeKeys.DEHUMIDIFIER_OUTPUT,
                new Assumed(
                        "water that dehumidifiers take up, against their plates and curves",
                        "times",
                        new Estimate(1.0, 0.7, 1.2),
                        true,
                        JUDGEMENT,
                        "dust and age take off, plates are measured new; no source"));
    }

    /** Returns the convection at a face in a still room, W/(m2 K). */
    Guess stillAir() {
        DefaultValue usual = parts.library().defaults().of("internal convective coefficient still room");
        return assumed(
                "stillAir",
                AssumeKeys.STILL_AIR,
                new Assumed(
                        "heat taken up by a face in a still room, vapour with it",
                        "W/m2K",
                        usual.estimate(),
                        true,
                        usual.status(),
                        usual.basis()));
    }

    /** Returns the suction at which a coat counts as green-hard, kPa. */
    Guess readySuction() {
        return assumed("readySuction", AssumeKeys.READY_SUCTION, ReadinessRules.GREEN_HARD_SUCTION);
    }

    /** Returns the age at which a coat counts as green-hard, days at 20 C. */
    Guess readyAge() {
        return assumed("readyAge", AssumeKeys.READY_AGE, ReadinessRules.GREEN_HARD_AGE);
    }

    /** Returns the humidity below which the face of a coat counts as dry, percent. */
    Guess readyFace() {
        return new Guess("readyFace", ReadinessRules.DRY_WHITE_FACE);
    }

    /** Returns the days by which the weather is taken later. */
    Guess weatherShift() {
        double most = WeatherRecord.MOST_SHIFT_DAYS;
        return assumed(
                Site.WEATHER_SHIFT,
                AssumeKeys.WEATHER_SHIFT,
                new Assumed(
                        "days by which the weather is taken later, to stand for other years",
                        "days",
                        new Estimate(0.0, -most, most),
                        false,
                        JUDGEMENT,
                        "one weather year only"));
    }

    /** Returns the true mean thickness of the coats against what is written. */
    Guess coatThickness() {
        return assumed(
                "coatThickness",
                AssumeKeys.THICKNESS,
                new Assumed(
                        "true mean thickness of the coats, against what is written",
                        "times",
                        new Estimate(1.0, 0.85, 1.15),
                        false,
                        JUDGEMENT,
                        NO_SOURCE));
    }

    private Guess assumed(String key, Key<Estimate> given, Assumed usual) {
        return new Guess(
                key,
                assume.flatMap(entry -> entry.given(given))
                        .map(range -> new Assumed(usual.words(), usual.unit(), range, false, YOURS, ""))
                        .orElse(usual));
    }

    /** Returns the words of the trade for a row of the material table. */
    private static String words(String row) {
        return Arrays.stream(Background.values())
                .filter(background -> background.materialName().equals(row))
                .map(Background::words)
                .findFirst()
                .orElse(row);
    }

    /** Returns pascals from kilopascals. */
    static double pascals(double kPa) {
        return kPa * PA_PER_KPA;
    }
}
