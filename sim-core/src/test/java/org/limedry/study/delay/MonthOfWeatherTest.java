package org.limedry.study.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Shelter;
import org.limedry.climate.WeatherReading;
import org.limedry.climate.WeatherRecord;
import org.limedry.climate.WeatherSeries;

final class MonthOfWeatherTest {
    /** A made-up February: 4 C and 90 %, but -1 C at noon of the 10th and at 23:00 of the 20th. */
    private static WeatherSeries february() {
        Instant start = Instant.parse("2027-01-31T00:00:00Z");
        Instant noon = Instant.parse("2027-02-10T12:00:00Z");
        Instant late = Instant.parse("2027-02-20T23:00:00Z");
        var readings = IntStream.range(0, 31 * 24)
                .mapToObj(hour -> start.plus(Duration.ofHours(hour)))
                .map(at -> new WeatherReading(
                        at,
                        OptionalDouble.of(at.equals(noon) || at.equals(late) ? -1.0 : 4.0),
                        OptionalDouble.of(0.9),
                        OptionalDouble.of(3.0)))
                .toList();
        WeatherRecord record = ((WeatherRecord.Sound) WeatherRecord.check(readings)).weather();
        return ((WeatherRecord.Covered) record.over(start, start.plus(Duration.ofDays(30)), 0, Shelter.EXPOSED))
                .outdoors();
    }

    // EXACT: 672 hours of 4 C but for two of -1 C; two days below 0.
    @Test
    void month_ofHours_hasTheirMeansAndItsFrostDays() {
        MonthOfWeather month = MonthOfWeather.of(february(), YearMonth.of(2027, 2), ZoneOffset.UTC);

        assertEquals((670 * 4.0 - 2.0) / 672.0, month.meanCelsius(), 1e-9); // rounding of the sum
        assertEquals(0.9, month.meanRelativeHumidity(), 1e-9); // rounding of the sum
        assertEquals(2, month.frostDays());
    }

    // PUBLISHED: saturated air at 10 C holds 9.40 g/m3 (reference-data, absolute_humidity_published.csv): a fifth of
    // 9.4 litres is free at 80 %.
    @Test
    void roomInAir_airNotFull_isWhatItCanStillTakeUp() {
        assertEquals(1.88, MonthOfWeather.roomInAirLitres(10.0, 0.8), 0.01); // last figure of the table
        assertEquals(0.0, MonthOfWeather.roomInAirLitres(10.0, 1.0), 1e-12); // difference of equal numbers
    }
}
