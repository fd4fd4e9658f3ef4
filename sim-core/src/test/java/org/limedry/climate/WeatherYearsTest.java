package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.reference.WeatherYear;

/** The years of the reference data, seen through the checks. */
final class WeatherYearsTest {
    private static Instant at(String time) {
        return Instant.parse(time);
    }

    // PUBLISHED: the counts that are stated with the data: rows, gaps, hours missing in them, blank winds.
    @ParameterizedTest
    @CsvSource({"mullingar-2017, 8760, 0, 0, 0", "valentia-2017, 8760, 0, 0, 21"})
    void irishYears_haveOnlyTheBlanksStated(String name, int readings, int gaps, int missing, int blankWinds) {
        WeatherQuality quality = WeatherRows.sound(name).quality();

        assertEquals(new WeatherQuality(readings, gaps, missing, 0, blankWinds, List.of(), List.of()), quality);
    }

    // PUBLISHED: stated with the data: 14 gaps with 24 hours, 3 blank winds, one impossible reading of -10.5 C on 9
    // May.
    @Test
    void jfk_hasTheGapsStated_andItsBadReadingIsSetAside() {
        WeatherQuality quality = WeatherRows.sound("jfk-2013").quality();

        assertEquals(8706, quality.readings());
        assertEquals(14, quality.gaps());
        assertEquals(24, quality.missingHours());
        assertEquals(3, quality.blankWinds());
        assertEquals(List.of("2013-05-09T02:00:00Z: temperature C -10.5 after 13.9"), quality.setAside());
        assertEquals(1, quality.blankValues());
        assertEquals(List.of(), quality.doubtful());
    }

    // PUBLISHED: neighbours of the bad reading are 13.9 C and 14.0 C.
    @Test
    void jfk_badReading_isBridged() {
        WeatherRecord jfk = WeatherRows.sound("jfk-2013").weather();

        WeatherSeries series = WeatherRows.series(jfk, at("2013-05-08T00:00:00Z"), at("2013-05-10T00:00:00Z"));

        // Middle of the two; some ulp.
        assertEquals(13.95, series.celsius(at("2013-05-09T02:00:00Z")), 1e-12);
    }

    // PUBLISHED: 24 hours are missing at the end of JFK's year and 6 at its start, stated with the data.
    @Test
    void jfk_runOverNewYear_isRefusedWithTheDatesOfTheRun() {
        WeatherRecord jfk = WeatherRows.sound("jfk-2013").weather();

        WeatherRecord.Cover cover =
                jfk.over(at("2026-12-01T00:00:00Z"), at("2027-02-01T00:00:00Z"), 0, Shelter.ORDINARY);

        assertEquals(
                List.of("weather: must cover the run, has nothing for 2026-12-31T00:00:00Z to 2027-01-01T05:00:00Z"
                        + " (30 hours)"),
                ((WeatherRecord.Uncovered) cover).problems());
    }

    // PUBLISHED: first rows of the Mullingar file: 5.2, 4.3 C on 2017-01-01 at 00 and 01 h; last row of the year wraps.
    @Test
    void mullingar_anyWinter_isLike2017() {
        WeatherRecord record = WeatherRows.sound("mullingar-2017").weather();
        WeatherYear rows = WeatherYear.load("mullingar-2017");

        WeatherSeries series = WeatherRows.series(record, at("2026-11-09T00:00:00Z"), at("2027-03-01T00:00:00Z"));

        assertEquals(5.2, series.celsius(at("2027-01-01T00:00:00Z")));
        assertEquals(4.3, series.celsius(at("2027-01-01T01:00:00Z")));
        assertEquals(rows.celsius(8759), series.celsius(at("2026-12-31T23:00:00Z")));
    }

    // EXACT: a leap day repeats the day before it, and 1 March follows with its own weather.
    @Test
    void leapDay_repeatsTheDayBefore() {
        WeatherRecord record = WeatherRows.sound("mullingar-2017").weather();

        WeatherSeries series = WeatherRows.series(record, at("2028-02-27T00:00:00Z"), at("2028-03-03T00:00:00Z"));
        WeatherSeries plain = WeatherRows.series(record, at("2027-02-27T00:00:00Z"), at("2027-03-03T00:00:00Z"));

        assertEquals(series.celsius(at("2028-02-28T13:00:00Z")), series.celsius(at("2028-02-29T13:00:00Z")));
        assertEquals(plain.celsius(at("2027-03-01T04:00:00Z")), series.celsius(at("2028-03-01T04:00:00Z")));
    }

