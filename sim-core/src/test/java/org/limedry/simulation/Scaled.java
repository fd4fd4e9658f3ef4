package org.limedry.simulation;

import java.util.List;
import java.util.Optional;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.wall.WallPlan;

/** The same site built larger: areas, volumes, widths, powers, ratings and people all by one factor, heights not. */
final class Scaled {
    private Scaled() {}

    static Scenario by(double factor, Scenario site) {
        List<RoomPlan> rooms =
                site.rooms().stream().map(room -> room(factor, room)).toList();
        List<WallPlan> walls =
                site.walls().stream().map(wall -> wall(factor, wall)).toList();
        return Sites.with(site, rooms, walls);
    }

    private static RoomPlan room(double factor, RoomPlan room) {
        return new RoomPlan(
                room.name(),
                factor * room.volumeM3(),
                factor * room.floorAreaM2(),
                room.heightM(),
                factor * room.fittingsJPerK(),
                room.leakagePerHour(),
                room.earthFloorKgPerM2S(),
                room.openings().stream()
                        .map(opening -> opening(factor, opening))
                        .toList(),
                room.plant().stream().map(plant -> plant(factor, plant)).toList(),
                room.startCelsius(),
                room.startRelativeHumidity());
    }

    private static Opening opening(double factor, Opening opening) {
        Optional<String> toRoom = opening.toRoom();
        return new Opening(
                opening.name(),
                factor * opening.widthM(),
                opening.heightM(),
                opening.sillM(),
                opening.facing(),
                toRoom,
                opening.open());
    }

    private static Plant plant(double factor, Plant plant) {
        if (plant instanceof Plant.Heater heater) {
            return new Plant.Heater(
                    heater.name(),
                    factor * heater.watts(),
                    heater.fuel(),
                    heater.radiantShare(),
                    heater.thermostatCelsius(),
                    heater.aimedAtWall(),
                    heater.on());
        }
        if (plant instanceof Plant.Dehumidifier machine) {
            return new Plant.Dehumidifier(
                    machine.name(),
                    machine.drying(),
                    factor * machine.ratedKgPerS(),
                    machine.rating(),
                    factor * machine.watts(),
                    machine.humidistat(),
                    machine.on());
        }
        if (plant instanceof Plant.Fan fan) {
            return new Plant.Fan(fan.name(), factor * fan.flowM3PerS(), fan.on());
        }
        if (plant instanceof Plant.People people) {
            return new Plant.People(people.name(), factor * people.count(), people.on());
        }
        return plant; // mist is per m2
    }

    private static WallPlan wall(double factor, WallPlan wall) {
        return new WallPlan(
                wall.name(),
                wall.kind(),
                factor * wall.areaM2(),
                wall.layers(),
                wall.outside(),
                wall.inside(),
                factor * wall.risingDampKgPerS());
    }
}
