package org.limedry.study.airing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.limedry.climate.Schedule;
import org.limedry.lime.Carbonation;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.units.Units;

/**
 * Reads what a level came to out of its runs.
 *
 * @param room the room
 * @param firstLaid when its first coat is laid
 * @param little a draw with little air through doors and cracks
 * @param much a draw with much air
 */
public record AiringReader(AiredRoom room, Instant firstLaid, Draw little, Draw much) {
    private static final double WATTS_PER_KILOWATT = 1000.0;

    /**
     * Reads a level.
     *
     * @param level what was tried
     * @param way the scenario of a draw that was run
     * @param result its runs
     */
    public AiringFinding read(AiringLevel level, Function<Draw, Scenario> way, EnsembleResult result) {
        Scenario scenario = way.apply(Draw.likely());
        Outcome outcome = result.likely();
        Set<String> walls = room.plasteredWalls(scenario);
        History history = outcome.history();
        History.RoomHours hours = hours(history);
        HourSpan wait = waiting(outcome, walls);
        FreshAir.Ways ways = new FreshAir.Ways(
                AirWays.of(room, way.apply(little)), AirWays.of(room, scenario), AirWays.of(room, way.apply(much)));
        return new AiringFinding(
                level,
                RoomWait.of(result, walls, firstLaid),
                FreshAir.over(history, hours.freshAirM3PerS(), wait, ways),
                hardening(scenario, outcome, walls, wait),
                watch(outcome, walls),
                wallCelsius(history, walls, wait),
                water(outcome),
                wait.sum(hour -> hours.heaterWatts().at(hour)) / WATTS_PER_KILOWATT);
    }

    /**
     * Returns the days of the wait on which opening the doors watered the walls: the air outside had, on the mean over the
     * hours in which they stood open, its dew point at or above the coldest plastered face.
     */
    public Set<LocalDate> wetDays(AiringLevel level, Function<Draw, Scenario> way, EnsembleResult result) {
        Scenario scenario = way.apply(Draw.likely());
        Set<String> walls = room.plasteredWalls(scenario);
        Schedule open = level.airing().openings(room.zone(), scenario.from(), scenario.until(), level.shutDays());
        return new WetDays(
                        result.likely().history(),
                        walls,
                        scenario.physics().constants().saturation())
                .in(waiting(result.likely(), walls), open, room.zone());
    }

    private HourSpan waiting(Outcome outcome, Set<String> walls) {
        return HourSpan.of(
                outcome.history(),
                firstLaid,
                RoomWait.ready(outcome.coats(), walls).orElse(outcome.reached()));
    }

    private AiringFinding.Watch watch(Outcome outcome, Set<String> walls) {
        return new AiringFinding.Watch(
                outcome.warnings().stream()
                        .anyMatch(one -> one.kind() == Warning.Kind.TOO_FAST && walls.contains(one.subject())),
                outcome.warnings().stream()
                        .anyMatch(one -> one.kind() == Warning.Kind.DRY_BUT_SOFT
                                && one.subject().equals(room.name())));
    }

    private History.RoomHours hours(History history) {
        return history.rooms().stream()
                .filter(one -> one.room().equals(room.name()))
                .findFirst()
                .orElseThrow();
    }

    private Hardening hardening(Scenario scenario, Outcome outcome, Set<String> walls, HourSpan wait) {
        History.RoomHours hours = hours(outcome.history());
        double takenKg = Hardening.takenKg(scenario, outcome, walls);
        double seconds = Math.max(1, wait.hours()) * Units.SECONDS_PER_HOUR;
        double needM3PerS = Hardening.neededM3PerS(
                takenKg / seconds,
                scenario.physics().outdoorCarbonDioxidePpm(),
                Carbonation.STARVED_PPM,
                wait.mean(outcome.history().outdoorCelsius()::at),
                scenario.physics().air().pressurePa());
        double lowestPpm = wait.all()
                .mapToDouble(hours.carbonDioxidePpm()::at)
                .min()
                .orElse(scenario.physics().outdoorCarbonDioxidePpm());
        return new Hardening(takenKg, needM3PerS, lowestPpm, wait.mean(hours.carbonDioxidePpm()::at));
    }

    private static double wallCelsius(History history, Set<String> walls, HourSpan wait) {
        List<History.FaceHours> faces = history.faces().stream()
                .filter(face -> walls.contains(face.wall()))
                .toList();
        return faces.stream()
                .mapToDouble(face -> wait.mean(face.celsius()::at))
                .average()
                .orElse(0.0);
    }

    private AiringFinding.Water water(Outcome outcome) {
        WaterAccount account = outcome.roomAccounts().stream()
                .filter(one -> one.room().equals(room.name()))
                .findFirst()
                .orElseThrow()
                .account();
        return new AiringFinding.Water(account.outByAirKg(), account.condensedKg(), account.dehumidifierKg());
    }
}