    // EXACT: shifted by 21 days, the run of 20 December has the weather of 10 January.
    @ParameterizedTest
    @CsvSource({"21, 2027-01-10T06:00:00Z", "-21, 2026-11-29T06:00:00Z", "0, 2026-12-20T06:00:00Z"})
    void shift_takesLaterOrEarlierWeather(int days, String source) {
        WeatherRecord record = WeatherRows.sound("mullingar-2017").weather();
        Instant run = at("2026-12-20T06:00:00Z");

        WeatherSeries shifted = WeatherRows.series(record, run, run.plus(3, ChronoUnit.DAYS), days);
        WeatherSeries plain = WeatherRows.series(record, at("2026-11-01T00:00:00Z"), at("2027-02-01T00:00:00Z"));

        assertEquals(plain.celsius(at(source)), shifted.celsius(run));
        assertEquals(plain.windMPerS(at(source)), shifted.windMPerS(run));
    }

    // PUBLISHED: CC BY 4.0 asks for five statements; the courtesy line of CC0 data is one.
    @Test
    void attribution_staysWithTheYears() {
        List<String> irish = WeatherYear.load("valentia-2017").attribution();
        List<String> newYork = WeatherYear.load("jfk-2013").attribution();

        assertEquals(5, irish.size());
        assertTrue(irish.get(0).contains("Met Éireann"), irish.get(0));
        assertTrue(irish.get(2).contains("CC BY 4.0"), irish.get(2));
        assertTrue(newYork.get(0).contains("CC0"), newYork.get(0));
    }

    // EXACT: each hour of the resampled weather is, away from joints, an hour of the year within 21 days at the same
    // time of
    // day. Joints are 6 h wide every 120 h, so 114 of 120 hours qualify.
    @Test
    void resampled_isMadeOfHoursOfTheSameSeasonAndTimeOfDay() {
        WeatherRecord record = WeatherRows.sound("mullingar-2017").weather();
        Instant from = Instant.parse("2026-11-02T00:00:00Z");
        Instant until = from.plus(Duration.ofDays(40));

        WeatherSeries made = resampled(record, from, until, 7L);

        int found = 0;
        for (int hour = 0; hour < 40 * 24; hour++) {
            Instant time = from.plus(Duration.ofHours(hour));
            found += comesFrom(record, made, time) ? 1 : 0;
        }
        assertTrue(found >= 40 * 24 * 114 / 120 - 6, "hours found in the year: " + found);
    }

    private static boolean comesFrom(WeatherRecord record, WeatherSeries made, Instant time) {
        for (int days = -21; days <= 21; days++) {
            Instant source = time.plus(Duration.ofDays(days));
            WeatherSeries year = WeatherRows.series(record, source, source.plus(Duration.ofHours(1)));
            if (year.celsius(source) == made.celsius(time)
                    && year.relativeHumidity(source) == made.relativeHumidity(time)) {
                return true;
            }
        }
        return false;
    }

    // EXACT: the same seed gives the same weather, another seed another.
    @Test
    void resampled_isReproducibleBySeed() {
        WeatherRecord record = WeatherRows.sound("valentia-2017").weather();
        Instant from = Instant.parse("2026-06-01T00:00:00Z");
        Instant until = from.plus(Duration.ofDays(30));
        Instant later = from.plus(Duration.ofDays(13));

        assertEquals(
                resampled(record, from, until, 3L).celsius(later),
                resampled(record, from, until, 3L).celsius(later));
        assertNotEquals(
                resampled(record, from, until, 3L).celsius(later),
                resampled(record, from, until, 4L).celsius(later));
    }

    // EXACT: one year holds a summer run once and a run over its end not at all.
    @Test
    void yearShifts_ofOneYear_areOneForASummerAndNoneOverItsEnd() {
        WeatherRecord record = WeatherRows.sound("mullingar-2017").weather();
        Instant june = Instant.parse("2026-06-01T00:00:00Z");
        Instant december = Instant.parse("2026-12-10T00:00:00Z");

        List<Integer> summer = record.yearShiftsDays(june, june.plus(Duration.ofDays(60)));

        assertEquals(List.of(-9 * 365 - 2), summer); // 2017 to 2026, leap days of 2020 and 2024
        assertEquals(List.of(), record.yearShiftsDays(december, december.plus(Duration.ofDays(60))));
    }

    private static WeatherSeries resampled(WeatherRecord record, Instant from, Instant until, long seed) {
        return ((WeatherRecord.Covered) record.resampled(from, until, 0, seed, Shelter.EXPOSED)).outdoors();
    }
}
