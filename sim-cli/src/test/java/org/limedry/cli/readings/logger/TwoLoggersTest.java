package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.readings.WeatherFile;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.SensorError;

final class TwoLoggersTest {
    private static final Instant START = Instant.parse("2026-11-08T18:00:00Z");
    private static final Duration TOLERANCE = Duration.ofMinutes(2);

    private static Readings series(int count, int lateS, IntToDoubleFunction celsius, IntToDoubleFunction humidity) {
        return new Readings(IntStream.range(0, count)
                .mapToObj(i -> new LoggedReading(
                        START.plus(Duration.ofMinutes(10L * i)).plusSeconds(lateS),
                        OptionalDouble.of(celsius.applyAsDouble(i)),
                        OptionalDouble.of(humidity.applyAsDouble(i)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
                .toList());
    }

    // EXACT: offsets put in come out, and nothing is left.
    @Test
    void sideBySide_offsetsWithoutNoise_areFoundExactly() {
        Readings first = series(80, 0, i -> 9 + Math.sin(i / 30.0), i -> 0.78 + 0.03 * Math.cos(i / 40.0));
        Readings second = series(80, 45, i -> 9.42 + Math.sin(i / 30.0), i -> 0.755 + 0.03 * Math.cos(i / 40.0));

        SideBySide both = SideBySide.of(first, second, TOLERANCE).orElseThrow();

        assertEquals(80, both.pairs());
        assertEquals(0.42, both.temperatureK().median(), 1e-12); // rounding of differences
        assertEquals(-0.025, both.relativeHumidity().median(), 1e-12); // rounding of differences
        assertEquals(0.0, both.sensorError().temperatureK(), 1e-12); // rounding of differences
        assertEquals(0.0, both.sensorError().relativeHumidity(), 1e-12); // rounding of differences
    }

    // EXACT: noise of known spread on each, read to a tenth: the spread found is that and the rounding's, sqrt(s2 +
    // q2/12);
    // five wild readings of 600 move nothing.
    @Test
    void sideBySide_noiseAndWildReadings_giveTheErrorOfOneSensor() {
        Random random = new Random(20261108);
        Readings first =
                series(600, 0, i -> tenth(9 + 0.2 * random.nextGaussian()), i -> 0.8 + 0.015 * random.nextGaussian());
        Readings second = series(
                600,
                0,
                i -> i % 120 == 7 ? 55.0 : tenth(9.3 + 0.2 * random.nextGaussian()),
                i -> 0.82 + 0.015 * random.nextGaussian());

        SideBySide both = SideBySide.of(first, second, TOLERANCE).orElseThrow();

        // Four standard errors: 0.283 sqrt(pi/2/600) for the median, 1/sqrt(2 x 600) of the spread with the cut's loss.
        assertEquals(0.3, both.temperatureK().median(), 0.06);
        assertEquals(0.02, both.relativeHumidity().median(), 0.0045);
        assertEquals(Math.sqrt(0.04 + 0.01 / 12), both.sensorError().temperatureK(), 0.03);
        assertEquals(0.015, both.sensorError().relativeHumidity(), 0.0022);
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    @Test
    void sideBySide_tooFewOrTooFarApart_isNotAnswered() {
        Readings first = series(30, 0, i -> 9, i -> 0.8);

        assertEquals(Optional.empty(), SideBySide.of(first, series(23, 0, i -> 9, i -> 0.8), TOLERANCE));
        assertEquals(Optional.empty(), SideBySide.of(first, series(30, 121, i -> 9, i -> 0.8), TOLERANCE));
        assertTrue(SideBySide.of(first, series(24, 120, i -> 9, i -> 0.8), TOLERANCE)
                .isPresent());
    }

    // EXACT: the same air in and out has no drying power, and none of it can be told.
    @Test
    void insideOutside_sameAir_cannotBeTold() {
        Readings air = series(30, 0, i -> 8, i -> 0.85);

        InsideOutside both =
                InsideOutside.of(air, air, TOLERANCE, SensorError.usual()).orElseThrow();

        assertEquals(0.0, both.meanKgPerM3(), 1e-15); // rounding
        assertEquals(List.of(0L, 0L), List.of(both.drier(), both.wetter()));
    }

    // EXACT: halves that lie within the tolerance become one reading, the others stay alone.
    @Test
    void join_temperatureAndHumidityFiles_becomeOne() {
        LoggerFile warm = Logs.good("time,temp\n2026-11-09 08:00,8.0\n2026-11-09 08:10,8.1\n2026-11-09 08:20,8.2\n");
        LoggerFile humid = Logs.good("time,rh\n2026-11-09 08:00:20,85\n2026-11-09 08:13,86\n2026-11-09 08:20,87\n");

        Joined joined = Joined.of(List.of(warm.readings(), humid.readings()), TOLERANCE);

        assertEquals(2, joined.matched());
        assertEquals(2, joined.alone());
        assertEquals(
                List.of(
                        Logs.reading("2026-11-09T08:00:00Z", 8.0, 0.85),
                        Logs.reading("2026-11-09T08:20:00Z", 8.2, 0.87)),
                joined.readings().all().stream()
                        .filter(one -> one.celsius().isPresent()
                                && one.relativeHumidity().isPresent())
                        .toList());
    }

    // EXACT: two months that overlap: what is said again is dropped, what contradicts is counted, the first is kept.
    @Test
    void join_filesThatOverlap_keepTheFirst() {
        LoggerFile november = Logs.good("time,temp,rh\n2026-11-30 22:00,8.0,85\n2026-11-30 23:00,8.1,86\n");
        LoggerFile december =
                Logs.good("time,temp,rh\n2026-11-30 22:00,8.0,85\n2026-11-30 23:00,9.9,86\n2026-12-01 00:00,7.9,87\n");

        Joined joined = Joined.of(List.of(november.readings(), december.readings()), TOLERANCE);

        assertEquals(3, joined.readings().all().size());
        assertEquals(
                List.of(0, 3, 1, 1),
                List.of(joined.matched(), joined.alone(), joined.repeated(), joined.contradicting()));
        assertEquals(OptionalDouble.of(8.1), joined.readings().all().get(1).celsius());
    }

    // EXACT: clean figures are read again as they were; hourly ones serve as weather.
    @Test
    void clean_writtenAndReadAgain_isTheSameAndServesAsWeather(@TempDir Path folder) throws IOException {
        StringBuilder text = new StringBuilder("time,temp,rh,wall surface,wind m/s\n");
        IntStream.range(0, 144)
                .forEach(i -> text.append(String.format(
                        Locale.ROOT,
                        "2026-11-%02d %02d:%02d,8.%d,8%d.5,6.%d,%d.5%n",
                        9 + i / 72,
                        i / 3 % 24,
                        20 * (i % 3),
                        i % 10,
                        i % 9,
                        i % 7,
                        i % 4)));
        Readings readings = Logs.good(text.toString()).readings();
        Path hourly = Files.writeString(folder.resolve("yard-hourly.csv"), CleanCsv.hourly(readings));

        Readings again = Logs.good(CleanCsv.all(readings)).readings();
        WeatherFile.Result weather = WeatherFile.read(hourly, "yard-hourly.csv", "place.weather", Logs.DUBLIN);

        assertEquals(readings, again);
        assertTrue(weather instanceof WeatherFile.Good, weather.toString());
        // EXACT: mean of 7:40, 8:00 and 8:20, readings 23, 24 and 25: 8.3, 8.4, 8.5 C and 85.5, 86.5, 87.5 %.
        assertTrue(Files.readString(hourly).contains("2026-11-09T08:00:00Z,8.4,86.5,"), Files.readString(hourly));
    }
}
