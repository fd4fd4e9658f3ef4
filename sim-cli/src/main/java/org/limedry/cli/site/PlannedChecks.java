package org.limedry.cli.site;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Place;

/** Whether what had been agreed speaks of the same rooms, doors, walls and coats as the rest of the file. */
final class PlannedChecks {
    private final Entry site;
    private final WallNames names;

    PlannedChecks(Entry site, WallNames names) {
        this.site = site;
        this.names = names;
    }

    /** Reports every disagreement. */
    void run() {
        site.given(SiteKeys.NORMALS).ifPresent(PlannedChecks::normals);
        site.given(SiteKeys.PLANNED).ifPresent(planned -> {
            planned.given(PlannedKeys.ROOMS).orElse(Map.of()).forEach(this::room);
            planned.given(PlannedKeys.COATS).orElse(List.of()).forEach(this::coat);
        });
    }

    private static void normals(Entry normals) {
        Set<Integer> told = new HashSet<>();
        normals.given(DelayKeys.MONTHS)
                .orElse(List.of())
                .forEach(month -> month.given(DelayKeys.MONTH)
                        .filter(number -> !told.add(number))
                        .ifPresent(number ->
                                month.at(DelayKeys.MONTH).problem(number + " given twice", "one entry a month")));
    }

    private void room(String name, Entry agreed) {
        Map<String, Entry> rooms = site.given(SiteKeys.ROOMS).orElse(Map.of());
        Optional<Entry> room = Optional.ofNullable(rooms.get(name));
        if (room.isEmpty()) {
            unknown(agreed.place(), "no room \"" + name + "\"", rooms.keySet());
            return;
        }
        released(name, agreed, room.get());
        agreed.given(PlannedKeys.OPENINGS).orElse(List.of()).forEach(opening -> opening(opening, room.get()));
        Set<String> walls = room.get().given(RoomKeys.WALLS).orElse(Map.of()).keySet();
        agreed.given(PlannedKeys.WALLS).orElse(Map.of()).forEach((wall, entry) -> {
            if (!walls.contains(wall)) {
                unknown(entry.place(), "no wall \"" + wall + "\"", walls);
            }
        });
    }

    private void released(String name, Entry agreed, Entry room) {
        if (agreed.isGiven(PlannedKeys.RELEASED)
                && PlannedRooms.firstLaid(site, names, name).isEmpty()) {
            agreed.at(PlannedKeys.RELEASED)
                    .problem("given for a room without plaster", "must be left out: no coat of that room has a date");
        }
        room.given(RoomKeys.RELEASED)
                .ifPresent(day -> PlannedRooms.firstLaid(site, names, name)
                        .filter(day::isAfter)
                        .ifPresent(laid -> room.at(RoomKeys.RELEASED)
                                .problem(day.toString(), "must not be after the first coat in it, " + laid)));
    }

    private static void opening(Entry agreed, Entry room) {
        List<String> known = room.given(RoomKeys.OPENINGS).orElse(List.of()).stream()
                .flatMap(opening -> opening.given(OpeningKeys.NAME).stream())
                .toList();
        agreed.given(PlannedKeys.OPENING_NAME)
                .filter(name -> !known.contains(name))
                .ifPresent(name ->
                        unknown(agreed.at(PlannedKeys.OPENING_NAME), "no opening \"" + name + "\"", Set.copyOf(known)));
    }

    private void coat(Entry agreed) {
        names.check(agreed);
        names.find(agreed).ifPresent(wall -> {
            long coats = site.given(SiteKeys.COATS).orElse(List.of()).stream()
                    .filter(coat -> names.find(coat).equals(Optional.of(wall)))
                    .count();
            agreed.given(CoatKeys.COAT)
                    .filter(number -> number > coats)
                    .ifPresent(number ->
                            agreed.at(CoatKeys.COAT).problem(number.toString(), "that wall has only " + coats));
        });
    }

    private static void unknown(Place at, String found, Set<String> known) {
        at.problem(
                found,
                "there are: "
                        + (known.isEmpty()
                                ? "none"
                                : String.join(", ", known.stream().sorted().toList())));
    }
}
