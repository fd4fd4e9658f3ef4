package org.limedry.cli.doors;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.limedry.cli.ask.Question;
import org.limedry.cli.page.Days;
import org.limedry.cli.site.Site;
import org.limedry.climate.WeatherRecord;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.simulation.Scenario;
import org.limedry.study.doors.DoorWindow;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** The days of a plan: those asked for, or those that suggest themselves. */
final class DoorsDays {
    private static final int MOST_DAYS = 7;

    private final Question asked;
    private final Site site;
    private final DoorsForecast weather;

    DoorsDays(Question asked, Site site, DoorsForecast weather) {
        this.asked = asked;
        this.site = site;
        this.weather = weather;
    }

    /** Refuses days that cannot be before anything is run. */
    void check(DoorsWanted wanted) {
        wanted.days().filter(days -> days < 1 || days > MOST_DAYS).ifPresent(days -> {
            throw asked.refused("--days: must be 1 to " + MOST_DAYS + ", was " + days);
        });
        wanted.from().filter(day -> !isInRun(day)).ifPresent(day -> {
            throw asked.refused("--from: must be a day of the run, " + Days.full(firstOfRun()) + " to "
                    + Days.full(lastOfRun()) + ", was " + Days.full(day));
        });
    }

    DoorWindow window(DoorsWanted wanted, Scenario scenario, String room) {
        LocalDate first = wanted.from().orElseGet(() -> usualFirst(scenario, room));
        int left =
                Math.toIntExact(Duration.between(morning(first), site.until()).toDays()) + 1;
        int days = wanted.days().orElse(Math.min(MOST_DAYS, Math.min(left, covered(first))));
        LocalDate last = first.plusDays(Math.max(1, days) - 1L);
        if (!isInRun(first) || !isInRun(last)) {
            throw asked.refused("--days: must end within the run, on " + Days.full(lastOfRun()) + " at the latest, was "
                    + Days.full(last));
        }
        weather.record().ifPresent(forecast -> checkCover(forecast, first, last));
        return new DoorWindow(site.zone(), first, Math.max(1, days));
    }

    private LocalDate usualFirst(Scenario scenario, String room) {
        Optional<Instant> forecast = weather.record().map(WeatherRecord::start);
        if (forecast.isPresent()) {
            LocalDate day = date(forecast.get());
            LocalDate whole = forecast.get().isAfter(morning(day)) ? day.plusDays(1) : day;
            return whole.isBefore(firstOfRun()) ? firstOfRun() : whole;
        }
        return scenario.coats().stream()
                .filter(coat -> isIn(room, coat, scenario))
                .flatMap(coat -> coat.laying() instanceof Laying.On on
                        ? Optional.of(date(on.instant())).stream()
                        : Optional.<LocalDate>empty().stream())
                .min(LocalDate::compareTo)
                .orElse(firstOfRun());
    }

    private static boolean isIn(String room, CoatPlan coat, Scenario scenario) {
        return scenario.walls().stream()
                .filter(wall -> wall.name().equals(coat.wall()))
                .map(WallPlan::inside)
                .anyMatch(side -> side.equals(new Side.Room(room)));
    }

    private int covered(LocalDate first) {
        if (weather.record().isEmpty()) {
            return MOST_DAYS;
        }
        int days = 0;
        while (days < MOST_DAYS
                && !evening(first.plusDays(days)).isAfter(weather.record().get().end())) {
            days++;
        }
        return days;
    }

    private void checkCover(WeatherRecord forecast, LocalDate first, LocalDate last) {
        if (forecast.start().isAfter(morning(first)) || forecast.end().isBefore(evening(last))) {
            throw asked.refused("--forecast: must cover the days, " + DoorWindow.FIRST_HOUR + ":00 on "
                    + Days.full(first) + " to " + DoorWindow.LAST_HOUR + ":00 on " + Days.full(last) + ", has "
                    + told(forecast.start()) + " to " + told(forecast.end()));
        }
    }

    private String told(Instant instant) {
        ZoneId zone = site.zone();
        return instant.atZone(zone).toLocalTime() + " on " + Days.full(date(instant));
    }

    private Instant morning(LocalDate day) {
        return new DoorWindow(site.zone(), day, 1).from();
    }

    private Instant evening(LocalDate day) {
        return new DoorWindow(site.zone(), day, 1).evening(day);
    }

    private LocalDate date(Instant instant) {
        return instant.atZone(site.zone()).toLocalDate();
    }

    private boolean isInRun(LocalDate day) {
        return !day.isBefore(firstOfRun()) && !day.isAfter(lastOfRun());
    }

    private LocalDate firstOfRun() {
        return date(site.from());
    }

    private LocalDate lastOfRun() {
        return date(site.until().minusNanos(1));
    }
}
