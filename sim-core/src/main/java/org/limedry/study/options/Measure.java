package org.limedry.study.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.climate.Schedule;
import org.limedry.room.Fumes;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Scenario;
import org.limedry.units.Check;

/**
 * Something that could be done in one room to be ready sooner.
 *
 * @param name what the user calls it; not blank
 * @param room the room
 * @param openings when its openings to outdoors stand open instead; empty leaves them as they are
 * @param plant what is brought in on top of what is there
 * @param fuelOut whether heaters that burn their fuel in the room air are put out and taken away first
 * @param sheets whether its openings are sheeted over: none stands open, and half of the leakage is left (judgement, no source)
 */
public record Measure(
        String name, String room, Optional<Schedule> openings, List<Plant> plant, boolean fuelOut, boolean sheets) {
    private static final double LEAKAGE_LEFT_BEHIND_SHEETS = 0.5;

    public Measure {
        Check.notBlank(name, "name");
        plant = List.copyOf(plant);
    }

    /** Tells whether it keeps the openings of its room to outdoors shut. */
    public boolean shuts() {
        return sheets || openings.filter(times -> times.spans().isEmpty()).isPresent();
    }

    /**
     * Returns the scenario with this measure taken.
     *
     * @throws IllegalArgumentException if the scenario has no such room
     */
    public Scenario on(Scenario scenario) {
        List<String> names = scenario.rooms().stream().map(RoomPlan::name).toList();
        Check.that(names.contains(room), "room", "one of " + names, room);
        List<RoomPlan> before = fuelOut ? Fumes.without(room, scenario.rooms()) : scenario.rooms();
        return scenario.withRooms(before.stream()
                .map(plan -> plan.name().equals(room) ? with(plan) : plan)
                .toList());
    }

    private RoomPlan with(RoomPlan plan) {
        List<Plant> all = new ArrayList<>(plan.plant());
        all.addAll(plant);
        Optional<Schedule> open = sheets ? Optional.of(Schedule.never()) : openings;
        List<Opening> opened = plan.openings().stream()
                .map(opening -> open.filter(times -> opening.leadsOutdoors())
                        .map(opening::openAt)
                        .orElse(opening))
                .toList();
        RoomPlan changed = plan.withOpenings(opened).withPlant(all);
        return sheets ? changed.withLeakage(LEAKAGE_LEFT_BEHIND_SHEETS * plan.leakagePerHour()) : changed;
    }
}
