package org.limedry.study.job;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.lime.CoatPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Warning;
import org.limedry.study.Energy;

/**
 * What a job goes through from its first day to the end of its run.
 *
 * @param frostNights nights, noon to noon, in which either frost line was crossed: air below 0 C over young work, or a wet
 *     face below 0 C under warmer air
 * @param wetHours hours with the dew point of the room air at or above the face, on the plastered wall that has most of them
 * @param suckedBackKg water condensed on faces and drunk by them, whole site, kg
 * @param heaterKwh heat given by heaters, kWh
 * @param hasteDays days on which a young coat lost more than lime can give: misting and screening are needed
 */
public record JobFigures(int frostNights, double wetHours, double suckedBackKg, double heaterKwh, int hasteDays) {
    private static final Set<Warning.Kind> FROST = Set.of(Warning.Kind.FROST_AIR, Warning.Kind.FROST_WET_FACE);
    private static final Duration HALF_A_DAY = Duration.ofHours(12);

    /**
     * Returns the figures of a run.
     *
     * @param scenario what was run
     * @param outcome what was found
     * @param zone clock of the place
     */
    public static JobFigures of(Scenario scenario, Outcome outcome, ZoneId zone) {
        Set<String> plastered = scenario.coats().stream().map(CoatPlan::wall).collect(Collectors.toSet());
        double wetHours = outcome.faces().stream()
                .filter(face -> plastered.contains(face.wall()))
                .mapToDouble(Outcome.FaceResult::dewHours)
                .max()
                .orElse(0.0);
        return new JobFigures(
                days(outcome, FROST, zone, HALF_A_DAY),
                wetHours,
                outcome.account().suckedBackKg(),
                Energy.heatKWh(outcome),
                days(outcome, Set.of(Warning.Kind.TOO_FAST), zone, Duration.ZERO));
    }

    /** Counts the days on the calendar that any spell of these kinds touches; a day begins {@code late} after midnight. */
    private static int days(Outcome outcome, Set<Warning.Kind> kinds, ZoneId zone, Duration late) {
        Set<LocalDate> days = new HashSet<>();
        for (Warning warning : outcome.warnings()) {
            if (kinds.contains(warning.kind())) {
                LocalDate last = day(warning.until().minusNanos(1), zone, late);
                for (LocalDate day = day(warning.from(), zone, late); !day.isAfter(last); day = day.plusDays(1)) {
                    days.add(day);
                }
            }
        }
        return days.size();
    }

    private static LocalDate day(Instant instant, ZoneId zone, Duration late) {
        return instant.atZone(zone).toLocalDateTime().minus(late).toLocalDate();
    }
}
