package org.limedry.cli.site;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.cli.readings.WeatherFile;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Place;
import org.limedry.climate.Shelter;
import org.limedry.climate.WeatherQuality;
import org.limedry.climate.WeatherReading;
import org.limedry.climate.WeatherRecord;
import org.limedry.reference.WeatherYear;
import org.limedry.units.Units;

/**
 * The weather behind a site.
 *
 * @param name as the file says it
 * @param record its hours
 * @param quality what was found in it
 * @param attribution what must stand wherever results drawn from it are shown
 * @param zone clock of the place
 * @param altitudeM height of the place above the sea, m
 */
record SiteWeather(
        String name,
        WeatherRecord record,
        WeatherQuality quality,
        List<String> attribution,
        ZoneId zone,
        double altitudeM) {
    private static final Map<String, ZoneId> STATION_ZONES = Map.of(
            "mullingar-2017", ZoneId.of("Europe/Dublin"),
            "valentia-2017", ZoneId.of("Europe/Dublin"),
            "jfk-2013", ZoneId.of("America/New_York"));

    /**
     * Returns the clock of a place: as given, or that of the shipped station; reports a problem where there is neither.
     */
    static Optional<ZoneId> zone(Entry place) {
        if (place.isGiven(SiteKeys.TIME_ZONE)) {
            return place.given(SiteKeys.TIME_ZONE);
        }
        Optional<String> weather = place.given(SiteKeys.WEATHER);
        Optional<ZoneId> station = weather.map(STATION_ZONES::get);
        if (weather.isPresent() && station.isEmpty()) {
            place.at(SiteKeys.TIME_ZONE)
                    .problem("missing", "must be the time zone of the place, since the weather is a file of your own");
        }
        return station;
    }

    /** Loads the weather of a place, or reports what is wrong with it. */
    static Optional<SiteWeather> load(Entry place, Path folder) {
        Optional<ZoneId> zone = zone(place);
        Optional<String> weather = place.given(SiteKeys.WEATHER);
        if (weather.isEmpty()) {
            return Optional.empty();
        }
        ZoneId clock = zone.orElse(ZoneOffset.UTC);
        return load(weather.get(), place, place.at(SiteKeys.WEATHER), clock, folder);
    }

    private static Optional<SiteWeather> load(String name, Entry place, Place at, ZoneId clock, Path folder) {
        return STATION_ZONES.containsKey(name)
                ? Optional.of(shipped(name, place, clock))
                : ownFile(name, place, at, folder, clock);
    }

    /** Loads other weather for the same place, or reports at {@code at} what is wrong with it. */
    Optional<SiteWeather> other(String otherName, Entry place, Place at, Path folder) {
        return load(otherName, place, at, zone, folder)
                .map(other ->
                        new SiteWeather(otherName, other.record, other.quality, other.attribution, zone, altitudeM));
    }

    private static SiteWeather shipped(String name, Entry place, ZoneId zone) {
        WeatherYear year = WeatherYear.load(name);
        List<WeatherReading> readings = new ArrayList<>();
        for (int row = 0; row < year.size(); row++) {
            readings.add(new WeatherReading(
                    year.time(row),
                    OptionalDouble.of(year.celsius(row)),
                    OptionalDouble.of(Units.fractionFromPercent(year.rhPercent(row))),
                    year.windMPerS(row)));
        }
        if (!(WeatherRecord.check(readings) instanceof WeatherRecord.Sound sound)) {
            throw new IllegalStateException("a shipped weather year cannot be used: " + name);
        }
        double altitudeM =
                place.given(SiteKeys.ALTITUDE_M).orElse(year.station().heightM());
        return new SiteWeather(name, sound.weather(), sound.quality(), year.attribution(), zone, altitudeM);
    }

    private static Optional<SiteWeather> ownFile(String name, Entry place, Place at, Path folder, ZoneId zone) {
        Optional<Path> file = NamedFile.in(folder, name, at);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        WeatherFile.Result result = WeatherFile.read(file.get(), name, at.path(), zone);
        if (result instanceof WeatherFile.Bad bad) {
            bad.problems().forEach(at.problems()::add);
            return Optional.empty();
        }
        WeatherRecord.Sound sound = ((WeatherFile.Good) result).weather();
        double altitudeM = place.given(SiteKeys.ALTITUDE_M).orElse(0.0);
        return Optional.of(new SiteWeather(name, sound.weather(), sound.quality(), List.of(), zone, altitudeM));
    }

    /**
     * Returns the weather over a run.
     *
     * @param place keys of the place, without problems
     * @param shiftDays days by which it is taken later
     */
    WeatherRecord.Cover over(Entry place, RunDays days, int shiftDays) {
        return record.over(days.from(), days.until(), shiftDays, place.get(SiteKeys.SHELTER));
    }

    /** Fewer years than these say nothing of a spread. */
    static final int LEAST_OWN_YEARS = 3;

    /** Returns the shifts that put the run on each year of the record's own hours. */
    List<Integer> yearShiftsDays(RunDays days, int movedDays) {
        Duration moved = Duration.ofDays(movedDays);
        return record.yearShiftsDays(days.from().plus(moved), days.until().plus(moved));
    }

    /**
     * Returns weather that might have been.
     *
     * @param place keys of the place, without problems
     * @param movedDays days by which the run is in another season
     * @param quantile which of them; in [0, 1]
     */
    WeatherRecord.Cover other(Entry place, RunDays days, int movedDays, double quantile) {
        List<Integer> years = yearShiftsDays(days, movedDays);
        Shelter shelter = place.get(SiteKeys.SHELTER);
        if (years.size() >= LEAST_OWN_YEARS) {
            int year = Math.min(years.size() - 1, (int) (quantile * years.size()));
            return record.over(days.from(), days.until(), movedDays + years.get(year), shelter);
        }
        return record.resampled(days.from(), days.until(), movedDays, Double.doubleToLongBits(quantile), shelter);
    }

    /**
     * Tells whether the run may be shifted by any number of days up to the most: no hole lies anywhere around it.
     *
     * @param movedDays days by which it is in another season to begin with
     */
    boolean reachesAround(Entry place, RunDays days, int movedDays) {
        Duration most = Duration.ofDays(WeatherRecord.MOST_SHIFT_DAYS);
        WeatherRecord.Cover around =
                record.over(days.from().minus(most), days.until().plus(most), movedDays, place.get(SiteKeys.SHELTER));
        return around instanceof WeatherRecord.Covered;
    }

    /** Tells whether it is the weather of these days and not that of another year. */
    boolean isOf(Instant from, Instant until) {
        return !record.start().isAfter(from) && !record.end().isBefore(until);
    }

    /** Reports hours of the run for which there is no weather. */
    void checkReach(Entry place, RunDays days) {
        if (over(place, days, 0) instanceof WeatherRecord.Uncovered uncovered) {
            uncovered.problems().forEach(hole -> place.at(SiteKeys.WEATHER).problem(name, hole));
        }
    }
}
