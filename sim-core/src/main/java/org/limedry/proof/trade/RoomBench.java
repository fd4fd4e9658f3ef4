package org.limedry.proof.trade;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.climate.Outdoors;
import org.limedry.climate.Schedule;
import org.limedry.climate.Shelter;
import org.limedry.climate.WeatherReading;
import org.limedry.climate.WeatherRecord;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.LimeKind;
import org.limedry.lime.ReadinessRules;
import org.limedry.material.Catalogue;
import org.limedry.reference.MaterialTable;
import org.limedry.reference.WeatherYear;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.units.Units;
import org.limedry.wall.Background;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.StartWater;
import org.limedry.wall.WallPlan;
import org.limedry.wall.Wetness;

/**
 * An invented room of a building that is wet through, in winter: 5 by 4 by 2.4 m, stone with four fifths of its pores full of
 * water and lath, each with one coat of 10 mm, single glass, flags on soil; weather of Mullingar 2017 from 2 November.
 *
 * @param door what is done with the door
 * @param plant what is brought in
 */
record RoomBench(Door door, Kit plant) {
    /** Days of a run: what is not ready by then is told as that many days. */
    static final int DAYS = 180;

    private static final Instant START = Instant.parse("2026-11-02T00:00:00Z");
    private static final Instant END = START.plus(Duration.ofDays(DAYS));
    private static final Instant LAID = START.plus(Duration.ofHours(8));
    private static final Schedule ALWAYS = Schedule.always(START, END);
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final String ROOM = "room";
    private static final String STONE = "stone";
    private static final String LATH = "lath";
    private static final double START_CELSIUS = 8.0;
    private static final double SOIL_CELSIUS = 9.5;
    private static final double COAT_M = 0.010;
    private static final StartWater WET_THROUGH = new StartWater.Saturation(0.80);

    /** What is done with the door. */
    enum Door {
        /** Shut. */
        SHUT,
        /** Open from 8 to 16 h every day. */
        BY_DAY,
        /** A hand's breadth open day and night. */
        AJAR
    }

    /** What is brought in. */
    enum Kit {
        /** Nothing. */
        NOTHING,
        /** An electric heater of 2 kW. */
        ELECTRIC,
        /** A desiccant dehumidifier of 20 litres a day at 20 C/60 %. */
        DESICCANT,
        /** Bottled gas burnt in the room, 2 kW. */
        UNFLUED_GAS
    }

    /**
     * Days until the next coat may go on.
     *
     * @param lath on lath
     * @param stone on stone
     */
    record Days(double lath, double stone) {}

    Days readyDays() {
        Outcome outcome = Simulation.run(scenario());
        return new Days(days(outcome.coats().get(0)), days(outcome.coats().get(1)));
    }

    private static double days(Outcome.CoatResult coat) {
        return coat.ready()
                .map(ready -> Units.daysFromSeconds(
                        (double) Duration.between(LAID, ready).toSeconds()))
                .orElse((double) DAYS);
    }

    private Scenario scenario() {
        return new Scenario(
                "wet through",
                START,
                END,
                weather(),
                Map.of(),
                List.of(room()),
                walls(),
                List.of(coat(LATH), coat(STONE)),
                ReadinessRules.named("green-hard"),
                List.of(),
                Physics.ordinary(),
                Accuracy.quick());
    }

    private static Outdoors weather() {
        WeatherRecord.Checked checked = WeatherRecord.check(WeatherReading.of(WeatherYear.load("mullingar-2017")));
        if (checked instanceof WeatherRecord.Sound sound
                && sound.weather().over(START, END, 0, Shelter.named("sheltered"))
                        instanceof WeatherRecord.Covered covered) {
            return covered.outdoors();
        }
        throw new IllegalStateException("a shipped weather year cannot be used");
    }

    private static CoatPlan coat(String wall) {
        TradeBench mix = new TradeBench(
                Background.TIMBER_LATH, Wetness.DAMP, TradeBench.base(LimeKind.QUICKLIME, 0.0), 10.0, 8.0, 0.9);
        return new CoatPlan(wall, 1, mix.mortar(), COAT_M, START_CELSIUS, 0.0, new Laying.On(LAID));
    }

    private static List<WallPlan> walls() {
        return List.of(
                wall(
                        LATH,
                        WallPlan.Kind.LISTED,
                        12.0,
                        layers(Background.TIMBER_LATH, 0.1, Wetness.DAMP),
                        new Side.Sealed()),
                wall(
                        STONE,
                        WallPlan.Kind.LISTED,
                        28.0,
                        layers(Background.LIME_RUBBLE_STONE, 0.5, WET_THROUGH),
                        new Side.Outdoors()),
                wall(
                        "ceiling",
                        WallPlan.Kind.CEILING,
                        20.0,
                        layers(Background.TIMBER_LATH, 0.1, Wetness.DAMP),
                        new Side.Sealed()),
                wall(
                        "flags",
                        WallPlan.Kind.FLOOR,
                        20.0,
                        layers(Background.GRANITE, 1.0, Wetness.DAMP),
                        new Side.Soil(SOIL_CELSIUS)),
                wall("window", WallPlan.Kind.PANE, 1.2, glass(), new Side.Outdoors()));
    }

    private static WallPlan wall(String name, WallPlan.Kind kind, double areaM2, List<LayerPlan> layers, Side outside) {
        return new WallPlan(name, kind, areaM2, layers, outside, new Side.Room(ROOM), 0.0);
    }

    private static List<LayerPlan> layers(Background background, double thicknessM, StartWater start) {
        return background.layers(CATALOGUE::sheet, thicknessM, start, START_CELSIUS);
    }

    private static List<LayerPlan> glass() {
        return List.of(new LayerPlan("glass", CATALOGUE.material(Catalogue.GLASS), 0.004, START_CELSIUS, 1.0e7));
    }

    private RoomPlan room() {
        return new RoomPlan(ROOM, 48.0, 20.0, 2.4, 2.0e5, 0.5, 0.0, List.of(opening()), kit(), START_CELSIUS, 0.95);
    }

    private Opening opening() {
        return switch (door) {
            case SHUT -> new Opening("door", 0.9, 2.0, 0.0, "", Optional.empty(), Schedule.never());
            case AJAR -> new Opening("door", 0.1, 2.0, 0.0, "", Optional.empty(), ALWAYS);
            case BY_DAY -> {
                List<Schedule.Span> days = new ArrayList<>();
                for (int day = 0; day < DAYS; day++) {
                    Instant midnight = START.plus(Duration.ofDays(day));
                    days.add(
                            new Schedule.Span(midnight.plus(Duration.ofHours(8)), midnight.plus(Duration.ofHours(16))));
                }
                yield new Opening("door", 0.9, 2.0, 0.0, "", Optional.empty(), new Schedule(days));
            }
        };
    }

    private List<Plant> kit() {
        return switch (plant) {
            case NOTHING -> List.of();
            case ELECTRIC -> List.of(heater(Plant.Fuel.ELECTRIC));
            case UNFLUED_GAS -> List.of(heater(Plant.Fuel.UNFLUED_LPG));
            case DESICCANT ->
                List.of(new Plant.Dehumidifier(
                        "desiccant",
                        Plant.Drying.DESICCANT,
                        20.0 / Units.SECONDS_PER_DAY,
                        Plant.Rating.AT_20C_60,
                        600.0,
                        OptionalDouble.empty(),
                        ALWAYS));
        };
    }

    private static Plant heater(Plant.Fuel fuel) {
        return new Plant.Heater("heater", 2000.0, fuel, 0.3, OptionalDouble.empty(), false, ALWAYS);
    }
}
