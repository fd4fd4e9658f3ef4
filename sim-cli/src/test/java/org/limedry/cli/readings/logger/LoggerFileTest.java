package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.climate.LoggedReading;

final class LoggerFileTest {
    private static final String HEADING = "time,temp,rh\n";

    // EXACT: every spelling of 13 November 2026, half past two in the afternoon.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "13/11/2026 14:30",
                "11/13/2026 2:30 PM",
                "13.11.2026 14.30:00",
                "2026-11-13T14:30",
                "2026/11/13 14:30:00",
                "13-Nov-2026 02:30 p.m.",
                "Nov 13 2026 14:30",
                "Fri 13 November 2026 14:30",
                "2026-11-13T14:30Z",
                "2026-11-13 15:30+01:00",
                "13 Nov 26 14:30"
            })
    void read_timeInManySpellings_isTheSameMoment(String time) {
        LoggerFile file = Logs.good(HEADING + time + ",8.5,85\n");

        assertEquals(List.of("2026-11-13T14:30:00Z"), Logs.times(file));
    }

    // EXACT: November has 30 days and no month is a 31st.
    @Test
    void read_datesThatAreNoDays_areRefused() {
        String found = Logs.problems(Logs.read(HEADING + "31/11/2026 08:00,8.5,85\n", Asked.nothing()));

        assertTrue(found.contains("no order of day, month and year fits the dates"), found);
    }

    // EXACT: the orders that make a day of it; more days, or telling, settle it.
    @Test
    void read_yearOfTwoDigits_isSettledOnlyByMoreDaysOrByTelling() {
        String one = HEADING + "13/11/26 14:30,8.5,85\n";

        LoggerFile.Result open = Logs.read(one, Asked.nothing());
        LoggerFile told = Logs.good(one, Logs.asked(Map.of(PlanKey.DATE_ORDER, "day-month-year")));
        LoggerFile more = Logs.good(one + "28/11/26 14:30,8.5,85\n");

        assertTrue(Logs.problems(open).contains("can be read in more than one way"), Logs.problems(open));
        assertEquals(List.of("2026-11-13T14:30:00Z"), Logs.times(told));
        assertEquals(List.of("2026-11-13T14:30:00Z", "2026-11-28T14:30:00Z"), Logs.times(more));
    }

    // EXACT: midnight and noon on a clock of 12 hours; 24:00 is the next day.
    @ParameterizedTest
    @CsvSource({
        "12:00 AM, 13T00:00",
        "12:30 am, 13T00:30",
        "12:00 PM, 13T12:00",
        "11:59 pm, 13T23:59",
        "24:00, 14T00:00"
    })
    void read_noonAndMidnight_areToldApart(String time, String moment) {
        LoggerFile file = Logs.good(HEADING + "13/11/2026 " + time + ",8.5,85\n");

        assertEquals(List.of("2026-11-" + moment + ":00Z"), Logs.times(file));
    }

    // EXACT: summer time ended in Ireland on 25 October 2026 at 01:00 UTC; hourly and half-hourly loggers.
    @Test
    void read_hourThatAutumnHasTwice_isSummerTimeThenWinterTime() {
        LoggerFile hourly = Logs.good(HEADING + "25/10/2026 00:00,8,85\n25/10/2026 01:00,8,84\n"
                + "25/10/2026 01:00,8,83\n25/10/2026 02:00,8,82\n");
        LoggerFile halfHourly = Logs.good(HEADING + "25/10/2026 01:00,8,85\n25/10/2026 01:30,8,84\n"
                + "25/10/2026 01:00,8,83\n25/10/2026 01:30,8,82\n25/10/2026 02:00,8,81\n");

        assertEquals(
                List.of("2026-10-24T23:00:00Z", "2026-10-25T00:00:00Z", "2026-10-25T01:00:00Z", "2026-10-25T02:00:00Z"),
                Logs.times(hourly));
        assertEquals(
                List.of(
                        "2026-10-25T00:00:00Z",
                        "2026-10-25T00:30:00Z",
                        "2026-10-25T01:00:00Z",
                        "2026-10-25T01:30:00Z",
                        "2026-10-25T02:00:00Z"),
                Logs.times(halfHourly));
        assertEquals(List.of("HOUR_TWICE 3-4"), Logs.found(hourly));
        assertEquals(List.of("HOUR_TWICE 2-5"), Logs.found(halfHourly));
    }

    // EXACT: the same night written newest first gives the same moments.
    @Test
    void read_autumnNightNewestFirst_isTheSame() {
        LoggerFile file = Logs.good(HEADING + "25/10/2026 02:00,8,82\n25/10/2026 01:00,8,83\n"
                + "25/10/2026 01:00,8,84\n25/10/2026 00:00,8,85\n");

        assertEquals(
                List.of("2026-10-24T23:00:00Z", "2026-10-25T00:00:00Z", "2026-10-25T01:00:00Z", "2026-10-25T02:00:00Z"),
                Logs.times(file));
        // 1e-12: rounding of a percentage
        assertEquals(0.85, file.readings().all().get(0).relativeHumidity().orElseThrow(), 1e-12);
    }

    // EXACT: the doubled hour is there once; it is summer time and the hour after it is missing.
    @Test
    void read_hourThatAutumnHasTwiceThereOnce_isSaid() {
        LoggerFile file = Logs.good(HEADING
                + "25/10/2026 00:00,8,85\n25/10/2026 01:00,8,84\n25/10/2026 02:00,8,82\n25/10/2026 03:00,8,82\n");

        assertEquals(List.of("HOUR_ONCE 3-3", "GAP 3-4"), Logs.found(file));
    }

    // EXACT: 01:00 to 02:00 did not happen in Ireland on 29 March 2026; UTC and winter time have no such hole.
    @Test
    void read_hourThatSpringHasNot_isLeftOutAndListed() {
        String text = HEADING
                + "29/03/2026 00:30,8,85\n29/03/2026 01:00,8,84\n29/03/2026 01:59,8,83\n29/03/2026 02:00,8,82\n";

        LoggerFile local = Logs.good(text);
        LoggerFile winter = Logs.good(text, Logs.asked(Map.of(PlanKey.ZONE, "+00:00")));

        assertEquals(List.of("2026-03-29T00:30:00Z", "2026-03-29T01:00:00Z"), Logs.times(local));
        assertEquals(List.of("NO_SUCH_TIME 3-3", "NO_SUCH_TIME 4-4"), Logs.found(local));
        assertEquals(4, Logs.times(winter).size());
    }

    // EXACT: (50 - 32) 5/9 = 10 and (41 - 32) 5/9 = 5.
    @Test
    void read_fahrenheit_isConvertedWhenTheFileOrTheUserSaysSo() {
        LoggerFile told = Logs.good(
                HEADING + "13/11/2026 14:30,50,85\n13/11/2026 15:30,41,85\n",
                Logs.asked(Map.of(PlanKey.TEMPERATURE_UNIT, "F")));
        LoggerFile heading = Logs.good("time,temp \u00b0F,rh\n13/11/2026 14:30,50.0,85\n");
        LoggerFile cells = Logs.good(HEADING + "13/11/2026 14:30,50.0 \u00b0F,85 %\n");

        assertEquals(10.0, told.readings().all().get(0).celsius().orElseThrow(), 1e-12); // rounding
        assertEquals(5.0, told.readings().all().get(1).celsius().orElseThrow(), 1e-12); // rounding
        assertEquals(10.0, heading.readings().all().get(0).celsius().orElseThrow(), 1e-12); // rounding
        assertEquals(10.0, cells.readings().all().get(0).celsius().orElseThrow(), 1e-12); // rounding
    }

    // EXACT: an offset of a comparison is added to air temperature and humidity, not to the wall.
    @Test
    void read_offsets_areAddedToTheAir() {
        LoggerFile file = Logs.good(
                "time,temp,rh,wall surface\n13/11/2026 14:30,9.0,80,7.5\n",
                Logs.asked(Map.of(PlanKey.TEMPERATURE_OFFSET, "-0.4", PlanKey.HUMIDITY_OFFSET, "2.5")));

        LoggedReading reading = file.readings().all().get(0);
        assertEquals(8.6, reading.celsius().orElseThrow(), 1e-12); // rounding
        assertEquals(0.825, reading.relativeHumidity().orElseThrow(), 1e-12); // rounding
        assertEquals(OptionalDouble.of(7.5), reading.surfaceCelsius());
    }

    static Stream<Arguments> encodings() {
        return Stream.of(
                Arguments.of(StandardCharsets.UTF_8, ""),
                Arguments.of(StandardCharsets.UTF_8, "\uFEFF"),
                Arguments.of(StandardCharsets.UTF_16LE, "\uFEFF"),
                Arguments.of(StandardCharsets.UTF_16BE, "\uFEFF"),
                Arguments.of(Charset.forName("windows-1252"), ""));
    }

    // EXACT: the bytes differ, the reading does not.
    @ParameterizedTest
    @MethodSource("encodings")
    void read_anyEncoding_givesTheSame(Charset charset, String mark, @TempDir Path folder) throws IOException {
        String text = mark + "time;temp \u00b0C;rh %\r\n13.11.2026 14:30;8,5;85,5\r\n";
        Path path = Files.write(folder.resolve("log.csv"), text.getBytes(charset));

        LoggerFile.Result result = LoggerFile.read(path, Asked.nothing(), Logs.DUBLIN);

        assertEquals("", Logs.problems(result));
        LoggedReading reading =
                ((LoggerFile.Good) result).file().readings().all().get(0);
        assertEquals(Logs.reading("2026-11-13T14:30:00Z", 8.5, 0.855), reading);
    }

    // EXACT: limits of what a sensor can read, both sides.
    @ParameterizedTest
    @CsvSource({
        "-40, 0, true, true",
        "60, 105, true, true",
        "-40.1, 50, false, true",
        "60.1, 50, false, true",
        "8, -0.1, true, false",
        "8, 105.1, true, false"
    })
    void read_figureOutOfRange_leavesOnlyThatFigureOut(String celsius, String percent, boolean warm, boolean humid) {
        LoggerFile file = Logs.good(HEADING + "13/11/2026 14:30," + celsius + "," + percent
                + "\n13/11/2026 15:30,8,85\n13/11/2026 16:30,8,86\n");

        LoggedReading reading = file.readings().all().get(0);
        assertEquals(warm, reading.celsius().isPresent());
        assertEquals(humid, reading.relativeHumidity().isPresent());
    }

    // EXACT: a plan that was written reads the file as the options did.
    @Test
    void plan_writtenAndReadAgain_readsTheSame(@TempDir Path folder) throws IOException {
        String text = "a;b;temp;temp\n03/11/2026;14:30;8,5;85,5\n04/11/2026;14:30;8,6;85,0\n";
        Asked asked = Logs.asked(Map.of(
                PlanKey.DATE_ORDER, "month-day-year",
                PlanKey.TEMPERATURE, "3",
                PlanKey.HUMIDITY, "4",
                PlanKey.ZONE, "America/New_York",
                PlanKey.HUMIDITY_OFFSET, "-1.5",
                PlanKey.ONLY, "b=14:30"));
        LoggerFile told = Logs.good(text, asked);
        Path plan = Files.writeString(folder.resolve("log.plan.yaml"), PlanFile.text(told));

        LoggerFile again = Logs.good(text, PlanFile.read(plan));

        assertEquals(told.readings(), again.readings());
        assertEquals(told.plan(), again.plan());
        assertEquals("2026-03-11T18:30:00Z", Logs.times(again).get(0));
        assertEquals(plan, PlanFile.beside(folder.resolve("log.csv")));
    }

    // PINNED: our own words.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ZONE|Europe/Dubln|--zone: zone: \"Europe/Dubln\"; must be a time zone by its place, such as Europe/Dublin, or UTC",
                "TEMPERATURE|tepm|--temperature: temperature: \"tepm\"; the columns are: 1 \"time\", 2 \"temp\", 3 \"rh\"",
                "TEMPERATURE|4|--temperature: temperature: \"4\"; the columns are: 1 \"time\", 2 \"temp\", 3 \"rh\"",
                "PARTED_BY|blank|--parted-by: partedBy: \"blank\"; must be one of: tab, semicolon, comma",
                "HEADINGS|99|--headings: headings: \"99\"; must be a line of the file, or 0 for no headings",
                "TEMPERATURE_OFFSET|40|--temperature-offset-k: temperatureOffsetK: \"40\"; must be a number of at most 5, up or down",
                "ONLY|rh|--only: only: \"rh\"; must be COLUMN=TEXT; the columns are: 1 \"time\", 2 \"temp\", 3 \"rh\"",
            })
    void read_wordThatMeansNothing_isToldWithItsOption(PlanKey key, String word, String problem) {
        LoggerFile.Result result = Logs.read(HEADING + "2026-11-13 14:30,8.5,85\n", Logs.asked(Map.of(key, word)));

        assertEquals(problem, Logs.problems(result));
    }

    // EXACT: stuck for 24 hours is told, for 23 it is not; full for 6 hours is, for 5 it is not.
    @Test
    void read_sensorThatStandsStill_isToldFromADayOn() {
        assertEquals(List.of("STUCK 2-26"), Logs.found(Logs.good(steady(25, "7.5", ""))));
        assertEquals(List.of(), Logs.found(Logs.good(steady(24, "7.5", ""))));
        assertEquals(List.of("FULL 2-8"), Logs.found(Logs.good(steady(7, "", "100"))));
        assertEquals(List.of(), Logs.found(Logs.good(steady(6, "", "100"))));
    }

    /** Hourly readings; a blank figure stands for one that moves. */
    private static String steady(int hours, String celsius, String percent) {
        StringBuilder text = new StringBuilder(HEADING);
        IntStream.range(0, hours)
                .forEach(i -> text.append(String.format(
                        Locale.ROOT,
                        "2026-11-%02d %02d:00,%s,%s%n",
                        9 + i / 24,
                        i % 24,
                        celsius.isEmpty() ? "8." + i % 10 : celsius,
                        percent.isEmpty() ? "8" + i % 10 : percent)));
        return text.toString();
    }

    @Test
    void read_nothingButHeadings_isRefused() {
        assertTrue(Logs.problems(Logs.read(HEADING, Asked.nothing())).contains("no line has a date and a number"));
    }
}
