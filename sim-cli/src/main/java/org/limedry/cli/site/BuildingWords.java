package org.limedry.cli.site;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Scenario;
import org.limedry.wall.WallPlan;

/** Rooms and walls with their sizes, a line each: a fit holds for these and no others. */
final class BuildingWords {
    private BuildingWords() {}

    static List<String> of(Scenario scenario) {
        return Stream.concat(
                        scenario.rooms().stream().map(BuildingWords::room),
                        scenario.walls().stream().map(BuildingWords::wall))
                .toList();
    }

    private static String room(RoomPlan room) {
        return String.format(
                Locale.ROOT, "room %s of %.2f m2, %.2f m high", room.name(), room.floorAreaM2(), room.heightM());
    }

    private static String wall(WallPlan wall) {
        String layers = wall.layers().stream()
                .map(layer -> String.format(Locale.ROOT, "%s %.3f m", layer.name(), layer.thicknessM()))
                .collect(Collectors.joining(", "));
        return String.format(Locale.ROOT, "wall %s of %.2f m2: %s", wall.name(), wall.areaM2(), layers);
    }
}
