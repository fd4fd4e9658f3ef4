package org.limedry.simulation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.ReadinessRule;
import org.limedry.material.Catalogue;
import org.limedry.proof.benchmarks.Course;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.reference.MaterialTable;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** Two rooms for three days, so made that every term of the water account is large. Invented. */
final class AccountSite {
    private static final double HOURS = 72.0;
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final Outcome OUTCOME = Simulation.run(scenario());

    private AccountSite() {}

    static Outcome outcome() {
        return OUTCOME;
    }

    static Scenario scenario() {
        Course outdoors = new Course(
                Lab.START,
                hour -> 4.0 + 3.0 * Math.sin(Math.PI * hour / 12.0),
                hour -> 0.9 * MagnusForm.WMO_WATER.pressurePa(4.0),
                hour -> 3.0);
        List<CoatPlan> coats = List.of(coat(1, 0.012, 1.0), coat(2, 0.008, 30.0));
        ReadinessRule rule = new ReadinessRule(
                "days", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(1.0));
        return new Scenario(
                "account",
                Lab.START,
                Lab.at(HOURS),
                outdoors,
                Map.of(),
                List.of(wetRoom(), dryRoom()),
                List.of(plastered(), granite(), pane(), partition()),
                coats,
                rule,
                List.of(),
                Physics.ordinary(),
                Accuracy.ordinary());
    }

    private static RoomPlan wetRoom() {
        Schedule always = Schedule.always(Lab.START, Lab.at(HOURS));
        Opening door = new Opening("door", 0.8, 2.0, 0.0, "", Optional.of("dry"), always);
        List<Plant> plant = List.of(
                new Plant.Heater(
                        "gas heater", 2500.0, Plant.Fuel.UNFLUED_LPG, 0.3, OptionalDouble.empty(), false, always),
                new Plant.People("gang", 2.0, Schedule.always(Lab.at(2.0), Lab.at(10.0))),
                new Plant.Misting("mist", "plastered", 1.0e-4, Schedule.always(Lab.at(40.0), Lab.at(41.0))));
        double earth = 0.3 / 86_400.0;
        return new RoomPlan("wet", 40.0, 16.0, 2.5, 5.0e4, 0.4, earth, List.of(door), plant, 6.0, 0.85);
    }

    private static RoomPlan dryRoom() {
        Schedule always = Schedule.always(Lab.START, Lab.at(HOURS));
        Plant dehumidifier = new Plant.Dehumidifier(
                "dehumidifier",
                Plant.Drying.DESICCANT,
                10.0 / 86_400.0,
                Plant.Rating.AT_20C_60,
                400.0,
                OptionalDouble.empty(),
                always);
        return new RoomPlan("dry", 30.0, 12.0, 2.5, 5.0e4, 0.4, 0.0, List.of(), List.of(dehumidifier), 6.0, 0.85);
    }

    private static WallPlan plastered() {
        LayerPlan brick = new LayerPlan("brick", CATALOGUE.material(Catalogue.OLD_BRICK), 0.23, 5.0, 1.0e6);
        double rising = 2.0 / 86_400.0;
        return new WallPlan(
                "plastered",
                WallPlan.Kind.LISTED,
                20.0,
                List.of(brick),
                new Side.Outdoors(),
                new Side.Room("wet"),
                rising);
    }

    /** A cold floor of granite: water runs off it, and earth shows between its slabs. */
    private static WallPlan granite() {
        LayerPlan stone = new LayerPlan("granite", CATALOGUE.material(Catalogue.GRANITE), 0.15, 5.0, 1.0e6);
        return new WallPlan(
                "flags", WallPlan.Kind.FLOOR, 16.0, List.of(stone), new Side.Soil(7.0), new Side.Room("wet"), 0.0);
    }

    private static WallPlan pane() {
        LayerPlan glass = new LayerPlan("glass", CATALOGUE.material(Catalogue.GLASS), 0.004, 5.0, 1.0e7);
        return new WallPlan(
                "pane", WallPlan.Kind.PANE, 6.0, List.of(glass), new Side.Outdoors(), new Side.Room("wet"), 0.0);
    }

    private static WallPlan partition() {
        LayerPlan brick = new LayerPlan("brick", CATALOGUE.material(Catalogue.OLD_BRICK), 0.11, 6.0, 1.0e6);
        return new WallPlan(
                "partition",
                WallPlan.Kind.LISTED,
                8.0,
                List.of(brick),
                new Side.Room("wet"),
                new Side.Room("dry"),
                0.0);
    }

    private static CoatPlan coat(int number, double thicknessM, double hour) {
        CoatMortar mortar = new CoatMortar(
                "hydraulic",
                CATALOGUE.material(Catalogue.NHL_PLASTER),
                240.0,
                200.0,
                25.0,
                30_000.0,
                false,
                1.4e-3 / Math.sqrt(86_400.0));
        return new CoatPlan("plastered", number, mortar, thicknessM, 8.0, 0.3, new Laying.On(Lab.at(hour)));
    }
}
