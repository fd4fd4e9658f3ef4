package org.limedry.reference;

import java.util.List;

/**
 * A weather station.
 *
 * @param name name as the weather service writes it
 * @param heightM height above sea level, m
 * @param latitudeDeg latitude, degrees north
 * @param longitudeDeg longitude, degrees east
 */
public record Station(String name, double heightM, double latitudeDeg, double longitudeDeg) {
    /** Reads all stations of {@code weather/stations}. */
    public static List<Station> loadAll() {
        return ReferenceTable.load("weather/stations").rows().stream()
                .map(row -> new Station(
                        row.text("station"),
                        row.number("height_m"),
                        row.number("latitude_deg"),
                        row.number("longitude_deg")))
                .toList();
    }

    /**
     * Reads one station.
     *
     * @throws IllegalArgumentException if there is no station of that name
     */
    public static Station load(String name) {
        return loadAll().stream()
                .filter(station -> station.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("name: must be a station of weather/stations, was " + name));
    }
}
