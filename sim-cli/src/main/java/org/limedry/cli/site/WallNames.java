package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Place;

/**
 * The listed walls of a site and the names by which the rest of the file calls them.
 *
 * @param walls in the order of the file
 */
record WallNames(List<Listed> walls) {
    WallNames {
        walls = List.copyOf(walls);
    }

    /**
     * A listed wall.
     *
     * @param room its room
     * @param name its name there
     * @param entry what the file says of it
     */
    record Listed(String room, String name, Entry entry) {
        /** Returns the name that is unique on the site, "store north". */
        String planName() {
            return planName(room, name);
        }

        /** Returns the name that is unique on the site of a face of a room. */
        static String planName(String room, String name) {
            return room + " " + name;
        }

        /** Returns which side of the room it is. */
        WallKeys.Face face() {
            return entry.given(WallKeys.FACE).orElseGet(() -> switch (name) {
                case "ceiling" -> WallKeys.Face.CEILING;
                case "floor" -> WallKeys.Face.FLOOR;
                default -> WallKeys.Face.WALL;
            });
        }
    }

    /** Returns the listed walls of a site. */
    static WallNames of(Entry site) {
        List<Listed> all = new ArrayList<>();
        site.given(SiteKeys.ROOMS)
                .orElse(Map.of())
                .forEach((room, entry) -> entry.given(RoomKeys.WALLS)
                        .orElse(Map.of())
                        .forEach((name, wall) -> all.add(new Listed(room, name, wall))));
        return new WallNames(all);
    }

    /** Returns the wall that a coat or a hand test means, if there is exactly one. */
    Optional<Listed> find(Entry asking) {
        List<Listed> found = candidates(asking);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private List<Listed> candidates(Entry asking) {
        return walls.stream()
                .filter(wall ->
                        asking.given(CoatKeys.WALL).filter(wall.name()::equals).isPresent())
                .filter(wall ->
                        asking.given(CoatKeys.ROOM).map(wall.room()::equals).orElse(true))
                .toList();
    }

    /** Reports a coat or a hand test that means no wall, or more than one. */
    void check(Entry asking) {
        Optional<String> name = asking.given(CoatKeys.WALL);
        Optional<String> room = asking.given(CoatKeys.ROOM);
        boolean unreadable = name.isEmpty() || (asking.isGiven(CoatKeys.ROOM) && room.isEmpty());
        if (unreadable || find(asking).isPresent()) {
            return;
        }
        Place at = asking.at(CoatKeys.WALL);
        if (room.isPresent() && walls.stream().noneMatch(wall -> wall.room().equals(room.get()))) {
            problem(asking, CoatKeys.ROOM, "no walls in a room \"" + room.get() + "\"", rooms());
        } else if (candidates(asking).isEmpty()) {
            at.problem("no wall \"" + name.get() + "\"", "there are: " + names());
        } else {
            at.problem("more than one wall \"" + name.get() + "\"", "say room: " + rooms());
        }
    }

    /** Reports the name of a wall that a room does not have. */
    void check(Place at, Optional<String> room, String name) {
        List<String> there = walls.stream()
                .filter(wall -> room.map(wall.room()::equals).orElse(true))
                .map(Listed::name)
                .toList();
        if (!there.contains(name)) {
            at.problem("no wall \"" + name + "\"", "there are: " + orNone(String.join(", ", there)));
        }
    }

    private static void problem(Entry entry, Key<?> key, String found, String known) {
        entry.at(key).problem(found, "there are: " + known);
    }

    private String names() {
        return orNone(walls.stream().map(Listed::name).distinct().collect(Collectors.joining(", ")));
    }

    private String rooms() {
        return orNone(walls.stream().map(Listed::room).distinct().collect(Collectors.joining(", ")));
    }

    private static String orNone(String list) {
        return list.isEmpty() ? "none" : list;
    }
}
