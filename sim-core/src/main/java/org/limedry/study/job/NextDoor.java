package org.limedry.study.job;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.room.Opening;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/** What wet plaster in one room does to the waiting in the next. */
public final class NextDoor {

    private NextDoor() {}

    /**
     * How much longer a coat waits with the plaster next door than without it, laid on the same day.
     *
     * @param wall its wall
     * @param coat its number on that wall
     * @param days days from laid to ready, with less without; negative where the plaster next door makes it quicker
     */
    public record Delay(String wall, int coat, double days) {}

    /** Returns the rooms with coats that share an opening with another room with coats, in the order of the scenario. */
    public static Set<String> joinedRooms(Scenario scenario) {
        Map<String, String> rooms = roomOfWall(scenario);
        Set<String> plastered = new LinkedHashSet<>();
        scenario.coats().forEach(coat -> plastered.add(rooms.getOrDefault(coat.wall(), "")));
        Set<String> joined = new LinkedHashSet<>();
        for (RoomPlan room : scenario.rooms()) {
            for (Opening opening : room.openings()) {
                String other = opening.toRoom().orElse("");
                if (plastered.contains(room.name()) && plastered.contains(other)) {
                    joined.add(room.name());
                    joined.add(other);
                }
            }
        }
        return joined;
    }

    /** Returns the same scenario with every opening between rooms never open. */
    public static Scenario innerOpeningsShut(Scenario scenario) {
        return scenario.withRooms(scenario.rooms().stream()
                .map(room -> room.withOpenings(room.openings().stream()
                        .map(opening -> opening.leadsOutdoors() ? opening : opening.openAt(Schedule.never()))
                        .toList()))
                .toList());
    }

    /**
     * Returns the same scenario with the plaster of one room alone, each coat laid when it was laid in a run with all: what
     * differs then is the water next door, and nothing else; neither the gang nor the weather.
     *
     * @param scenario with the coats of all rooms
     * @param found what its run found
     * @param room the room whose coats stay
     */
    public static Scenario alone(Scenario scenario, Outcome found, String room) {
        Map<String, String> rooms = roomOfWall(scenario);
        List<CoatPlan> kept = new ArrayList<>();
        for (int i = 0; i < scenario.coats().size(); i++) {
            CoatPlan coat = scenario.coats().get(i);
            if (room.equals(rooms.get(coat.wall()))) {
                found.coats().get(i).laid().ifPresent(laid -> kept.add(coat.with(new Laying.On(laid))));
            }
        }
        return scenario.withCoats(kept);
    }

    /** Returns the delay of each coat that is ready in both runs, in the order of the coats of the second. */
    public static List<Delay> delays(Outcome withAll, Outcome alone) {
        List<Delay> delays = new ArrayList<>();
        for (Outcome.CoatResult coat : alone.coats()) {
            withAll.coats().stream()
                    .filter(other -> other.wall().equals(coat.wall()) && other.number() == coat.number())
                    .filter(other -> other.ready().isPresent() && coat.ready().isPresent())
                    .map(other -> Duration.between(
                            coat.ready().orElseThrow(), other.ready().orElseThrow()))
                    .forEach(longer -> delays.add(
                            new Delay(coat.wall(), coat.number(), Units.daysFromSeconds(longer.toMillis() / 1000.0))));
        }
        return delays;
    }

    private static Map<String, String> roomOfWall(Scenario scenario) {
        Map<String, String> rooms = new HashMap<>();
        for (WallPlan wall : scenario.walls()) {
            wall.innerRoom().ifPresent(room -> rooms.put(wall.name(), room));
        }
        return rooms;
    }
}
