package org.limedry.simulation;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.limedry.climate.Outdoors;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.RoomPlan;
import org.limedry.units.Check;
import org.limedry.wall.WallPlan;

/**
 * Everything one run needs, with every unknown settled to one value.
 *
 * @param site what the user calls the job
 * @param from start of the run
 * @param until end of the run, later than {@code from}
 * @param outdoors weather, covering the run
 * @param courses other air that runs its own course, by the name a wall side gives it; empty for ordinary sites
 * @param rooms the rooms; none for a wall between given climates
 * @param walls walls, floors, ceilings and panes of all rooms
 * @param coats coats in the order in which they are listed, each wall's numbered from 1
 * @param rule when the next coat may go on
 * @param handTests the plasterer's own tests, of which no two contradict
 * @param physics coefficients and constants
 * @param accuracy grid and tolerance
 */
public record Scenario(
        String site,
        Instant from,
        Instant until,
        Outdoors outdoors,
        Map<String, Outdoors> courses,
        List<RoomPlan> rooms,
        List<WallPlan> walls,
        List<CoatPlan> coats,
        ReadinessRule rule,
        List<HandTest> handTests,
        Physics physics,
        Accuracy accuracy) {
    public Scenario {
        Check.notBlank(site, "site");
        courses = Map.copyOf(courses);
        rooms = List.copyOf(rooms);
        walls = List.copyOf(walls);
        coats = List.copyOf(coats);
        handTests = List.copyOf(handTests);
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("until: must be after " + from + ", was " + until);
        }
        for (HandTest test : handTests) {
            Check.that(handTests.stream().noneMatch(test::contradicts), "handTests", "without contradiction", test);
        }
    }

    /** Returns this scenario on another grid and tolerance. */
    public Scenario with(Accuracy other) {
        return new Scenario(site, from, until, outdoors, courses, rooms, walls, coats, rule, handTests, physics, other);
    }

    /** Returns this scenario in other weather, which must cover the run. */
    public Scenario with(Outdoors other) {
        return new Scenario(site, from, until, other, courses, rooms, walls, coats, rule, handTests, physics, accuracy);
    }

    /** Returns this scenario with another end. */
    public Scenario endingAt(Instant other) {
        return new Scenario(
                site, from, other, outdoors, courses, rooms, walls, coats, rule, handTests, physics, accuracy);
    }

    /** Returns this scenario with other openings and plant: the same rooms by name, in the same order. */
    public Scenario withRooms(List<RoomPlan> others) {
        return new Scenario(
                site, from, until, outdoors, courses, others, walls, coats, rule, handTests, physics, accuracy);
    }

    /** Returns this scenario with other coats. */
    public Scenario withCoats(List<CoatPlan> others) {
        return new Scenario(
                site, from, until, outdoors, courses, rooms, walls, others, rule, handTests, physics, accuracy);
    }

    /** Returns this scenario without the plasterer's own tests, which hold only for what was really done. */
    public Scenario withoutHandTests() {
        return new Scenario(
                site, from, until, outdoors, courses, rooms, walls, coats, rule, List.of(), physics, accuracy);
    }
}
