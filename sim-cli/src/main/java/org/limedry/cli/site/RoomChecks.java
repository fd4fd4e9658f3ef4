package org.limedry.cli.site;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.wall.Background;

/** Whether rooms, their walls, doors and plant agree with each other. */
final class RoomChecks {
    private static final double LEAST_HEIGHT_M = 1.0;
    private static final double MOST_HEIGHT_M = 30.0;

    private final Map<String, Entry> rooms;
    private final Set<String> planNames = new HashSet<>();

    RoomChecks(Entry site) {
        this.rooms = site.given(SiteKeys.ROOMS).orElse(Map.of());
    }

    /** Reports every disagreement. */
    void run() {
        rooms.forEach(this::room);
    }

    private void room(String name, Entry room) {
        room.given(RoomKeys.VOLUME_M3)
                .ifPresent(volume -> room.given(RoomKeys.FLOOR_AREA_M2)
                        .filter(area -> !(volume / area >= LEAST_HEIGHT_M && volume / area <= MOST_HEIGHT_M))
                        .ifPresent(area -> room.at(RoomKeys.VOLUME_M3)
                                .problem(volume.toString(), "must be 1 to 30 times floorAreaM2, " + area)));
        Map<String, Entry> walls = room.given(RoomKeys.WALLS).orElse(Map.of());
        walls.forEach((wallName, wall) -> wall(name, wallName, wall));
        openings(name, room.given(RoomKeys.OPENINGS).orElse(List.of()));
        room.given(RoomKeys.PLANT).orElse(List.of()).forEach(plant -> plant(plant, walls.keySet()));
    }

    private void wall(String room, String name, Entry wall) {
        if (!planNames.add(WallNames.Listed.planName(room, name)) || Faces.isReserved(name)) {
            wall.place().problem("the name \"" + name + "\"", "is taken by another face; choose another");
        }
        wall.given(WallKeys.OTHER_SIDE).ifPresent(beyond -> {
            if (beyond instanceof WallKeys.Beyond.Room other) {
                otherRoom(room, other.name(), other.place());
            }
        });
        wall.given(WallKeys.RISING_DAMP)
                .filter(damp -> damp > 0.0 && !wall.isGiven(WallKeys.LENGTH_M))
                .ifPresent(damp -> wall.at(WallKeys.RISING_DAMP).problem(damp.toString(), "needs lengthM of the wall"));
        wall.given(WallKeys.BACKGROUND)
                .filter(background -> background == Background.TIMBER_LATH && wall.isGiven(WallKeys.THICKNESS_MM))
                .ifPresent(lath -> wall.at(WallKeys.THICKNESS_MM)
                        .problem("given for timber lath", "must be left out: laths are taken as 8 mm"));
    }

    private void openings(String room, List<Entry> openings) {
        Set<String> names = new HashSet<>();
        for (Entry opening : openings) {
            opening.given(OpeningKeys.NAME)
                    .filter(name -> !names.add(name))
                    .ifPresent(name -> opening.at(OpeningKeys.NAME)
                            .problem("\"" + name + "\" given twice", "choose another name for one of them"));
            opening.given(OpeningKeys.TO).ifPresent(to -> {
                otherRoom(room, to, opening.at(OpeningKeys.TO));
                listedOnce(room, to, opening);
            });
        }
    }

    private void listedOnce(String room, String to, Entry opening) {
        boolean again = room.compareTo(to) < 0
                && openingsOf(to).stream()
                        .anyMatch(other -> other.given(OpeningKeys.TO).equals(Optional.of(room))
                                && other.given(OpeningKeys.NAME).equals(opening.given(OpeningKeys.NAME)));
        if (again) {
            opening.at(OpeningKeys.NAME).problem("listed under both rooms", "must be listed under one of them");
        }
    }

    private List<Entry> openingsOf(String room) {
        Entry entry = rooms.get(room);
        return entry == null ? List.of() : entry.given(RoomKeys.OPENINGS).orElse(List.of());
    }

    private void otherRoom(String room, String other, Place at) {
        if (room.equals(other)) {
            at.problem("the same room", "must be another room");
        } else if (!rooms.containsKey(other)) {
            at.problem("no room \"" + other + "\"", "there are: " + String.join(", ", rooms.keySet()));
        }
    }

    private static void plant(Tagged.Variant plant, Set<String> walls) {
        Entry entry = plant.entry();
        entry.given(PlantKeys.FROM)
                .ifPresent(from -> entry.given(PlantKeys.UNTIL)
                        .filter(until -> until.isBefore(from))
                        .ifPresent(until -> entry.at(PlantKeys.UNTIL)
                                .problem(until.toString(), "must not be before from, " + from)));
        entry.given(PlantKeys.WALL)
                .filter(wall -> !walls.contains(wall))
                .ifPresent(wall -> entry.at(PlantKeys.WALL)
                        .problem("no wall \"" + wall + "\"", "in this room there are: " + String.join(", ", walls)));
    }
}
