package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.wall.Background;

/** What the program fills in by its own lights where a site file says nothing, and what it takes for every site. */
final class WorkedOut {
    private static final String MEMORY = "from memory";

    private final SiteParts parts;
    private final List<Assumption> list = new ArrayList<>();

    WorkedOut(SiteParts parts) {
        this.parts = parts;
    }

    /** Returns all of it. */
    List<Assumption> list() {
        walls();
        plant();
        materials();
        everySite();
        return List.copyOf(list);
    }

    private void walls() {
        for (Background background : Background.values()) {
            String without = listedWithout(WallKeys.THICKNESS_MM, background);
            if (!without.isEmpty()) {
                String thicknessMm = Assumptions.number(WallKeys.usualThicknessMm(background));
                add("thickness of " + background.words() + " (" + without + ")", thicknessMm, "mm", MEMORY);
            }
            String open = background.isOnCavity() ? "" : listedWithout(WallKeys.OTHER_SIDE, background);
            if (!open.isEmpty()) {
                add(
                        "what lies beyond " + background.words() + " (" + open + ")",
                        "outdoors",
                        "",
                        "taken as an outer wall");
            }
        }
        Set<String> panes = parts.faces().specs().stream()
                .flatMap(spec -> spec.build() instanceof WallSpec.Pane pane
                        ? Stream.of(Assumptions.number(pane.transmittanceWPerM2K()))
                        : Stream.<String>empty())
                .collect(Collectors.toCollection(TreeSet::new));
        panes.forEach(value -> add("heat through glass, U value", value, "W/m2K", MEMORY));
    }

    private String listedWithout(Key<?> key, Background background) {
        return parts.names().walls().stream()
                .filter(wall -> wall.entry().get(WallKeys.BACKGROUND) == background)
                .filter(wall -> !wall.entry().isGiven(key))
                .map(WallNames.Listed::planName)
                .collect(Collectors.joining(", "));
    }

    private void plant() {
        parts.rooms()
                .forEach((room, entry) -> entry.get(RoomKeys.PLANT).stream()
                        .filter(plant -> plant.word().equals(PlantKeys.DEHUMIDIFIER))
                        .map(Tagged.Variant::entry)
                        .forEach(plant -> dehumidifier(room, plant)));
    }

    private void dehumidifier(String room, Entry plant) {
        if (!plant.isGiven(PlantKeys.RATED_AT)) {
            String air = PlantKeys.word(RoomPlans.ratedAt(plant));
            add("air for which the plate of the dehumidifier holds (" + room + ")", air, "", MEMORY);
        }
        if (!plant.isGiven(PlantKeys.WATTS)) {
            String watts = Assumptions.number(RoomPlans.watts(plant));
            add("power of the dehumidifier (" + room + ")", watts, "W", MEMORY);
        }
    }

    private void materials() {
        Set<String> backgrounds = parts.names().walls().stream()
                .map(wall -> wall.entry().get(WallKeys.BACKGROUND).materialName())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> mortars = parts.coats().stream()
                .map(coat -> Mixes.of(coat.get(CoatKeys.MIX), parts.mixOf(coat)))
                .map(mix -> parts.library().mortars().materialName(mix))
                .collect(Collectors.toCollection(TreeSet::new));
        backgrounds.addAll(mortars);
        backgrounds.forEach(row -> add(
                "all other figures of " + row,
                "shipped table",
                "",
                Assumptions.source(parts.library().table().named(row).status(), "")));
    }

    private void everySite() {
        if (parts.weather().attribution().isEmpty() && !isGiven(SiteKeys.ALTITUDE_M)) {
            add("height above the sea", "0", "m", "not said");
        }
        if (parts.rooms().values().stream().anyMatch(room -> !room.isGiven(RoomKeys.START_CELSIUS))) {
            add(
                    "temperature of air and walls as the run begins",
                    "mean outdoors of ten days",
                    "",
                    "judgement, no source");
        }
        add("hour at which a coat is laid", RunDays.START_OF_WORK.toString(), "", "common practice, no source");
        add(
                "what stands in a room and follows its air",
                Assumptions.number(RoomPlans.FITTINGS_J_PER_M2K / 1000.0),
                "kJ/K for each m2 of floor",
                MEMORY + " (EN ISO 52016-1)");
        add("soil under floors, 1 m to the mean temperature of the weather", "1.5", "W/mK", MEMORY + " (EN ISO 13370)");
    }

    private boolean isGiven(Key<?> key) {
        return parts.entry().get(SiteKeys.PLACE).isGiven(key);
    }

    private void add(String words, String value, String unit, String source) {
        list.add(new Assumption(words, value, unit, "", source));
    }
}
