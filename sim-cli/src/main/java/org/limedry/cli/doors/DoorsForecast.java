package org.limedry.cli.doors;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.readings.WeatherFile;
import org.limedry.cli.site.Site;
import org.limedry.climate.JoinedWeather;
import org.limedry.climate.WeatherRecord;
import org.limedry.simulation.Scenario;

/**
 * The weather of the days: a forecast, or that of the site.
 *
 * @param name the forecast as the user named it; empty without one
 * @param record its hours, if there is one
 * @param site the site
 */
record DoorsForecast(String name, Optional<WeatherRecord> record, Site site) {
    static DoorsForecast read(Optional<Path> file, Site site) {
        if (file.isEmpty()) {
            return new DoorsForecast("", Optional.empty(), site);
        }
        String name = file.get().toString();
        WeatherFile.Result result = WeatherFile.read(file.get(), name, "", site.zone());
        if (result instanceof WeatherFile.Bad bad) {
            throw new BadInputException(bad.problems());
        }
        return new DoorsForecast(
                name, Optional.of(((WeatherFile.Good) result).weather().weather()), site);
    }

    /** Returns the scenario with the forecast in place of its weather, for as long as both last. */
    Scenario in(Scenario scenario) {
        if (record.isEmpty()) {
            return scenario;
        }
        Instant from = later(record.get().start(), scenario.from());
        Instant until =
                record.get().end().isBefore(scenario.until()) ? record.get().end() : scenario.until();
        WeatherRecord.Cover cover = record.get().over(from, until, 0, site.shelter());
        if (!(cover instanceof WeatherRecord.Covered covered)) {
            throw new IllegalStateException("a forecast does not cover its own hours: " + name);
        }
        return scenario.with(new JoinedWeather(scenario.outdoors(), covered.outdoors(), from, until));
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    String words() {
        return record.isPresent() ? "forecast " + name : site.weatherName() + ", no forecast of these days";
    }
}
