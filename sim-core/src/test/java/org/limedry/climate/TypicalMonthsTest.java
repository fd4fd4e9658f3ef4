package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.air.MagnusForm;

final class TypicalMonthsTest {
    private static double meanFrom(Instant start, int hours, ToDoubleFunction<Instant> course) {
        double sum = 0.0;
        for (int h = 0; h < hours; h++) {
            sum += course.applyAsDouble(start.plus(Duration.ofHours(h)));
        }
        return sum / hours;
    }

    // PUBLISHED: monthly table of the reference data (Met Éireann, CC BY 4.0): mean temperature and vapour pressure.
    @ParameterizedTest
    @CsvSource({ // station, month, hours, mean C, mean vapour pressure Pa
        "MULLINGAR, 01, 744, 5.6, 814",
        "MULLINGAR, 07, 744, 14.6, 1335",
        "VALENTIA OBSERVATORY, 12, 744, 8.3, 933",
        "BELMULLET, 04, 720, 9.6, 927"
    })
    void year_keepsTheMeansOfItsMonths(String station, String month, int hours, double celsius, double vapourPa) {
        Instant start = Instant.parse("2026-" + month + "-01T00:00:00Z");
        WeatherSeries series =
                WeatherRows.series(TypicalMonths.year(station), start, start.plus(Duration.ofHours(hours)));

        double meanCelsius = meanFrom(start, hours, series::celsius);
        double meanVapourPa = meanFrom(
                start, hours, t -> series.relativeHumidity(t) * MagnusForm.WMO_WATER.pressurePa(series.celsius(t)));

        // The daily swing grows or shrinks within a month: it sums to less than 0.02 K.
        assertEquals(celsius, meanCelsius, 0.02);
        // Where the night would pass saturation its vapour is cut: a few Pa in the dampest months.
        assertEquals(vapourPa, meanVapourPa, 3.0);
    }

    // COMPUTED: first daily harmonic of July 2017 at Mullingar 3.2 K, warmest 14.9 h UTC (Python 3, numpy, hourly
    // file).
    @Test
    void year_swingsLikeTheStation() {
        Instant noon = Instant.parse("2026-07-15T14:00:00Z");
        WeatherSeries series = WeatherRows.series(
                TypicalMonths.year("MULLINGAR"), noon.minusSeconds(86_400), noon.plusSeconds(86_400));

        double half = 0.5 * (series.celsius(noon) - series.celsius(noon.minus(Duration.ofHours(12))));

        // One rule serves all stations: a third of the swing.
        assertEquals(3.2, half, 1.0);
    }

    // PUBLISHED: Markree reports no wind; it is taken as 0.5 m/s.
    @Test
    void year_withoutWind_isNearlyStill() {
        Instant start = Instant.parse("2026-05-01T00:00:00Z");
        WeatherSeries series =
                WeatherRows.series(TypicalMonths.year("MARKREE"), start, start.plus(Duration.ofHours(5)));

        // The knots of a constant are that constant, to rounding.
        assertEquals(0.5, series.windMPerS(start), 1e-12);
    }

    // PUBLISHED: 25 Irish stations and 3 of New York.
    @Test
    void stations_areThoseOfTheTable() {
        assertEquals(28, TypicalMonths.stations().size());
        assertTrue(TypicalMonths.stations().contains("MALIN HEAD"));
        assertThrows(IllegalArgumentException.class, () -> TypicalMonths.year("Atlantis"));
    }

    @Test
    void monthMeans_thatCannotBe_areRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new TypicalMonths.MonthMeans(5.0, 5.1, 9.0, 800.0, OptionalDouble.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TypicalMonths.MonthMeans(5.0, 1.0, 4.9, 800.0, OptionalDouble.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TypicalMonths.MonthMeans(5.0, 1.0, 9.0, Double.NaN, OptionalDouble.empty()));
        var month = new TypicalMonths.MonthMeans(5.0, 1.0, 9.0, 800.0, OptionalDouble.empty());
        assertThrows(IllegalArgumentException.class, () -> TypicalMonths.year(Collections.nCopies(11, month), 14.0));
        assertThrows(IllegalArgumentException.class, () -> TypicalMonths.year(Collections.nCopies(12, month), 24.0));
    }
}
