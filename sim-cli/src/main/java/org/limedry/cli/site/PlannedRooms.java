package org.limedry.cli.site;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.limedry.cli.site.PlannedJob.Cause;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.climate.Timetable;

/** The rooms of a job in which some things went as agreed and others as they did. */
final class PlannedRooms {
    private static final int DAYS_PER_WEEK = 7;
    /** What the gang brings with it, and takes to whatever date it works on. */
    static final Set<String> OF_THE_GANG = Set.of(PlantKeys.PEOPLE, PlantKeys.MISTING);

    private final SiteParts parts;
    private final Map<String, Entry> agreed;

    PlannedRooms(SiteParts parts, Entry planned) {
        this.parts = parts;
        this.agreed = planned.get(PlannedKeys.ROOMS);
    }

    private Optional<Entry> agreed(String room) {
        return Optional.ofNullable(agreed.get(room));
    }

    /** Returns the day on which a room was handed over: as said, or that of its first coat. */
    LocalDate actuallyReleased(String room) {
        Entry entry = parts.rooms().get(room);
        return Optional.ofNullable(entry)
                .flatMap(some -> some.given(RoomKeys.RELEASED))
                .or(() -> firstLaid(parts.entry(), parts.names(), room))
                .orElseThrow(() -> new IllegalStateException(room + " has no coat with a date"));
    }

    /** Returns the day of the first coat in a room, if one has a date. */
    static Optional<LocalDate> firstLaid(Entry site, WallNames names, String room) {
        return site.given(SiteKeys.COATS).orElse(List.of()).stream()
                .filter(coat -> names.find(coat)
                        .filter(wall -> wall.room().equals(room))
                        .isPresent())
                .flatMap(coat -> coat.given(CoatKeys.LAID).flatMap(laid -> laid).stream())
                .min(LocalDate::compareTo);
    }

    /** Returns by how many days a room was handed over later than agreed. */
    long daysLate(String room) {
        return agreed(room)
                .flatMap(entry -> entry.given(PlannedKeys.RELEASED))
                .map(day -> ChronoUnit.DAYS.between(day, actuallyReleased(room)))
                .orElse(0L);
    }

    /** Door hours keep their weekdays when they go with the job. */
    private int weeksLate(String room) {
        return DAYS_PER_WEEK * Math.toIntExact(Math.round(daysLate(room) / (double) DAYS_PER_WEEK));
    }

    boolean doorsDiffer() {
        return agreed.entrySet().stream()
                .anyMatch(room -> room.getValue().get(PlannedKeys.OPENINGS).stream()
                        .anyMatch(opening -> !opening.get(OpeningKeys.OPEN)
                                .equals(openingOf(room.getKey(), opening).get(OpeningKeys.OPEN))));
    }

