package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class WeatherRecordTest {
    // EXACT: six hours are left out between 5.5 C (hour 3) and 5.5 C (hour 10); hour 5 then lies on the line.
    @Test
    void gapOfSixHours_isBridgedAndCounted() {
        List<WeatherReading> rows = WeatherRows.hours(24);
        rows.set(3, WeatherRows.row(WeatherRows.hour(3), 5.0, 0.80, 2.0));
        rows.set(10, WeatherRows.row(WeatherRows.hour(10), 12.0, 0.94, 9.0));
        rows.subList(4, 10).clear();

        WeatherRecord.Sound sound = WeatherRows.sound(rows);

        WeatherSeries series = WeatherRows.series(sound.weather(), WeatherRows.hour(0), WeatherRows.hour(20));
        // Straight from hour 3 to hour 10, so 2/7 of the way at hour 5; some ulp.
        assertEquals(7.0, series.celsius(WeatherRows.hour(5)), 1e-12);
        assertEquals(0.84, series.relativeHumidity(WeatherRows.hour(5)), 1e-13);
        assertEquals(4.0, series.windMPerS(WeatherRows.hour(5)), 1e-12);
        assertEquals(new WeatherQuality(18, 1, 6, 0, 0, List.of(), List.of()), sound.quality());
    }

    // EXACT: hours 4 to 10 of a file that begins 2021-03-04T05:00Z.
    @Test
    void gapOfSevenHours_isRefusedWithItsDates() {
        List<WeatherReading> rows = WeatherRows.hours(24);
        rows.subList(4, 11).clear();

        WeatherRecord.Refused refused = WeatherRows.refused(rows);

        assertEquals(1, refused.problems().size());
        assertTrue(
                refused.problems().get(0).endsWith("2021-03-04T09:00:00Z to 2021-03-04T15:00:00Z (7 hours)"),
                refused.problems().get(0));
    }

    // EXACT: five faults were put in.
    @Test
    void fileWithManyFaults_isToldEveryOne() {
        List<WeatherReading> rows = WeatherRows.hours(40);
        rows.subList(20, 30).clear();
        rows.subList(4, 12).clear();
        rows.add(3, rows.get(2));
        rows.add(WeatherRows.row(WeatherRows.hour(39).plusSeconds(600), 5.0, 0.8, 2.0));
        WeatherReading moved = rows.remove(8);
        rows.add(10, moved);

        List<String> problems = WeatherRows.refused(rows).problems();

        assertEquals(5, problems.size(), problems.toString());
        assertTrue(problems.get(0).contains("must occur once, was there again: 2021-03-04T07:00:00Z"), problems.get(0));
        assertTrue(problems.get(1).contains("must be later than the row before"), problems.get(1));
        assertTrue(problems.get(2).contains("must be a full hour UTC, was 2021-03-05T20:10:00Z"), problems.get(2));
        assertTrue(problems.get(3).contains("(8 hours)"), problems.get(3));
        assertTrue(problems.get(4).contains("(10 hours)"), problems.get(4));
    }

    @Test
    void emptyFile_isRefused() {
        assertEquals(
                List.of("weather: must have hours within 20 years, has none"),
                WeatherRows.refused(List.of()).problems());
    }

    @Test
    void yearMistyped_isRefused() {
        List<WeatherReading> rows = WeatherRows.hours(5);
        rows.add(WeatherRows.row(Instant.parse("2121-03-04T10:00:00Z"), 5.0, 0.8, 2.0));

        String problem = WeatherRows.refused(rows).problems().get(0);

        assertTrue(problem.endsWith("has 2021-03-04T05:00:00Z to 2121-03-04T10:00:00Z"), problem);
    }

    // EXACT: a blank wind is 0.5 m/s at the station.
    @Test
    void blankWind_isLittleAndCounted() {
        List<WeatherReading> rows = WeatherRows.hours(6);
        rows.set(
                2,
                new WeatherReading(
                        WeatherRows.hour(2), OptionalDouble.of(5.0), OptionalDouble.of(0.8), OptionalDouble.empty()));

        WeatherRecord.Sound sound = WeatherRows.sound(rows);

        WeatherSeries series = WeatherRows.series(sound.weather(), WeatherRows.hour(0), WeatherRows.hour(5));
        assertEquals(0.5, series.windMPerS(WeatherRows.hour(2)));
        assertEquals(1, sound.quality().blankWinds());
    }

    @Test
    void blankTemperature_isBridgedAndCounted() {
        List<WeatherReading> rows = WeatherRows.hours(6);
        rows.set(1, WeatherRows.row(WeatherRows.hour(1), 4.0, 0.8, 2.0));
        rows.set(
                2,
                new WeatherReading(
                        WeatherRows.hour(2), OptionalDouble.empty(), OptionalDouble.of(0.9), OptionalDouble.of(1.0)));
        rows.set(3, WeatherRows.row(WeatherRows.hour(3), 6.0, 0.8, 2.0));

        WeatherRecord.Sound sound = WeatherRows.sound(rows);

        WeatherSeries series = WeatherRows.series(sound.weather(), WeatherRows.hour(0), WeatherRows.hour(5));
        // EXACT: halfway between 4 C and 6 C; the humidity of the row stands.
        assertEquals(5.0, series.celsius(WeatherRows.hour(2)));
        assertEquals(0.9, series.relativeHumidity(WeatherRows.hour(2)));
        assertEquals(1, sound.quality().blankValues());
    }

    // EXACT: bounds of what is believed: 1 to 100.5 % and -60 to 60 C; a single leap of more than 15 K there and back.
    @Test
    void readingsThatCannotBeTrue_areSetAsideWithTheirHour() {
        List<WeatherReading> rows = WeatherRows.hours(30);
        rows.set(4, WeatherRows.row(WeatherRows.hour(4), 5.0, 1.006, 2.0));
        rows.set(9, WeatherRows.row(WeatherRows.hour(9), 5.0, 0.009, 2.0));
        rows.set(14, WeatherRows.row(WeatherRows.hour(14), -99.9, 0.8, 2.0));
        rows.set(19, WeatherRows.row(WeatherRows.hour(19), 25.0, 0.8, 2.0));
        rows.set(24, WeatherRows.row(WeatherRows.hour(24), Double.NaN, 0.8, -3.0));

        WeatherRecord.Sound sound = WeatherRows.sound(rows);

        List<String> setAside = sound.quality().setAside();
        assertEquals(6, setAside.size(), setAside.toString());
        assertTrue(setAside.get(0).contains("2021-03-04T09:00:00Z: relative humidity 1.006"), setAside.get(0));
        assertTrue(setAside.get(5).contains("2021-03-05T00:00:00Z: temperature C 25.0 after"), setAside.get(5));
        assertEquals(5, sound.quality().blankValues());
        assertEquals(1, sound.quality().blankWinds());
    }

    @Test
    void lastingJump_isKeptAndListed() {
        List<WeatherReading> rows = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            rows.add(WeatherRows.row(WeatherRows.hour(i), i < 5 ? 20.0 : 4.0, 0.8, 2.0));
        }

        WeatherRecord.Sound sound = WeatherRows.sound(rows);

        assertEquals(
                List.of("2021-03-04T10:00:00Z: temperature C 4.0 after 20.0"),
                sound.quality().doubtful());
        assertEquals(List.of(), sound.quality().setAside());
        // EXACT: five hours at 20 C and five at 4 C.
        assertEquals(12.0, sound.weather().meanCelsius());
    }

    // EXACT: RH of 100.4 % passes and is taken as 100 %.
    @Test
    void slightlyOverSaturated_isSaturated() {
        List<WeatherReading> rows = WeatherRows.hours(6);
        rows.set(2, WeatherRows.row(WeatherRows.hour(2), 5.0, 1.004, 2.0));

        WeatherRecord.Sound sound = WeatherRows.sound(rows);

        WeatherSeries series = WeatherRows.series(sound.weather(), WeatherRows.hour(0), WeatherRows.hour(5));
        assertEquals(1.0, series.relativeHumidity(WeatherRows.hour(2)));
    }

    @Test
    void over_senselessRun_isRefused() {
        WeatherRecord record = WeatherRows.sound(WeatherRows.hours(6)).weather();
        Instant from = WeatherRows.hour(1);

        assertThrows(IllegalArgumentException.class, () -> record.over(from, from, 0, Shelter.EXPOSED));
        assertThrows(
                IllegalArgumentException.class, () -> record.over(from, from.plusSeconds(9), 36_601, Shelter.EXPOSED));
        assertThrows(
                IllegalArgumentException.class, () -> record.over(from, from.plusSeconds(9), -36_601, Shelter.EXPOSED));
    }

    @Test
    void over_runPastTheRecord_isToldWhatIsMissing() {
        WeatherRecord record = WeatherRows.sound(WeatherRows.hours(6)).weather();

        WeatherRecord.Cover cover = record.over(WeatherRows.hour(3), WeatherRows.hour(8), 0, Shelter.EXPOSED);

        assertEquals(
                List.of("weather: must cover the run, has nothing for 2021-03-04T11:00:00Z to 2021-03-04T13:00:00Z"
                        + " (3 hours)"),
                ((WeatherRecord.Uncovered) cover).problems());
    }
}
