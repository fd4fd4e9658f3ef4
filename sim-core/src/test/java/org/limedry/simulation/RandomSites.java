package org.limedry.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.ReadinessRule;
import org.limedry.material.Catalogue;
import org.limedry.material.Material;
import org.limedry.proof.benchmarks.Course;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.reference.MaterialTable;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** Small sites made up at random: every kind of thing that puts water in or takes it out turns up. */
final class RandomSites {
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final List<String> BACKGROUNDS =
            List.of(Catalogue.OLD_BRICK, Catalogue.LIME_RUBBLE, Catalogue.SANDSTONE, Catalogue.GRANITE);
    private static final List<Plant.Fuel> FUELS = List.of(Plant.Fuel.values());
    private static final double KG_PER_DAY = 1.0 / 86_400.0;

    private final SplittableRandom random;
    private final int rooms;
    private final double hours;

    private RandomSites(long seed) {
        random = new SplittableRandom(seed);
        rooms = 1 + random.nextInt(2);
        hours = 24.0 * (1 + random.nextInt(3));
    }

    /** Returns the site of a number, always the same one. */
    static Scenario site(long seed) {
        return new RandomSites(seed).scenario();
    }

    private Scenario scenario() {
        List<RoomPlan> plans = new ArrayList<>();
        List<WallPlan> walls = new ArrayList<>();
        List<CoatPlan> coats = new ArrayList<>();
        for (int room = 0; room < rooms; room++) {
            addWalls(room, walls);
            plans.add(room(room));
        }
        walls.add(wall("garden wall", 5.0, new Side.Outdoors(), new Side.Outdoors(), 0.0));
        for (WallPlan wall : walls) {
            if (wall.kind() == WallPlan.Kind.LISTED) {
                addCoats(wall, coats);
            }
        }
        ReadinessRule rule = new ReadinessRule(
                "two days",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(2.0));
        return new Scenario(
                "random",
                Lab.START,
                Lab.at(hours),
                weather(),
                Map.of(),
                plans,
                walls,
                coats,
                rule,
                List.of(),
                Physics.ordinary(),
                Accuracy.ordinary());
    }

    private Course weather() {
        double mean = between(-2.0, 18.0);
        double swing = between(0.0, 5.0);
        double humidity = between(0.6, 0.98);
        double wind = between(0.5, 6.0);
        return new Course(
                Lab.START,
                hour -> mean - swing * Math.cos(Math.PI * hour / 12.0),
                hour -> humidity
                        * MagnusForm.WMO_WATER.pressurePa(mean - 0.5 * swing * Math.cos(Math.PI * hour / 12.0)),
                hour -> wind * (1.0 + 0.5 * Math.sin(Math.PI * hour / 7.0)));
    }

    private RoomPlan room(int room) {
        List<Opening> openings = new ArrayList<>();
        openings.add(
                new Opening("window", between(0.3, 1.0), between(0.5, 1.5), 0.9, "N", Optional.empty(), sometimes()));
        if (maybe()) {
            openings.add(new Opening("front door", 0.9, 2.0, 0.0, "S", Optional.empty(), sometimes()));
        }
        if (room == 0 && rooms == 2) {
            openings.add(new Opening("inner door", 0.8, 2.0, 0.0, "", Optional.of(name(1)), sometimes()));
        }
        double floorM2 = between(8.0, 30.0);
        return new RoomPlan(
                name(room),
                2.5 * floorM2,
                floorM2,
                2.5,
                between(0.0, 3.0e5),
                between(0.1, 1.5),
                maybe() ? 0.3 * KG_PER_DAY : 0.0,
                openings,
                plant(room),
                between(4.0, 16.0),
                between(0.5, 0.95));
    }

