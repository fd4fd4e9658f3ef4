package org.limedry.cli.report;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.limedry.cli.safety.Has;
import org.limedry.cli.safety.Situation;
import org.limedry.climate.Outdoors;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.ReadinessRule;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.ReadyRange;
import org.limedry.units.Units;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/**
 * A site and what a run of it might have found. Every figure is invented by hand: it proves nothing about drying, only
 * that what is found is told right.
 */
final class Invented {
    static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    static final Instant FROM = Instant.parse("2026-11-02T00:00:00Z");
    static final Instant UNTIL = Instant.parse("2027-02-01T00:00:00Z");
    static final int HOURS = (int) Duration.between(FROM, UNTIL).toHours();
    static final int HEATER_IN = 28 * 24;

    private static final Material MATERIAL =
            new Material("rubble", Closed.instance(), Closed.instance(), Closed.instance(), Closed.instance(), 1.6e6);
    private static final CoatMortar MORTAR =
            new CoatMortar("base", MATERIAL, 300.0, 180.0, 0.0, 30_000.0, true, 4.0e-6);

    private Invented() {}

    /** Returns one room with three coats, the last of them perhaps not ready in time. */
    static Findings oneRoom() {
        List<CoatPlan> coats = List.of(
                coat("store north", 1, 0.011, day("2026-11-02")),
                coat("store ceiling", 1, 0.010, day("2026-11-04")),
                coat("store north", 2, 0.010, day("2027-01-08")));
        List<Outcome.CoatResult> results = List.of(
                result("store north", 1, "2026-11-02", "2027-01-07", 0.9),
                result("store ceiling", 1, "2026-11-04", "2026-12-02", 0.1),
                result("store north", 2, "2027-01-08", "2027-01-29", 1.0));
        List<ReadyRange> ranges = List.of(
                range("store north", 1, "2026-12-17", "2027-01-07", "2027-01-22"),
                range("store ceiling", 1, "2026-11-24", "2026-12-02", "2026-12-09"),
                range("store north", 2, "2027-01-11", "2027-01-29", ""));
        Outcome outcome = new Outcome(
                new Outcome.Ending.Complete(),
                UNTIL,
                results,
                account(),
                List.of(new Outcome.RoomAccount("store", account())),
                faces("store"),
                history(Map.of("store", List.of("north", "ceiling", "window pane")), coats),
                List.of(new Warning(Warning.Kind.GLASS_RUNNING, "store window pane", hour(30), hour(900), 214.0)),
                new Outcome.Statistics(4812, 37, 11960, 122, 1.5));
        return new Findings(
                notes(true),
                scenario("Old net loft, store (invented)", List.of(store()), walls("store"), coats),
                outcome,
                ranges,
                new Effort(16, 0, 3.4, "limedry 0.0"));
    }

    static SiteNotes notes(boolean invented) {
        return new SiteNotes(
                ZONE,
                invented,
                10.0,
                new Situation(Set.of(Has.QUICKLIME), Set.of()),
                Map.of("store north", "damp stone", "store ceiling", "timber lath"),
                "Weather: a quiet year.",
                List.of(
                        new SiteNotes.Assumption(
                                "Air through cracks of the store", "0.6 room-fulls an hour", "0.2 to 2", "from memory"),
                        new SiteNotes.Assumption("Wetness of the north wall", "half full of water", "", "you: wet")),
                List.of(),
                List.of("Copyright Met Eireann.", "Source www.met.ie."));
    }