    private Entry openingOf(String room, Entry asking) {
        return parts.rooms().getOrDefault(room, asking).get(RoomKeys.OPENINGS).stream()
                .filter(opening -> opening.get(OpeningKeys.NAME).equals(asking.get(PlannedKeys.OPENING_NAME)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(asking.place().path() + " has no opening"));
    }

    boolean wetnessDiffers() {
        return agreed.entrySet().stream()
                .flatMap(room -> walls(room.getKey()).entrySet().stream()
                        .map(wall -> stated(room.getKey(), wall.getKey())
                                .filter(wetness ->
                                        !wetness.equals(wall.getValue().get(WallKeys.WETNESS)))))
                .anyMatch(Optional::isPresent);
    }

    private Map<String, Entry> walls(String room) {
        return Optional.ofNullable(parts.rooms().get(room))
                .map(entry -> entry.get(RoomKeys.WALLS))
                .orElse(Map.of());
    }

    private Optional<Wetness> stated(String room, String wall) {
        return agreed(room)
                .map(entry -> entry.get(PlannedKeys.WALLS))
                .flatMap(walls -> Optional.ofNullable(walls.get(wall)))
                .map(entry -> entry.get(PlannedKeys.WETNESS));
    }

    /** Returns the rooms. */
    Map<String, Entry> rooms(Set<Cause> happened) {
        Map<String, Entry> rooms = new LinkedHashMap<>();
        parts.rooms().forEach((name, room) -> {
            Entry mixed = room.with(RoomKeys.OPENINGS, openings(name, room, happened))
                    .with(RoomKeys.PLANT, plant(name, room, happened));
            rooms.put(
                    name, happened.contains(Cause.WALL) ? mixed : mixed.with(RoomKeys.WALLS, statedWalls(name, room)));
        });
        return rooms;
    }

    private Map<String, Entry> statedWalls(String room, Entry entry) {
        Map<String, Entry> walls = new LinkedHashMap<>();
        entry.get(RoomKeys.WALLS)
                .forEach((name, wall) -> walls.put(
                        name,
                        stated(room, name)
                                .map(wetness -> wall.with(WallKeys.WETNESS, wetness))
                                .orElse(wall)));
        return walls;
    }

    private List<Entry> openings(String name, Entry room, Set<Cause> happened) {
        List<Entry> agreedOpenings =
                agreed(name).map(entry -> entry.get(PlannedKeys.OPENINGS)).orElse(List.of());
        boolean late = happened.contains(Cause.ROOM);
        List<Entry> openings = new ArrayList<>();
        for (Entry opening : room.get(RoomKeys.OPENINGS)) {
            Optional<Entry> other = happened.contains(Cause.DOORS)
                    ? Optional.empty()
                    : agreedOpenings.stream()
                            .filter(some -> some.get(PlannedKeys.OPENING_NAME).equals(opening.get(OpeningKeys.NAME)))
                            .findFirst();
            int laterByDays = other.isPresent() ? (late ? weeksLate(name) : 0) : (late ? 0 : -weeksLate(name));
            openings.add(moved(opening, OpeningKeys.OPEN, other.orElse(opening).get(OpeningKeys.OPEN), laterByDays));
        }
        return openings;
    }

    private List<Tagged.Variant> plant(String name, Entry room, Set<Cause> happened) {
        int laterByDays = happened.contains(Cause.ROOM) ? 0 : -weeksLate(name);
        List<Tagged.Variant> plant = new ArrayList<>();
        List<Tagged.Variant> actual = room.get(RoomKeys.PLANT);
        actual.stream()
                .filter(some -> OF_THE_GANG.contains(some.word()))
                .map(some -> new Tagged.Variant(some.word(), moved(some.entry(), laterByDays)))
                .forEach(plant::add);
        List<Tagged.Variant> machines = happened.contains(Cause.PLANT)
                ? actual
                : agreed(name).flatMap(entry -> entry.given(PlannedKeys.PLANT)).orElse(actual);
        machines.stream().filter(some -> !OF_THE_GANG.contains(some.word())).forEach(plant::add);
        return plant;
    }

    private static Entry moved(Entry gang, int days) {
        Entry moved = gang.given(PlantKeys.ON)
                .map(on -> moved(gang, PlantKeys.ON, on, days))
                .orElse(gang);
        for (Key<LocalDate> end : List.of(PlantKeys.FROM, PlantKeys.UNTIL)) {
            Optional<LocalDate> day = gang.given(end);
            moved = day.isPresent() ? moved.with(end, day.get().plusDays(days)) : moved;
        }
        return moved;
    }

    private static Entry moved(Entry entry, Key<List<Timetable>> key, List<Timetable> times, int days) {
        return entry.with(
                key, times.stream().map(timetable -> moved(timetable, days)).toList());
    }

    /** Days that nobody wrote, the first and the last of all, stay. */
    private static Timetable moved(Timetable times, int days) {
        LocalDate first = times.first().equals(LocalDate.MIN)
                ? times.first()
                : times.first().plusDays(days);
        LocalDate last =
                times.last().equals(LocalDate.MAX) ? times.last() : times.last().plusDays(days);
        return new Timetable(times.lines(), first, last);
    }
}
