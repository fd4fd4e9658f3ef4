package org.limedry.study.doors;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Outdoors;
import org.limedry.climate.Schedule;
import org.limedry.climate.SensorError;
import org.limedry.lime.ReadinessRule;
import org.limedry.material.Catalogue;
import org.limedry.reference.MaterialTable;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.units.Units;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** A room of wet brick walls, a door and a window, in weather given as a course. Invented. */
record DoorSite(DoubleUnaryOperator celsius, DoubleUnaryOperator humidity, double startCelsius, List<Plant> plant) {
    static final LocalDate FIRST = LocalDate.of(2026, 11, 17);
    static final String ROOM = "store";
    private static final Instant FROM = Instant.parse("2026-11-17T00:00:00Z");
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());

    static DoorSite steady(double outsideCelsius, double outsideHumidity, double startCelsius) {
        return new DoorSite(hour -> outsideCelsius, hour -> outsideHumidity, startCelsius, List.of());
    }

    /** Returns weather of a number, always the same: a mean that drifts, a daily swing, fronts of mild wet air. */
    static DoorSite random(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double mean = 3.0 + 9.0 * random.nextDouble();
        double drift = (random.nextDouble() - 0.5) * 8.0 / 72.0;
        double swing = 4.0 * random.nextDouble();
        double damp = 0.75 + 0.2 * random.nextDouble();
        double phase = 72.0 * random.nextDouble();
        return new DoorSite(
                hour -> mean + drift * hour - swing * Math.cos(Math.PI * hour / 12.0),
                hour -> Math.min(0.99, damp + 0.1 * Math.sin(2.0 * Math.PI * (hour + phase) / 50.0)),
                mean,
                List.of());
    }

    DoorQuestion question(int days, SensorError errors, boolean nights) {
        return new DoorQuestion(scenario(days + 1), ROOM, new DoorWindow(ZoneOffset.UTC, FIRST, days), errors, nights);
    }

    private Scenario scenario(int days) {
        ReadinessRule rule = new ReadinessRule(
                "days", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(1.0));
        return new Scenario(
                "doors",
                FROM,
                FROM.plus(Duration.ofDays(days)),
                this::over,
                Map.of(),
                List.of(room()),
                List.of(wall("north"), wall("south")),
                List.of(),
                rule,
                List.of(),
                Physics.ordinary(),
                Accuracy.quick());
    }

    private Outdoors.Piece over(Instant from, Instant until) {
        double start = hours(from);
        double end = hours(until);
        return new Outdoors.Piece(
                celsius.applyAsDouble(start), celsius.applyAsDouble(end), vapourPa(start), vapourPa(end), 1.5, 1.5);
    }

    private double vapourPa(double hour) {
        return humidity.applyAsDouble(hour) * MagnusForm.WMO_WATER.pressurePa(celsius.applyAsDouble(hour));
    }

    private static double hours(Instant instant) {
        return Duration.between(FROM, instant).toMillis() / 3.6e6;
    }

    private RoomPlan room() {
        List<Opening> openings = List.of(
                new Opening("door", 0.9, 2.0, 0.0, "N", Optional.empty(), Schedule.never()),
                new Opening("window", 0.8, 1.0, 0.9, "S", Optional.empty(), Schedule.never()));
        return new RoomPlan(ROOM, 45.0, 18.0, 2.5, 5.0e4, 0.4, 0.0, openings, plant, startCelsius, 0.95);
    }

    private WallPlan wall(String name) {
        double suctionPa = -1000.0 * 461.5 * Units.kelvin(startCelsius) * Math.log(0.985);
        LayerPlan brick =
                new LayerPlan("brick", CATALOGUE.material(Catalogue.OLD_BRICK), 0.34, startCelsius, suctionPa);
        return new WallPlan(
                name, WallPlan.Kind.LISTED, 18.0, List.of(brick), new Side.Sealed(), new Side.Room(ROOM), 0.0);
    }

    static List<Outcome> run(List<Scenario> scenarios) {
        return scenarios.stream().map(Simulation::run).toList();
    }

    static double litres(DoorPlan plan, DoorWay way) {
        DoorQuestion question = plan.question();
        Outcome before = Simulation.run(
                question.with(Schedule.never()).endingAt(question.window().from()));
        Outcome after = Simulation.run(question.with(way.open(plan)).endingAt(question.until()));
        return DoorLitres.outOfWalls(
                before.roomAccounts().get(0).account(),
                after.roomAccounts().get(0).account());
    }
}
