package org.limedry.study;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.limedry.climate.Schedule;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.units.Units;

/**
 * What plant used over a run.
 *
 * @param electricKWh electricity of heaters, and of dehumidifiers for every hour in which they are on, kWh
 * @param fuelKWh heat from fuel, kWh
 */
public record Energy(double electricKWh, double fuelKWh) {
    private static final double JOULES_PER_KWH = 3.6e6;
    private static final Set<Plant.Fuel> BURNT = EnumSet.complementOf(EnumSet.of(Plant.Fuel.ELECTRIC));

    /** Counts what was used up to the end of a run; where a room has heaters of both kinds its heat is shared by their power. */
    public static Energy of(Scenario scenario, Outcome outcome) {
        double electricJ = 0.0;
        double fuelJ = 0.0;
        for (int i = 0; i < scenario.rooms().size(); i++) {
            RoomPlan room = scenario.rooms().get(i);
            double heatJ = heatJ(outcome.history().rooms().get(i));
            double burnt = burntShare(room);
            electricJ += heatJ * (1.0 - burnt) + machinesJ(room, outcome.reached());
            fuelJ += heatJ * burnt;
        }
        return new Energy(electricJ / JOULES_PER_KWH, fuelJ / JOULES_PER_KWH);
    }

    /** Returns the heat that all heaters gave up to the end of a run, kWh. */
    public static double heatKWh(Outcome outcome) {
        return outcome.history().rooms().stream().mapToDouble(Energy::heatJ).sum() / JOULES_PER_KWH;
    }

    /** Returns what this is more than another. */
    public Energy minus(Energy other) {
        return new Energy(electricKWh - other.electricKWh, fuelKWh - other.fuelKWh);
    }

    private static double heatJ(History.RoomHours room) {
        double sum = 0.0;
        for (int hour = 0; hour < room.heaterWatts().size() - 1; hour++) {
            double mean =
                    0.5 * (room.heaterWatts().at(hour) + room.heaterWatts().at(hour + 1));
            sum += mean * Units.SECONDS_PER_HOUR;
        }
        return sum;
    }

    private static double burntShare(RoomPlan room) {
        List<Plant.Heater> heaters = room.plant().stream()
                .filter(Plant.Heater.class::isInstance)
                .map(Plant.Heater.class::cast)
                .toList();
        double all = heaters.stream().mapToDouble(Plant.Heater::watts).sum();
        double burnt = heaters.stream()
                .filter(heater -> BURNT.contains(heater.fuel()))
                .mapToDouble(Plant.Heater::watts)
                .sum();
        return all > 0.0 ? burnt / all : 0.0;
    }

    private static double machinesJ(RoomPlan room, Instant until) {
        return room.plant().stream()
                .filter(Plant.Dehumidifier.class::isInstance)
                .map(Plant.Dehumidifier.class::cast)
                .mapToDouble(machine -> machine.watts() * secondsOn(machine.on(), until))
                .sum();
    }

    private static double secondsOn(Schedule on, Instant until) {
        double sum = 0.0;
        for (Schedule.Span span : on.spans()) {
            Instant end = span.until().isBefore(until) ? span.until() : until;
            sum += Math.max(0.0, Duration.between(span.from(), end).toMillis() / 1000.0);
        }
        return sum;
    }
}
