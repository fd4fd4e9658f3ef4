package org.limedry.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.limedry.reference.WeatherYear;

/** Invented weather rows for tests. */
final class WeatherRows {
    static final Instant START = Instant.parse("2021-03-04T05:00:00Z");

    private WeatherRows() {}

    static WeatherReading row(Instant time, double celsius, double relativeHumidity, double windMPerS) {
        return new WeatherReading(
                time, OptionalDouble.of(celsius), OptionalDouble.of(relativeHumidity), OptionalDouble.of(windMPerS));
    }

    /** Returns hours that differ from one another, without gaps. */
    static List<WeatherReading> hours(int count) {
        List<WeatherReading> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rows.add(row(hour(i), 4.0 + 0.5 * (i % 7), 0.70 + 0.02 * (i % 5), 2.0 + i % 3));
        }
        return rows;
    }

    static Instant hour(int index) {
        return START.plus(Duration.ofHours(index));
    }

    static WeatherRecord.Sound sound(List<WeatherReading> rows) {
        return (WeatherRecord.Sound) WeatherRecord.check(rows);
    }

    static WeatherRecord.Refused refused(List<WeatherReading> rows) {
        return (WeatherRecord.Refused) WeatherRecord.check(rows);
    }

    static WeatherRecord.Sound sound(String year) {
        return sound(WeatherReading.of(WeatherYear.load(year)));
    }

    static WeatherSeries series(WeatherRecord record, Instant from, Instant until) {
        return series(record, from, until, 0);
    }

    static WeatherSeries series(WeatherRecord record, Instant from, Instant until, int shiftDays) {
        return ((WeatherRecord.Covered) record.over(from, until, shiftDays, Shelter.EXPOSED)).outdoors();
    }
}