    private List<Plant> plant(int room) {
        List<Plant> plant = new ArrayList<>();
        Plant.Fuel fuel = FUELS.get(random.nextInt(FUELS.size()));
        OptionalDouble setting = maybe() ? OptionalDouble.of(between(10.0, 20.0)) : OptionalDouble.empty();
        plant.add(new Plant.Heater(
                "heater", between(300.0, 3000.0), fuel, between(0.0, 0.6), setting, maybe(), sometimes()));
        plant.add(new Plant.Dehumidifier(
                "dehumidifier",
                maybe() ? Plant.Drying.REFRIGERANT : Plant.Drying.DESICCANT,
                between(5.0, 40.0) * KG_PER_DAY,
                maybe() ? Plant.Rating.AT_30C_80 : Plant.Rating.AT_20C_60,
                between(200.0, 800.0),
                maybe() ? OptionalDouble.of(between(0.4, 0.7)) : OptionalDouble.empty(),
                sometimes()));
        plant.add(new Plant.People("gang", between(0.5, 3.0), sometimes()));
        plant.add(new Plant.Fan("fan", between(0.0, 0.1), sometimes()));
        plant.add(new Plant.Misting("mist", name(room) + " wall", between(1.0e-5, 2.0e-3), shortly()));
        return plant;
    }

    private void addWalls(int room, List<WallPlan> walls) {
        Side inside = new Side.Room(name(room));
        double rising = maybe() ? between(0.5, 3.0) * KG_PER_DAY : 0.0;
        walls.add(wall(name(room) + " wall", between(5.0, 25.0), new Side.Outdoors(), inside, rising));
        Material glass = CATALOGUE.material(Catalogue.GLASS);
        walls.add(new WallPlan(
                name(room) + " pane",
                WallPlan.Kind.PANE,
                between(0.5, 3.0),
                List.of(new LayerPlan("glass", glass, 0.004, 8.0, 1.0e7)),
                new Side.Outdoors(),
                inside,
                0.0));
        walls.add(new WallPlan(
                name(room) + " floor",
                WallPlan.Kind.FLOOR,
                15.0,
                List.of(layer(Catalogue.SANDSTONE, 0.3)),
                new Side.Soil(between(6.0, 11.0)),
                inside,
                0.0));
        if (room == 1) {
            walls.add(wall("partition", between(5.0, 12.0), new Side.Room(name(0)), inside, 0.0));
        }
    }

    private WallPlan wall(String name, double areaM2, Side outside, Side inside, double risingKgPerS) {
        String material = BACKGROUNDS.get(random.nextInt(BACKGROUNDS.size()));
        return new WallPlan(
                name,
                WallPlan.Kind.LISTED,
                areaM2,
                List.of(layer(material, between(0.1, 0.6))),
                outside,
                inside,
                risingKgPerS);
    }

    private LayerPlan layer(String material, double thicknessM) {
        double suctionPa = Math.exp(between(Math.log(2.0e4), Math.log(1.0e8)));
        return new LayerPlan(material, CATALOGUE.material(material), thicknessM, between(4.0, 14.0), suctionPa);
    }

    private void addCoats(WallPlan wall, List<CoatPlan> coats) {
        double hour = between(0.0, 8.0);
        int count = random.nextInt(3);
        for (int number = 1; number <= count; number++) {
            double prewetting = maybe() ? between(0.05, 0.5) : 0.0;
            Laying laying = new Laying.On(Lab.at(hour));
            coats.add(new CoatPlan(
                    wall.name(), number, mortar(), between(0.003, 0.02), between(5.0, 15.0), prewetting, laying));
            hour += between(4.0, 24.0);
        }
    }

    private CoatMortar mortar() {
        Material material = CATALOGUE.material(maybe() ? Catalogue.AIR_LIME_PLASTER : Catalogue.NHL_PLASTER);
        double water = 0.97 * material.retention().freeSaturationKgPerM3();
        // 1.4 mm per root of a day.
        double carbonation = 1.4e-3 / Math.sqrt(86_400.0);
        return new CoatMortar(
                "mortar", material, water, between(0.0, 250.0), between(0.0, 30.0), 30_000.0, false, carbonation);
    }

    private Schedule sometimes() {
        double from = between(0.0, 0.5 * hours);
        return Schedule.always(Lab.at(from), Lab.at(from + between(0.5, 0.5 * hours)));
    }

    private Schedule shortly() {
        double from = between(0.0, hours - 1.0);
        return Schedule.always(Lab.at(from), Lab.at(from + between(0.1, 1.0)));
    }

    private boolean maybe() {
        return random.nextInt(2) == 0;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static String name(int room) {
        return room == 0 ? "hall" : "store";
    }
}
