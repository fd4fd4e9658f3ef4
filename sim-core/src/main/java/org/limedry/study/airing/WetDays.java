package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import org.limedry.air.SaturationCurve;
import org.limedry.climate.Schedule;
import org.limedry.simulation.History;

/**
 * Days on which opening the doors waters the walls: over the hours for which they would stand open, the air outside has on
 * the mean its dew point at or above the coldest plastered face.
 *
 * @param history the run
 * @param walls the plastered walls
 * @param saturation saturation vapour pressure of the run
 */
record WetDays(History history, Set<String> walls, SaturationCurve saturation) {
    private static final Duration JUST_BEFORE = Duration.ofSeconds(1);

    /** Returns the wet ones of the days on which the doors stood open. */
    Set<LocalDate> in(HourSpan wait, Schedule open, ZoneId zone) {
        IntToDoubleFunction excessPa = hour -> outdoorPa(hour) - saturation.pressurePa(coldestCelsius(hour));
        Map<LocalDate, Double> meanPa = wait.all()
                .boxed()
                .filter(hour -> open.isOn(during(hour)))
                .collect(Collectors.groupingBy(
                        hour -> during(hour).atZone(zone).toLocalDate(),
                        TreeMap::new,
                        Collectors.averagingDouble(excessPa::applyAsDouble)));
        return meanPa.entrySet().stream()
                .filter(day -> day.getValue() >= 0.0)
                .map(Map.Entry::getKey)
                .collect(Collectors.toUnmodifiableSet());
    }

    private Instant during(int hour) {
        return history.times().get(hour).minus(JUST_BEFORE);
    }

    private double outdoorPa(int hour) {
        return history.outdoorRelativeHumidity().at(hour)
                * saturation.pressurePa(history.outdoorCelsius().at(hour));
    }

    private double coldestCelsius(int hour) {
        return history.faces().stream()
                .filter(face -> walls.contains(face.wall()))
                .mapToDouble(face -> face.celsius().at(hour))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
