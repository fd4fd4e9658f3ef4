package org.limedry.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.material.Catalogue;
import org.limedry.proof.benchmarks.Course;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.proof.benchmarks.SheetMaterials;
import org.limedry.reference.MaterialTable;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/**
 * A room made up at random in which nothing warms, cools, sets or carbonates: one coat on brick, bare stone, a pane. The
 * walls end in a sealed middle, outdoor air is drier than the room from the start, and no evaporation takes heat.
 */
final class IsothermalRoom {
    static final double HOURS = 48.0;
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final Schedule ALWAYS = Schedule.always(Lab.START, Lab.at(HOURS));

    private final double celsius;
    private final double outdoorHumidity;
    private final double roomHumidity;
    private final double brickSuctionPa;
    private final double coatThicknessM;
    private final double coatM2;
    private final double volumeM3;
    private final Plant.Drying drying;
    private final OptionalDouble humidistat;

    private IsothermalRoom(SplittableRandom random) {
        celsius = random.nextDouble(2.0, 22.0);
        outdoorHumidity = random.nextDouble(0.3, 0.8);
        roomHumidity = random.nextDouble(outdoorHumidity, 1.0);
        double wettest = Lab.suctionPa(0.999, celsius);
        double driest = Lab.suctionPa(Math.max(outdoorHumidity, 0.5), celsius);
        brickSuctionPa = Math.exp(random.nextDouble(Math.log(wettest), Math.log(driest)));
        coatThicknessM = random.nextDouble(0.004, 0.015);
        coatM2 = random.nextDouble(5.0, 25.0);
        volumeM3 = random.nextDouble(15.0, 60.0);
        drying = random.nextBoolean() ? Plant.Drying.DESICCANT : Plant.Drying.REFRIGERANT;
        humidistat = random.nextBoolean() ? OptionalDouble.of(random.nextDouble(0.3, 0.6)) : OptionalDouble.empty();
    }

    static IsothermalRoom of(long seed) {
        return new IsothermalRoom(new SplittableRandom(seed));
    }

    double celsius() {
        return celsius;
    }

    /** Runs the room with a door that stands open so wide. */
    Outcome aired(double doorWidthM) {
        Opening door = new Opening("door", doorWidthM, 2.0, 0.0, "N", Optional.empty(), ALWAYS);
        return run(room(0.3, List.of(door), List.of()));
    }

    /** Runs the room shut tight, with a machine of such a rating. */
    Outcome dehumidified(double ratedKgPerDay) {
        Plant machine = new Plant.Dehumidifier(
                "machine", drying, ratedKgPerDay / 86_400.0, Plant.Rating.AT_20C_60, 0.0, humidistat, ALWAYS);
        return run(room(0.0, List.of(), List.of(machine)));
    }

    private RoomPlan room(double leakagePerHour, List<Opening> openings, List<Plant> plant) {
        return new RoomPlan(
                "room", volumeM3, 14.0, 2.5, 0.0, leakagePerHour, 0.0, openings, plant, celsius, roomHumidity);
    }

    private Outcome run(RoomPlan room) {
        Lab lab = new Lab()
                .accuracy(1.0e-3, 0.5)
                .constants(Lab.isothermal())
                .outdoors(Course.steady(Lab.START, celsius, outdoorHumidity * MagnusForm.ISO_WATER.pressurePa(celsius)))
                .room(room)
                .wall(wall("brick", Catalogue.OLD_BRICK, coatM2, 0.1))
                .wall(wall("stone", Catalogue.SANDSTONE, 12.0, 0.1))
                .wall(wall("pane", Catalogue.GLASS, 1.5, 0.004))
                .coat(
                        "brick",
                        SheetMaterials.inertMortar(CATALOGUE.material(Catalogue.AIR_LIME_PLASTER), 0.97),
                        coatThicknessM,
                        celsius,
                        0.0);
        return Simulation.run(lab.scenario(HOURS));
    }

    private WallPlan wall(String name, String material, double areaM2, double thicknessM) {
        LayerPlan layer = new LayerPlan(name, CATALOGUE.material(material), thicknessM, celsius, brickSuctionPa);
        return new WallPlan(
                name, WallPlan.Kind.LISTED, areaM2, List.of(layer), new Side.Sealed(), new Side.Room("room"), 0.0);
    }

    /** Returns the water in the coat hour by hour, kg/m2. */
    static List<Double> coatWater(Outcome outcome) {
        Series hours = outcome.history().coats().get(0).waterKgPerM2();
        List<Double> water = new ArrayList<>();
        for (int hour = 0; hour < hours.size(); hour++) {
            water.add(hours.at(hour));
        }
        return water;
    }
}
