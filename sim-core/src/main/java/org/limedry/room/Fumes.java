package org.limedry.room;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.limedry.climate.Schedule;

/**
 * Fuel burnt in the air of rooms. Rooms that a door joins share their fumes: a door that is shut today is open tomorrow.
 */
public final class Fumes {
    private static final Set<Plant.Fuel> UNFLUED = EnumSet.of(Plant.Fuel.UNFLUED_LPG, Plant.Fuel.UNFLUED_PARAFFIN);

    private Fumes() {}

    /** Tells whether something is a heater that burns its fuel in the room air. */
    public static boolean comeFrom(Plant plant) {
        return plant instanceof Plant.Heater heater && UNFLUED.contains(heater.fuel());
    }

    /** Tells whether fuel is burnt at any time in the air of a room, or of one that doors join to it. */
    public static boolean reach(String room, List<RoomPlan> rooms) {
        return !burning(joined(room, rooms)).isEmpty();
    }

    /**
     * Tells whether fuel burns in the air of a room, or of one that doors join to it, while none of their doors and windows to
     * outdoors stands open.
     */
    public static boolean areShutIn(String room, List<RoomPlan> rooms) {
        List<RoomPlan> joined = joined(room, rooms);
        Schedule airing = new Schedule(joined.stream()
                .flatMap(plan -> plan.openings().stream())
                .filter(Opening::leadsOutdoors)
                .flatMap(opening -> opening.open().spans().stream())
                .toList());
        return burning(joined).stream()
                .anyMatch(span -> airing.spans().stream()
                        .noneMatch(open -> !span.from().isBefore(open.from())
                                && !span.until().isAfter(open.until())));
    }

    /** Returns the rooms with every such heater taken out of one room and of those that doors join to it. */
    public static List<RoomPlan> without(String room, List<RoomPlan> rooms) {
        List<RoomPlan> joined = joined(room, rooms);
        return rooms.stream()
                .map(plan -> joined.contains(plan) ? without(plan) : plan)
                .toList();
    }

    private static RoomPlan without(RoomPlan plan) {
        return plan.withPlant(
                plan.plant().stream().filter(plant -> !comeFrom(plant)).toList());
    }

    private static List<Schedule.Span> burning(List<RoomPlan> rooms) {
        return rooms.stream()
                .flatMap(room -> room.plant().stream())
                .filter(Fumes::comeFrom)
                .flatMap(plant -> plant.on().spans().stream())
                .toList();
    }

    private static List<RoomPlan> joined(String room, List<RoomPlan> rooms) {
        Set<String> names = new LinkedHashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(room));
        while (!next.isEmpty()) {
            String name = next.pop();
            if (names.add(name)) {
                next.addAll(beside(name, rooms));
            }
        }
        return rooms.stream().filter(plan -> names.contains(plan.name())).toList();
    }

    private static List<String> beside(String room, List<RoomPlan> rooms) {
        List<String> names = new ArrayList<>();
        for (RoomPlan plan : rooms) {
            for (Opening opening : plan.openings()) {
                opening.toRoom()
                        .filter(other -> plan.name().equals(room) || other.equals(room))
                        .ifPresent(other -> names.add(other.equals(room) ? plan.name() : other));
            }
        }
        return names;
    }
}
