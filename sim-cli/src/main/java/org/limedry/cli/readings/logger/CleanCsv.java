package org.limedry.cli.readings.logger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** Readings as clean CSV: times UTC, decimal points, a blank cell for what was not read. */
public final class CleanCsv {
    private static final String AIR = "timeUtc,celsius,rhPercent";
    private static final int DECIMALS = 4;
    private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

    private CleanCsv() {}

    /** Returns every reading as it was understood. */
    public static String all(Readings readings) {
        return AIR + ",surfaceCelsius,windMPerS\n"
                + readings.all().stream()
                        .map(reading -> air(reading.at(), List.of(reading)) + "," + text(reading.surfaceCelsius()) + ","
                                + text(reading.windMPerS()) + "\n")
                        .collect(Collectors.joining());
    }

    /**
     * Returns full hours, as a site file takes weather: each the mean of what was read within half an hour of it, and blank
     * where nothing was. Wind is there if it was read.
     */
    public static String hourly(Readings readings) {
        boolean wind =
                readings.all().stream().anyMatch(reading -> reading.windMPerS().isPresent());
        NavigableMap<Instant, LoggedReading> byTime = new TreeMap<>();
        readings.all().forEach(reading -> byTime.put(reading.at(), reading));
        Instant first = nearestHour(readings.from());
        Instant last = nearestHour(readings.until());
        return AIR + (wind ? ",windMPerS" : "") + "\n"
                + Stream.iterate(first, hour -> !hour.isAfter(last), hour -> hour.plus(1, ChronoUnit.HOURS))
                        .map(hour -> hour(hour, byTime, wind))
                        .collect(Collectors.joining());
    }

    private static Instant nearestHour(Instant at) {
        return at.plus(HALF_AN_HOUR).truncatedTo(ChronoUnit.HOURS);
    }

    private static String hour(Instant hour, NavigableMap<Instant, LoggedReading> byTime, boolean wind) {
        List<LoggedReading> near = List.copyOf(
                byTime.subMap(hour.minus(HALF_AN_HOUR), hour.plus(HALF_AN_HOUR)).values());
        return air(hour, near) + (wind ? "," + text(mean(near, LoggedReading::windMPerS)) : "") + "\n";
    }

    private static String air(Instant at, List<LoggedReading> readings) {
        OptionalDouble humidity = mean(readings, LoggedReading::relativeHumidity);
        OptionalDouble percent = humidity.isPresent() ? OptionalDouble.of(100.0 * humidity.getAsDouble()) : humidity;
        return at + "," + text(mean(readings, LoggedReading::celsius)) + "," + text(percent);
    }

    private static OptionalDouble mean(List<LoggedReading> readings, Function<LoggedReading, OptionalDouble> of) {
        return readings.stream()
                .flatMapToDouble(reading -> of.apply(reading).stream())
                .average();
    }

    private static String text(OptionalDouble value) {
        return value.isEmpty()
                ? ""
                : new BigDecimal(value.getAsDouble())
                        .setScale(DECIMALS, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
