package org.limedry.study.doors;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.limedry.climate.Schedule;
import org.limedry.climate.SensorError;
import org.limedry.room.Opening;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Scenario;
import org.limedry.units.Check;

/**
 * A site, one of its rooms, and the days for which its doors and windows to outdoors want a plan; they go together.
 * Before and after those days they follow the scenario, and so do all other openings throughout.
 *
 * @param scenario the site; its run covers the days
 * @param room name of the room; it has an opening to outdoors
 * @param window the days
 * @param errors how far the instruments may be off
 * @param nights whether the doors may stand open at night; otherwise every night is shut
 */
public record DoorQuestion(Scenario scenario, String room, DoorWindow window, SensorError errors, boolean nights) {
    public DoorQuestion {
        boolean leadsOut = scenario.rooms().stream()
                .filter(plan -> plan.name().equals(room))
                .flatMap(plan -> plan.openings().stream())
                .anyMatch(Opening::leadsOutdoors);
        Check.that(leadsOut, "room", "a room of the site with an opening to outdoors", room);
        Check.that(!window.from().isBefore(scenario.from()), "window", "within the run", window.first());
        Check.that(window.from().isBefore(scenario.until()), "window", "within the run", window.first());
    }

    /** Returns the same question of another scenario: of the same site with its unknowns elsewhere. */
    public DoorQuestion of(Scenario other) {
        return new DoorQuestion(other, room, window, errors, nights);
    }

    /** Returns when the plan ends: with its last night, or with the run. */
    public Instant until() {
        return window.until().isAfter(scenario.until()) ? scenario.until() : window.until();
    }

    /** Returns when a day with its night ends, if its night is asked for, or its evening, or the run. */
    Instant endOf(LocalDate date) {
        Instant end = nights ? window.morning(date.plusDays(1)) : window.evening(date);
        return end.isAfter(scenario.until()) ? scenario.until() : end;
    }

    /** Returns the site with the doors of the room open at these times of the days in question. */
    public Scenario with(Schedule open) {
        return scenario.withRooms(
                scenario.rooms().stream().map(plan -> with(plan, open)).toList());
    }

    private RoomPlan with(RoomPlan plan, Schedule open) {
        if (!plan.name().equals(room)) {
            return plan;
        }
        List<Opening> openings = plan.openings().stream()
                .map(opening -> opening.leadsOutdoors()
                        ? opening.openAt(opening.open().between(window.from(), window.until(), open))
                        : opening)
                .toList();
        return plan.withOpenings(openings);
    }
}
