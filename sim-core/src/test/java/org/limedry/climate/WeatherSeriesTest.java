package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.limedry.air.MagnusForm;

final class WeatherSeriesTest {
    private static final int LAST_HOUR = 5;

    private static WeatherSeries series(List<Double> celsius) {
        List<WeatherReading> rows = new ArrayList<>();
        for (int i = 0; i < celsius.size(); i++) {
            rows.add(WeatherRows.row(WeatherRows.hour(i), celsius.get(i), 0.9 - 0.05 * i, 3.0 + celsius.get(i) / 10.0));
        }
        WeatherRecord record = WeatherRows.sound(rows).weather();
        return WeatherRows.series(record, WeatherRows.hour(0), WeatherRows.hour(celsius.size() - 1));
    }

    // EXACT: the line over a step has the mean and the first moment of the course, here by fine midpoint sums.
    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void over_anyStep_keepsMeanAndFirstMoment(
            @ForAll @Size(LAST_HOUR + 1) List<@DoubleRange(min = -5.0, max = 9.0) Double> celsius,
            @ForAll @IntRange(max = LAST_HOUR * 3600 - 60) int fromS,
            @ForAll @DoubleRange(min = 0.01, max = 1.0) double share) {
        WeatherSeries series = series(celsius);
        Instant from = WeatherRows.START.plusSeconds(fromS);
        Instant until = from.plusMillis(Math.round(1000.0 * share * (LAST_HOUR * 3600 - fromS)));

        Outdoors.Piece piece = series.over(from, until);

        // Midpoint sums with 4000 points: error below (h^2/24) f'' and half a cell at each kink, under 1e-5 of the
        // swing.
        assertSameMoments(series::celsius, from, until, piece.startCelsius(), piece.endCelsius(), 2e-4);
        assertSameMoments(series::windMPerS, from, until, piece.startWindMPerS(), piece.endWindMPerS(), 2e-5);
        assertSameMoments(
                instant -> vapourPa(series, instant),
                from,
                until,
                piece.startVapourPressurePa(),
                piece.endVapourPressurePa(),
                2e-2);
    }

    private static double vapourPa(WeatherSeries series, Instant instant) {
        return series.relativeHumidity(instant) * MagnusForm.WMO_WATER.pressurePa(series.celsius(instant));
    }

    private static void assertSameMoments(
            ToDoubleFunction<Instant> course, Instant from, Instant until, double... startEndTolerance) {
        int points = 4000;
        long nanos = Duration.between(from, until).toNanos();
        double mean = 0.0;
        double moment = 0.0;
        for (int i = 0; i < points; i++) {
            double s = (i + 0.5) / points;
            double value = course.applyAsDouble(from.plusNanos(Math.round(s * nanos)));
            mean += value / points;
            moment += value * (2.0 * s - 1.0) / points;
        }
        double start = startEndTolerance[0];
        double end = startEndTolerance[1];
        // Mean of a line is its middle; its first moment over [-1, 1] is a sixth of its rise.
        assertEquals(mean, 0.5 * (start + end), startEndTolerance[2]);
        assertEquals(moment, (end - start) / 6.0, startEndTolerance[2]);
    }

    // EXACT: within one hour temperature and wind are straight, so a step gets their values at its ends.
    @Test
    void over_subHourStep_givesTheTrueEnds() {
        WeatherSeries series = series(List.of(3.0, 8.0, -1.0, 2.0, 6.0, 5.0));

        Outdoors.Piece piece = series.over(
                WeatherRows.hour(1).plusSeconds(900), WeatherRows.hour(1).plusSeconds(1800));

        // 8 C falls by 9 K in the hour; some ulp of 10.
        assertEquals(8.0 - 9.0 * 0.25, piece.startCelsius(), 1e-13);
        assertEquals(8.0 - 9.0 * 0.50, piece.endCelsius(), 1e-13);
        assertEquals(3.8 - 0.9 * 0.25, piece.startWindMPerS(), 1e-13);
        assertEquals(3.8 - 0.9 * 0.50, piece.endWindMPerS(), 1e-13);
    }

    // EXACT: 0.5 m/s for one hour, then 8 m/s at the end of the next: mean (0.5 + 4.25) / 2. The line of the least
    // squares
    // would start at -0.6875 m/s.
    @Test
    void over_suddenWind_neverBlowsBackwards() {
        List<WeatherReading> rows = List.of(
                WeatherRows.row(WeatherRows.hour(0), 5.0, 0.8, 0.0),
                WeatherRows.row(WeatherRows.hour(1), 6.0, 0.8, 0.0),
                WeatherRows.row(WeatherRows.hour(2), 7.0, 0.8, 8.0));
        WeatherSeries series =
                WeatherRows.series(WeatherRows.sound(rows).weather(), WeatherRows.hour(0), WeatherRows.hour(2));

        Outdoors.Piece piece = series.over(WeatherRows.hour(0), WeatherRows.hour(2));

        // Some ulp of the sums.
        assertEquals(0.0, piece.startWindMPerS(), 1e-12);
        assertEquals(4.0, piece.endWindMPerS(), 1e-12);
    }

    // EXACT: vapour pressure is humidity times the WMO Magnus form over water, below freezing too.
    @Test
    void over_shortStepBelowFreezing_hasVapourOverWater() {
        WeatherSeries series = series(List.of(-4.0, -3.0, -1.0, 2.0, 6.0, 5.0));

        Outdoors.Piece piece =
                series.over(WeatherRows.hour(1), WeatherRows.hour(1).plusSeconds(1));

        // In a second the course bends by less than 1e-6 Pa; the ends are then those of the course.
        assertEquals(0.85 * MagnusForm.WMO_WATER.pressurePa(-3.0), piece.startVapourPressurePa(), 1e-5);
    }

    @Test
    void over_stepOutsideTheWeather_isRefused() {
        WeatherSeries series = series(List.of(3.0, 8.0, -1.0, 2.0, 6.0, 5.0));
        Instant end = WeatherRows.hour(LAST_HOUR);

        assertThrows(IllegalArgumentException.class, () -> series.over(WeatherRows.hour(-1), end));
        assertThrows(IllegalArgumentException.class, () -> series.over(end, end.plusSeconds(1)));
        assertThrows(IllegalArgumentException.class, () -> series.over(end, end));
        assertThrows(IllegalArgumentException.class, () -> series.celsius(end.plusSeconds(1)));
    }

    // EXACT: sheltered wind is 0.3 of the station's.
    @Test
    void shelter_scalesTheWind() {
        WeatherRecord record = WeatherRows.sound(WeatherRows.hours(4)).weather();

        var cover = (WeatherRecord.Covered) record.over(WeatherRows.hour(0), WeatherRows.hour(3), 0, Shelter.SHELTERED);

        // One product: 1 ulp of 1.
        assertEquals(0.3 * 3.0, cover.outdoors().windMPerS(WeatherRows.hour(1)), 1e-15);
        assertEquals(Shelter.ORDINARY, Shelter.named("ordinary"));
        String message = assertThrows(IllegalArgumentException.class, () -> Shelter.named("windy"))
                .getMessage();
        assertTrue(message.contains("sheltered, ordinary, exposed"), message);
    }
}
