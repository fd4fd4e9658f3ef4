package org.limedry.study.delay;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.limedry.air.MoistAir;
import org.limedry.air.StandardAtmosphere;
import org.limedry.climate.WeatherSeries;

/**
 * One month of weather in the figures in which normals are told.
 *
 * @param month the month
 * @param meanCelsius mean temperature, C
 * @param meanRelativeHumidity mean relative humidity, fraction
 * @param frostDays days on which it fell below 0 C
 */
public record MonthOfWeather(YearMonth month, double meanCelsius, double meanRelativeHumidity, int frostDays) {
    private static final double THOUSAND_M3 = 1000.0;

    /** Returns a month out of hours that cover all of it. */
    public static MonthOfWeather of(WeatherSeries weather, YearMonth month, ZoneId zone) {
        double celsius = 0.0;
        double humidity = 0.0;
        int hours = 0;
        int frostDays = 0;
        for (LocalDate day = month.atDay(1); !day.isAfter(month.atEndOfMonth()); day = day.plusDays(1)) {
            Instant end = day.plusDays(1).atStartOfDay(zone).toInstant();
            double lowest = Double.POSITIVE_INFINITY;
            for (Instant at = day.atStartOfDay(zone).toInstant(); at.isBefore(end); at = at.plus(1, ChronoUnit.HOURS)) {
                lowest = Math.min(lowest, weather.celsius(at));
                celsius += weather.celsius(at);
                humidity += weather.relativeHumidity(at);
                hours++;
            }
            frostDays += lowest < 0.0 ? 1 : 0;
        }
        return new MonthOfWeather(month, celsius / hours, humidity / hours, frostDays);
    }

    /** Returns the litres of water that 1,000 m3 of its air could still take up at its mean temperature. */
    public double roomInAirLitres() {
        return roomInAirLitres(meanCelsius, meanRelativeHumidity);
    }

    /**
     * Returns the litres of water that 1,000 m3 of air could still take up at its own temperature.
     *
     * <p>{@code 1000 (c(t, 1) - c(t, phi))}, c the vapour in a cubic metre. <b>Source:</b> definition. <b>Valid:</b> the
     * means of a month stand for its hours only roughly, for a record as for its normals. <b>Accuracy:</b> that of {@link
     * MoistAir}.
     *
     * @param celsius temperature, C
     * @param relativeHumidity relative humidity, fraction
     * @return litres
     */
    public static double roomInAirLitres(double celsius, double relativeHumidity) {
        double pressurePa = StandardAtmosphere.pressurePa(0.0);
        double full = MoistAir.of(celsius, 1.0, pressurePa).absoluteHumidityKgPerM3();
        double held = MoistAir.of(celsius, relativeHumidity, pressurePa).absoluteHumidityKgPerM3();
        return THOUSAND_M3 * (full - held);
    }
}
