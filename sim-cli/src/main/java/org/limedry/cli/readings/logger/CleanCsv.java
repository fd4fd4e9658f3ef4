package org.limedry.cli.readings.logger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.units.Units;

/** Readings as clean CSV: times UTC, decimal points, a blank cell for what was not read. */
public final class CleanCsv {
    private static final String AIR = "timeUtc,celsius,rhPercent";
    private static final int DECIMALS = 4;

    private CleanCsv() {}

    /** Returns every reading as it was understood. */
    public static String all(Readings readings) {
        return AIR + ",surfaceCelsius,windMPerS\n"
                + readings.all().stream()
                        .map(reading -> air(reading) + "," + text(reading.surfaceCelsius()) + ","
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
        return AIR + (wind ? ",windMPerS" : "") + "\n"
                + readings.hourly().stream()
                        .map(hour -> air(hour) + (wind ? "," + text(hour.windMPerS()) : "") + "\n")
                        .collect(Collectors.joining());
    }

    private static String air(LoggedReading reading) {
        OptionalDouble humidity = reading.relativeHumidity();
        OptionalDouble percent =
                humidity.isPresent() ? OptionalDouble.of(Units.percentFromFraction(humidity.getAsDouble())) : humidity;
        return reading.at() + "," + text(reading.celsius()) + "," + text(percent);
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
