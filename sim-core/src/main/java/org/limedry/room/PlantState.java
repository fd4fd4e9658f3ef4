package org.limedry.room;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.limedry.wall.Constants;

/**
 * What of a room's plant is on at one instant. Made once at each event, then asked many times. Fans are in {@link
 * OpenState}.
 *
 * @param heaters heaters that are on
 * @param dehumidifiers dehumidifiers that are on
 * @param people people in the room
 * @param mistKgPerM2S water being sprayed, by wall, kg/(m2 s)
 */
public record PlantState(
        List<Plant.Heater> heaters,
        List<Plant.Dehumidifier> dehumidifiers,
        PeopleOutput people,
        Map<String, Double> mistKgPerM2S) {
    /**
     * What the plant gives to a room and takes from it, each for itself as the water account needs it.
     *
     * @param heaterW heat of the heaters, to air and radiant node together, W
     * @param airW heat to the air from heaters, dehumidifiers and people, W
     * @param radiantW heat to the radiant node, W
     * @param burntWaterKgPerS vapour from burning, kg/s
     * @param peopleWaterKgPerS vapour from people, kg/s
     * @param caughtKgPerS vapour taken by dehumidifiers, kg/s; positive leaves the air
     * @param carbonDioxideKgPerS carbon dioxide from burning and people, kg/s
     */
    public record Gains(
            double heaterW,
            double airW,
            double radiantW,
            double burntWaterKgPerS,
            double peopleWaterKgPerS,
            double caughtKgPerS,
            double carbonDioxideKgPerS) {}

    public PlantState {
        heaters = List.copyOf(heaters);
        dehumidifiers = List.copyOf(dehumidifiers);
        mistKgPerM2S = Map.copyOf(mistKgPerM2S);
    }

    /** Returns what of the plant of {@code room} is on at {@code instant}. */
    public static PlantState of(RoomPlan room, Instant instant) {
        List<Plant> on =
                room.plant().stream().filter(plant -> plant.on().isOn(instant)).toList();
        return new PlantState(
                all(on, Plant.Heater.class),
                all(on, Plant.Dehumidifier.class),
                PeopleOutput.of(all(on, Plant.People.class).stream()
                        .mapToDouble(Plant.People::count)
                        .sum()),
                all(on, Plant.Misting.class).stream()
                        .collect(Collectors.toMap(Plant.Misting::wall, Plant.Misting::kgPerM2S, Double::sum)));
    }

    /** Tells whether a draught meets plaster. */
    public boolean aimedAtWall() {
        return heaters.stream().anyMatch(Plant.Heater::aimedAtWall);
    }

    /** Returns the water being sprayed on {@code wall}, kg/(m2 s). */
    public double mistOnKgPerM2S(String wall) {
        return mistKgPerM2S.getOrDefault(wall, 0.0);
    }

    /**
     * Returns what the plant does in air of this state.
     *
     * @param constants constants of the run
     * @param pressurePa air pressure, Pa
     * @param roomCelsius room air, °C
     * @param roomVapourKgPerM3 vapour in the room air, kg/m3
     * @return gains of the room
     */
    public Gains gains(Constants constants, double pressurePa, double roomCelsius, double roomVapourKgPerM3) {
        double airW = people.heatW();
        double radiantW = 0.0;
        double heaterW = 0.0;
        double burntKgPerS = 0.0;
        double carbonDioxideKgPerS = people.carbonDioxideKgPerS();
        for (Plant.Heater heater : heaters) {
            HeaterOutput output = HeaterOutput.of(heater, roomCelsius);
            heaterW += output.airW() + output.radiantW();
            airW += output.airW();
            radiantW += output.radiantW();
            burntKgPerS += output.waterKgPerS();
            carbonDioxideKgPerS += output.carbonDioxideKgPerS();
        }
        double caughtKgPerS = 0.0;
        for (Plant.Dehumidifier machine : dehumidifiers) {
            DehumidifierOutput output =
                    DehumidifierOutput.of(machine, constants, pressurePa, roomCelsius, roomVapourKgPerM3);
            airW += output.heatW();
            caughtKgPerS += output.waterKgPerS();
        }
        return new Gains(heaterW, airW, radiantW, burntKgPerS, people.waterKgPerS(), caughtKgPerS, carbonDioxideKgPerS);
    }

    private static <T extends Plant> List<T> all(List<Plant> plant, Class<T> kind) {
        return plant.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
