package org.limedry.reference;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A year of hourly observations at one station, as the weather service gave them.
 *
 * <p>Nothing is filled in or put right: hours may be missing between two rows, values may be missing in a row, and a
 * misreading of the station is still there. Pressure is reduced to mean sea level. One year is not a normal.
 */
public final class WeatherYear {
    private static final List<String> NAMES = List.of("mullingar-2017", "valentia-2017", "jfk-2013");

    private final String name;
    private final HourlyFile file;

    private WeatherYear(String name, HourlyFile file) {
        this.name = name;
        this.file = file;
    }

    /** Names of the years that are there. */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * Reads a year.
     *
     * @param name one of {@link #names()}
     * @throws IllegalArgumentException if there is no such year
     */
    public static WeatherYear load(String name) {
        if (!NAMES.contains(name)) {
            throw new IllegalArgumentException("name: must be one of " + NAMES + ", was " + name);
        }
        return new WeatherYear(name, HourlyFile.load("weather/" + name));
    }

    /** Name, such as "mullingar-2017". */
    public String name() {
        return name;
    }

    /** Reads where it was observed. */
    public Station station() {
        return Station.load(file.provenance().one("station"));
    }

    /** Where the figures come from. */
    public Provenance provenance() {
        return file.provenance();
    }

    /** The statements that must stand wherever these figures, or results drawn from them, are shown. */
    public List<String> attribution() {
        return file.provenance().licence();
    }

    /** Number of rows; rows are numbered from 0. */
    public int size() {
        return file.size();
    }

    /** Hour of a row. Rows are in order of time. */
    public Instant time(int row) {
        return Instant.ofEpochSecond(file.epochSecond(row));
    }

    /** Air temperature, °C. */
    public double celsius(int row) {
        return file.required("t_C", row);
    }

    /** Relative humidity over water, percent. */
    public double rhPercent(int row) {
        return file.required("rh_pct", row);
    }

    /** Dew point, °C. */
    public OptionalDouble dewPointCelsius(int row) {
        return file.optional("dewpoint_C", row);
    }

    /** Wind speed, m/s. */
    public OptionalDouble windMPerS(int row) {
        return file.optional("wind_m_s", row);
    }

    /** Direction from which the wind comes, degrees from north. */
    public OptionalDouble windDirectionDeg(int row) {
        return file.optional("wind_dir_deg", row);
    }

    /** Rain in the hour, mm. */
    public OptionalDouble rainMm(int row) {
        return file.optional("rain_mm", row);
    }

    /** Pressure reduced to mean sea level, hPa. */
    public OptionalDouble meanSeaLevelPressureHPa(int row) {
        return file.optional("msl_hPa", row);
    }
}
