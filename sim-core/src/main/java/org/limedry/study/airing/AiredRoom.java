package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.wall.WallPlan;

/**
 * A room of which it is asked how much air it needs.
 *
 * <p>Its heaters, its fans and the timetables of its openings to outdoors are what is asked about, so they give way to the
 * level that is tried. Its dehumidifiers, people and mist stay, and so does everything in the other rooms and every door
 * between rooms; in a bare building no machine stays in any room.
 *
 * @param name its name
 * @param zone time zone of the site
 * @param bare whether heaters, fans and dehumidifiers of the whole site are left out
 */
public record AiredRoom(String name, ZoneId zone, boolean bare) {
    /** As for heaters of a site file that do not say. */
    private static final double RADIANT_SHARE = 0.30;

    /** Returns the name of the room whose coat is waited for longest; one that never is ready longest of all. */
    public static Optional<String> longestWaiting(Scenario scenario, Outcome outcome) {
        Comparator<Outcome.CoatResult> byWait = Comparator.comparing(coat -> waited(coat, outcome.reached()));
        return outcome.coats().stream()
                .filter(coat -> roomOf(scenario, coat.wall()).isPresent())
                .max(Comparator.<Outcome.CoatResult, Boolean>comparing(
                                coat -> coat.ready().isEmpty())
                        .thenComparing(byWait))
                .flatMap(coat -> roomOf(scenario, coat.wall()));
    }

    private static Duration waited(Outcome.CoatResult coat, Instant reached) {
        return coat.laid()
                .map(laid -> Duration.between(laid, coat.ready().orElse(reached)))
                .orElse(Duration.ZERO);
    }

    private static Optional<String> roomOf(Scenario scenario, String wallName) {
        return scenario.walls().stream()
                .filter(wall -> wall.name().equals(wallName))
                .flatMap(wall -> wall.innerRoom().stream())
                .findFirst();
    }

    /** Returns the run of a level. Hand tests hold only for what was really done and are left out. */
    public Scenario with(Scenario scenario, AiringLevel level) {
        return scenario.withoutHandTests()
                .withRooms(scenario.rooms().stream()
                        .map(room -> room.name().equals(name) ? aired(room, scenario, level) : left(room))
                        .toList());
    }

    /** Returns the plan of the room in a scenario. */
    public RoomPlan plan(Scenario scenario) {
        return scenario.rooms().stream()
                .filter(room -> room.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("name: must be a room of the site, was " + name));
    }

    /** Returns its walls that are plastered on the side of the room. */
    public Set<String> plasteredWalls(Scenario scenario) {
        Set<String> own = scenario.walls().stream()
                .filter(wall -> wall.innerRoom().equals(Optional.of(name)))
                .map(WallPlan::name)
                .collect(Collectors.toSet());
        return scenario.coats().stream()
                .map(CoatPlan::wall)
                .filter(own::contains)
                .collect(Collectors.toSet());
    }

    /** Returns when its first coat is laid, if it has a coat. */
    public Optional<Instant> firstLaid(Scenario scenario) {
        Set<String> walls = plasteredWalls(scenario);
        return scenario.coats().stream()
                .filter(coat -> walls.contains(coat.wall()))
                .flatMap(coat -> coat.laying() instanceof Laying.On on ? Stream.of(on.instant()) : Stream.empty())
                .min(Instant::compareTo);
    }

    private RoomPlan aired(RoomPlan room, Scenario scenario, AiringLevel level) {
        Schedule always = Schedule.always(scenario.from(), scenario.until());
        Schedule open = level.airing().openings(zone, scenario.from(), scenario.until(), level.shutDays());
        Stream<Plant> kept = without(room, plant -> plant instanceof Plant.Heater || plant instanceof Plant.Fan);
        Stream<Plant> fan = level.airing().fanM3PerS() > 0.0
                ? Stream.of(new Plant.Fan("fan", level.airing().fanM3PerS(), always))
                : Stream.empty();
        Stream<Plant> heater = level.heat().stream().map(heat -> heater(heat, always));
        return room.withPlant(Stream.of(kept, fan, heater).flatMap(one -> one).toList())
                .withOpenings(room.openings().stream()
                        .map(opening -> opening.leadsOutdoors() ? opening.openAt(open) : opening)
                        .toList());
    }

    private static Plant heater(SteadyHeat heat, Schedule on) {
        return new Plant.Heater(
                "electric heater",
                heat.watts(),
                Plant.Fuel.ELECTRIC,
                RADIANT_SHARE,
                OptionalDouble.of(heat.holdsCelsius()),
                false,
                on);
    }

    private RoomPlan left(RoomPlan room) {
        List<Plant> kept = without(room, plant -> bare && (plant instanceof Plant.Heater || plant instanceof Plant.Fan))
                .toList();
        return room.withPlant(kept);
    }

    private Stream<Plant> without(RoomPlan room, Predicate<Plant> dropped) {
        return room.plant().stream()
                .filter(plant -> !dropped.test(plant) && !(bare && plant instanceof Plant.Dehumidifier));
    }
}
