package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.site.schema.Entry;
import org.limedry.lime.Mix;

/**
 * Which of the guesses of a site are varied for the range of the dates: at most twelve, those that move the dates most
 * first (the order found by trying on a half-wet stone wall and on lath).
 *
 * <p>Figures of one kind (the wetness of all walls, the water of all mixes) go up and down together: a place is wet or it is
 * not, and a figure from memory is off for all or for none. The wettest, largest plastered wall and the first mix stand for theirs.
 */
final class Unknowns {
    private static final int MOST = 12;

    private final SiteParts parts;
    private final Guesses guesses;

    Unknowns(SiteParts parts, Guesses guesses) {
        this.parts = parts;
        this.guesses = guesses;
    }

    /**
     * Returns the unknowns that are varied, one for each kind.
     *
     * @param all all guesses, see {@link #all}
     */
    static List<Guess> varied(List<Guess> all) {
        return open(all).stream().limit(MOST).toList();
    }

    /** Returns one unknown of each kind, those that move the dates most first. */
    static List<Guess> open(List<Guess> all) {
        Map<String, Guess> first = all.stream()
                .filter(Guess::isOpen)
                .collect(Collectors.toMap(Guess::key, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        return List.copyOf(first.values());
    }

    /**
     * Returns every guess of the site, those that move the dates most first.
     *
     * @param weatherCanShift whether the weather reaches far enough to be taken earlier or later
     */
    List<Guess> all(boolean weatherCanShift) {
        List<Guess> all = new ArrayList<>();
        plasteredWalls().forEach(spec -> {
            if (spec.build() instanceof WallSpec.Wall wall) {
                all.add(guesses.wetness(spec, wall.wetness()));
            }
        });
        backgrounds().forEach(row -> all.add(guesses.wallEntrySuction(row)));
        backgrounds().forEach(row -> all.add(guesses.wallAbsorption(row)));
        if (hasOpenings()) {
            all.add(guesses.openingFlow());
        }
        mixes().forEach((mix, entry) -> all.add(guesses.freeWater(mix, entry)));
        mixes().forEach((mix, entry) -> all.add(guesses.coatEntrySuction(mix, entry)));
        if (hasDehumidifiers()) {
            all.add(guesses.dehumidifierOutput());
        }
        rooms().forEach(room -> all.add(
                guesses.leakage(room, Objects.requireNonNull(parts.rooms().get(room)))));
        all.addAll(readiness());
        if (weatherCanShift) {
            all.add(guesses.weatherShift());
        }
        all.add(guesses.stillAir());
        all.add(guesses.coatThickness());
        return List.copyOf(all);
    }

    private List<Guess> readiness() {
        return switch (parts.entry().get(SiteKeys.READY_RULE).kind()) {
            case GREEN_HARD -> List.of(guesses.readySuction(), guesses.readyAge());
            case DRY_WHITE -> List.of(guesses.readySuction(), guesses.readyAge(), guesses.readyFace());
            case STATED -> List.of();
        };
    }

    /** Returns the walls that are plastered: those with water in them first, then the largest. */
    private List<WallSpec> plasteredWalls() {
        return parts.coats().stream()
                .map(coat -> parts.faces().named(parts.wallOf(coat).planName()))
                .distinct()
                .sorted(Comparator.comparing(Unknowns::isWet)
                        .thenComparing(WallSpec::areaM2)
                        .reversed())
                .toList();
    }

    private static boolean isWet(WallSpec spec) {
        return spec.build() instanceof WallSpec.Wall wall && wall.wetness().measure() == Wetness.Measure.SATURATION;
    }

    private List<String> backgrounds() {
        return plasteredWalls().stream()
                .flatMap(spec -> spec.build() instanceof WallSpec.Wall wall
                        ? Stream.of(wall.background().materialName())
                        : Stream.empty())
                .distinct()
                .toList();
    }

    /** Returns the rooms, those with plaster first. */
    private Set<String> rooms() {
        Set<String> rooms =
                plasteredWalls().stream().map(WallSpec::room).collect(Collectors.toCollection(LinkedHashSet::new));
        rooms.addAll(parts.rooms().keySet());
        return rooms;
    }

    private Map<Mix, Entry> mixes() {
        Map<Mix, Entry> mixes = new LinkedHashMap<>();
        for (Entry coat : parts.coats()) {
            mixes.put(Mixes.of(coat.get(CoatKeys.MIX), parts.mixOf(coat)), parts.mixOf(coat));
        }
        return mixes;
    }

    private boolean hasOpenings() {
        return parts.rooms().values().stream()
                .flatMap(room -> room.get(RoomKeys.OPENINGS).stream())
                .flatMap(opening -> opening.get(OpeningKeys.OPEN).stream())
                .anyMatch(timetable -> !timetable.lines().isEmpty());
    }

    private boolean hasDehumidifiers() {
        return parts.rooms().values().stream()
                .flatMap(room -> room.get(RoomKeys.PLANT).stream())
                .anyMatch(plant -> plant.word().equals(PlantKeys.DEHUMIDIFIER));
    }
}
