package org.limedry.cli.delay;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.limedry.cli.chart.DelayChart.Point;
import org.limedry.cli.site.Site;
import org.limedry.climate.Schedule;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.study.delay.RoomDays;
import org.limedry.wall.WallPlan;

/**
 * One side of a job, planned or actual: a run and what it says of the wall in question.
 *
 * @param site the side as a site
 * @param scenario its likely run
 * @param outcome what came of it
 * @param wall the wall, by its name in the scenario
 * @param room the room of that wall
 */
public record JobSide(Site site, Scenario scenario, Outcome outcome, String wall, String room) {
    private static final double MINUTES_PER_HOUR = 60.0;
    /** A line of points every few hours looks the same and is a fraction of the file. */
    private static final int HOURS_APART = 3;

    /** Returns the coats of the wall, the first one first. */
    public List<CoatResult> coats() {
        return coats(outcome, wall);
    }

    static List<CoatResult> coats(Outcome outcome, String wall) {
        return outcome.coats().stream().filter(coat -> coat.wall().equals(wall)).toList();
    }

    /** Returns when the last coat of a wall was ready, if it was. */
    public static Optional<Instant> ready(List<CoatResult> coats, String wall) {
        List<CoatResult> own =
                coats.stream().filter(coat -> coat.wall().equals(wall)).toList();
        return own.get(own.size() - 1).ready();
    }

    Optional<Instant> ready() {
        return ready(outcome.coats(), wall);
    }

    Instant laid() {
        return coats().get(0).laid().orElse(scenario.from());
    }

    /** Returns when the wall was ready, or when the run ended without. */
    Instant end() {
        return ready().orElse(outcome.reached());
    }

    ZoneId zone() {
        return site.zone();
    }

    LocalDate day(Instant at) {
        return at.atZone(zone()).toLocalDate();
    }

    /** Returns the days from the first coat to ready, by the calendar. */
    long daysTaken() {
        return day(end()).toEpochDay() - day(laid()).toEpochDay();
    }

    /** Returns the water in the plaster of the wall, from just before the first coat until a little after ready. */
    List<Point> litres() {
        List<History.CoatHours> coats = outcome.history().coats().stream()
                .filter(coat -> coat.wall().equals(wall))
                .toList();
        List<Instant> times = outcome.history().times();
        List<Point> points = new ArrayList<>();
        double before = 0.0;
        for (int i = 0; i < times.size(); i++) {
            int hour = i;
            double litres = areaM2()
                    * coats.stream()
                            .map(History.CoatHours::waterKgPerM2)
                            .mapToDouble((Series water) -> water.at(hour))
                            .sum();
            boolean jump = litres > before + 1.0;
            if (jump) {
                points.add(new Point(times.get(i), before));
            }
            if (litres > 0.0 && (jump || i % HOURS_APART == 0 || i == times.size() - 1)) {
                points.add(new Point(times.get(i), litres));
            }
            before = litres;
        }
        return points;
    }

    double areaM2() {
        return scenario.walls().stream()
                .filter(some -> some.name().equals(wall))
                .mapToDouble(WallPlan::areaM2)
                .findFirst()
                .orElseThrow();
    }

    /** Returns the water laid in all coats of the room, litres. */
    double laidLitres() {
        return scenario.walls().stream()
                .filter(some -> some.innerRoom().equals(Optional.of(room)))
                .mapToDouble(some -> some.areaM2()
                        * outcome.coats().stream()
                                .filter(coat -> coat.wall().equals(some.name()))
                                .mapToDouble(CoatResult::waterLaidKgPerM2)
                                .sum())
                .sum();
    }

    /** Returns what the room carried off day by day, from the first coat to ready. */
    RoomDays roomDays() {
        return RoomDays.of(outcome, room, zone(), laid(), end());
    }

    RoomPlan roomPlan() {
        return scenario.rooms().stream()
                .filter(some -> some.name().equals(room))
                .findFirst()
                .orElseThrow();
    }

    /** Returns heaters, dehumidifiers and fans of the room. */
    List<Plant> machines() {
        return roomPlan().plant().stream()
                .filter(plant -> !(plant instanceof Plant.People || plant instanceof Plant.Misting))
                .filter(plant -> !plant.on().spans().isEmpty())
                .toList();
    }

    /** Returns when a machine first ran. */
    static Instant firstOn(Plant plant) {
        return plant.on().spans().get(0).from();
    }

    /**
     * Returns the hours a working day for which any door or window of the room to outdoors stood open.
     *
     * @param workingDays the days that count
     * @param from first instant of the days that count
     * @param until the last
     */
    double doorHours(Set<DayOfWeek> workingDays, Instant from, Instant until) {
        List<Schedule.Span> spans = new Schedule(roomPlan().openings().stream()
                        .filter(Opening::leadsOutdoors)
                        .flatMap(opening -> opening.open().spans().stream())
                        .toList())
                .spans();
        List<LocalDate> days = Stream.iterate(day(from), day -> !day.isAfter(day(until)), day -> day.plusDays(1))
                .filter(day -> workingDays.contains(day.getDayOfWeek()))
                .toList();
        double minutes = 0.0;
        for (LocalDate day : days) {
            for (Schedule.Span span : spans) {
                minutes += minutesOn(day, span);
            }
        }
        return days.isEmpty() ? 0.0 : minutes / MINUTES_PER_HOUR / days.size();
    }

    private double minutesOn(LocalDate day, Schedule.Span span) {
        Instant start = day.atStartOfDay(zone()).toInstant();
        Instant end = day.plusDays(1).atStartOfDay(zone()).toInstant();
        Instant from = span.from().isAfter(start) ? span.from() : start;
        Instant until = span.until().isBefore(end) ? span.until() : end;
        return Math.max(0L, Duration.between(from, until).toMinutes());
    }
}