    static Scenario scenario(String site, List<RoomPlan> rooms, List<WallPlan> walls, List<CoatPlan> coats) {
        Outdoors outdoors = (from, until) -> new Outdoors.Piece(4.0, 4.0, 700.0, 700.0, 1.0, 1.0);
        return new Scenario(
                site,
                FROM,
                UNTIL,
                outdoors,
                Map.of(),
                rooms,
                walls,
                coats,
                new ReadinessRule(
                        "green-hard",
                        OptionalDouble.of(300_000.0),
                        OptionalDouble.of(2.0),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                List.of(),
                Physics.ordinary(),
                Accuracy.ordinary());
    }

    static RoomPlan store() {
        Schedule heater = new Schedule(List.of(new Schedule.Span(hour(HEATER_IN), UNTIL)));
        Schedule machine = new Schedule(List.of(new Schedule.Span(hour(42 * 24), UNTIL)));
        List<Plant> plant = List.of(
                new Plant.Heater(
                        "electric heater", 2000.0, Plant.Fuel.ELECTRIC, 0.3, OptionalDouble.empty(), false, heater),
                new Plant.Dehumidifier(
                        "dehumidifier",
                        Plant.Drying.REFRIGERANT,
                        20.0 / Units.SECONDS_PER_DAY,
                        Plant.Rating.AT_30C_80,
                        400.0,
                        OptionalDouble.empty(),
                        machine));
        return room("store", plant);
    }

    static RoomPlan room(String name, List<Plant> plant) {
        Opening door = new Opening("yard door", 0.95, 2.0, 0.0, "S", Optional.empty(), Schedule.never());
        Opening window = new Opening("window", 0.8, 1.1, 0.9, "N", Optional.empty(), Schedule.never());
        return new RoomPlan(name, 51.0, 21.0, 2.4, 50_000.0, 0.6, 0.0, List.of(door, window), plant, 7.0, 0.85);
    }

    static List<WallPlan> walls(String room) {
        return List.of(
                wall("store north", WallPlan.Kind.LISTED, 24.0, "damp stone", room),
                wall("store ceiling", WallPlan.Kind.LISTED, 16.0, "timber lath", room),
                wall(room + " window pane", WallPlan.Kind.PANE, 0.88, "glass", room));
    }

    static WallPlan wall(String name, WallPlan.Kind kind, double areaM2, String layer, String room) {
        LayerPlan only = new LayerPlan(layer, MATERIAL, 0.4, 7.0, 1.0e6);
        return new WallPlan(name, kind, areaM2, List.of(only), new Side.Outdoors(), new Side.Room(room), 0.0);
    }

    static CoatPlan coat(String wall, int number, double thicknessM, Instant laid) {
        return new CoatPlan(wall, number, MORTAR, thicknessM, 10.0, 0.0, new Laying.On(laid));
    }

    static Outcome.CoatResult result(String wall, int number, String laid, String ready, double leftKgPerM2) {
        return new Outcome.CoatResult(
                wall,
                number,
                laid.isEmpty() ? Optional.empty() : Optional.of(day(laid)),
                ready.isEmpty() ? Optional.empty() : Optional.of(day(ready)),
                false,
                Optional.empty(),
                laid.isEmpty() ? 0.0 : 3.3,
                leftKgPerM2,
                0.0004);
    }

    static ReadyRange range(String wall, int coat, String earliest, String likely, String latest) {
        return new ReadyRange(wall, coat, optional(earliest), optional(likely), optional(latest), false, false);
    }

    private static Optional<Instant> optional(String date) {
        return date.isEmpty() ? Optional.empty() : Optional.of(day(date));
    }

    static Instant day(String date) {
        return Instant.parse(date + "T08:00:00Z");
    }

    static Instant hour(int hour) {
        return FROM.plus(Duration.ofHours(hour));
    }

    /** An account that closes: 234.9 kg in, 185.8 kg gone, 49.1 kg still here. */
    static WaterAccount account() {
        return new WaterAccount(
                199.3, 6.2, 10.9, 13.8, 0.0, 4.7, 2.1, 103.2, 0.0, 1.8, 69.6, 9.1, 40.9, 7.4, 0.3, 0.5, 41.2, 28.3);
    }

    static List<Outcome.FaceResult> faces(String room) {
        return List.of(
                new Outcome.FaceResult("store north", room, 24.0, true, 672.0, 0.0, 803.0, 30.4, 26.3),
                new Outcome.FaceResult("store ceiling", room, 16.0, true, 11.0, 0.0, 40.0, 2.1, 2.0),
                new Outcome.FaceResult(room + " window pane", room, 0.88, false, 900.0, 214.0, 950.0, 8.7, 0.0));
    }

    /** Cold and shut until the heater comes, then warm and drier. */
    static History history(Map<String, List<String>> wallsOfRooms, List<CoatPlan> coats) {
        List<History.RoomHours> roomHours = new ArrayList<>();
        List<History.FaceHours> faceHours = new ArrayList<>();
        wallsOfRooms.forEach((room, walls) -> {
            roomHours.add(roomHours(room));
            walls.forEach(wall -> faceHours.add(face(room + " " + wall, room, wall.equals("north") ? 5.0 : 6.2)));
        });
        return new History(
                IntStream.rangeClosed(0, HOURS).mapToObj(Invented::hour).toList(),
                series(hour -> 4.0 + 2.0 * Math.sin(hour / 40.0)),
                series(hour -> 0.9),
                roomHours,
                faceHours,
                coats.stream().map(Invented::coatHours).toList());
    }

    static History.RoomHours roomHours(String room) {
        return new History.RoomHours(
                room,
                series(hour -> hour <= HEATER_IN ? 6.0 : 11.0),
                series(hour -> hour <= HEATER_IN ? 0.97 : 0.75),
                series(hour -> hour <= HEATER_IN ? 5.6 : 6.8),
                series(hour -> 500.0),
                series(hour -> 0.02),
                series(hour -> hour % 24 == 11 || hour % 24 == 12 ? 1.0 : 0.0),
                series(hour -> hour <= HEATER_IN ? 0.0 : 2000.0),
                series(hour -> hour <= 42 * 24 ? 0.0 : 69.6 / (49 * 24) / Units.SECONDS_PER_HOUR));
    }

    private static History.FaceHours face(String wall, String room, double coldCelsius) {
        return new History.FaceHours(
                wall,
                room,
                series(hour -> hour <= HEATER_IN ? coldCelsius : coldCelsius + 3.5),
                series(hour -> hour <= HEATER_IN ? 0.99 : 0.9),
                series(hour -> 0.0),
                series(hour -> -3.0e-7));
    }

    private static History.CoatHours coatHours(CoatPlan coat) {
        Instant laid = coat.laying() instanceof Laying.On on ? on.instant() : UNTIL;
        IntToDoubleFunction days =
                hour -> Math.max(0.0, Duration.between(laid, hour(hour)).toHours() / 24.0);
        double laidKg = coat.thicknessM() * 300.0;
        return new History.CoatHours(
                coat.wall(),
                coat.number(),
                series(hour -> hour(hour).isBefore(laid) ? 0.0 : laidKg * Math.exp(-days.applyAsDouble(hour) / 60.0)),
                series(hour -> 1.0e4 * days.applyAsDouble(hour)),
                series(hour -> 0.5 * days.applyAsDouble(hour)),
                series(hour -> 1.0e-5 * days.applyAsDouble(hour)));
    }

    static Series series(IntToDoubleFunction value) {
        return Series.of(IntStream.rangeClosed(0, HOURS).mapToDouble(value).toArray());
    }
}
