package org.limedry.study.delay;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import org.limedry.air.MoistAir;
import org.limedry.air.StandardAtmosphere;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Water that a room carried off day by day, by air to outdoors and by dehumidifiers, litres; negative on a day on which
 * the air brought in more than went out.
 *
 * <p>{@code litres = sum over hours of (fresh air * (c_room - c_outdoors) + caught) * 3600 s}, c the vapour in a cubic
 * metre. <b>Source:</b> mass balance. <b>Valid:</b> rooms of one run. <b>Accuracy:</b> hourly values stand for their
 * hours: a few percent of the account of the run. Does not hold water that goes to other rooms.
 *
 * @param litres by day of the local calendar
 */
public record RoomDays(Map<LocalDate, Double> litres) {
    public RoomDays {
        litres = new TreeMap<>(litres);
    }

    /**
     * Returns the days of one room between two instants.
     *
     * @param outcome what a run found
     * @param room a room of it
     * @param zone clock of the site
     * @param from first instant that counts
     * @param until first instant that no longer counts
     */
    public static RoomDays of(Outcome outcome, String room, ZoneId zone, Instant from, Instant until) {
        History history = outcome.history();
        History.RoomHours hours = history.rooms().stream()
                .filter(some -> some.room().equals(room))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("room: must be a room of the run, was " + room));
        Map<LocalDate, Double> litres = new TreeMap<>();
        for (int i = 0; i < history.times().size(); i++) {
            Instant at = history.times().get(i);
            if (!at.isBefore(from) && at.isBefore(until)) {
                litres.merge(at.atZone(zone).toLocalDate(), hourKg(history, hours, i), Double::sum);
            }
        }
        return new RoomDays(litres);
    }

    private static double hourKg(History history, History.RoomHours hours, int i) {
        double inside =
                vapourKgPerM3(hours.airCelsius().at(i), hours.relativeHumidity().at(i));
        double outside = vapourKgPerM3(
                history.outdoorCelsius().at(i),
                history.outdoorRelativeHumidity().at(i));
        double kgPerS = hours.freshAirM3PerS().at(i) * (inside - outside)
                + hours.dehumidifierKgPerS().at(i);
        return kgPerS * Units.SECONDS_PER_HOUR;
    }

    private static double vapourKgPerM3(double celsius, double relativeHumidity) {
        double within = Math.max(0.0, Math.min(1.0, relativeHumidity));
        return MoistAir.of(celsius, within, StandardAtmosphere.pressurePa(0.0)).absoluteHumidityKgPerM3();
    }

    /** Returns how many days there are. */
    public int count() {
        return litres.size();
    }

    /** Returns the drying days: those on which the room carried off at least the target. */
    public int drying(double targetLitres) {
        Check.finite(targetLitres, "targetLitres", "litres");
        return (int) litres.values().stream().filter(day -> day >= targetLitres).count();
    }

    /** Returns what was carried off in all, litres. */
    public double totalLitres() {
        return litres.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
