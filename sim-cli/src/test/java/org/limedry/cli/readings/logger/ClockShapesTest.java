package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clocks in headings and cells, dates in parts, long preambles, and files that are none. */
final class ClockShapesTest {
    // EXACT: 14:30 by the clock that the heading names, in UTC.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "t_UTC+2|12:30",
                "Time (UTC+02:00)|12:30",
                "Date Time, GMT-05:00|19:30",
                "Date Time, GMT-5|19:30",
                "time (UTC)|14:30",
                "timeUtc|14:30",
                "Time (Z)|14:30",
                "Time (+0100)|13:30",
                "Time [+05:30]|09:00",
                "UTC +1|13:30"
            })
    void heading_withAnOffset_isTakenAndTold(String heading, String moment) {
        LoggerFile file = Logs.good("\"" + heading + "\",temp,rh\n2026-11-13 14:30,8.5,85\n");

        assertEquals(List.of("2026-11-13T" + moment + ":00Z"), Logs.times(file));
        assertFalse(file.isClockTaken());
        assertTrue(
                file.said().stream()
                        .anyMatch(said ->
                                said.what().equals("clock") && said.words().endsWith("as the heading says")),
                file.said().toString());
    }

    // EXACT: the same afternoon in Dublin, in winter; numbers in a heading are no clock.
    @ParameterizedTest
    @CsvSource({"time", "Time -2026", "Time (0042)"})
    void heading_withoutAnOffset_leavesTheUsualClock(String heading) {
        LoggerFile file = Logs.good(heading + ",temp,rh\n2026-11-13 14:30,8.5,85\n");

        assertEquals(List.of("2026-11-13T14:30:00Z"), Logs.times(file));
        assertTrue(file.isClockTaken());
    }

    // EXACT: offsets as cells spell them.
    @ParameterizedTest
    @CsvSource({
        "2026-11-13 14:30 UTC+2, 12:30",
        "2026-11-13 14:30 GMT-05:00, 19:30",
        "2026-11-13T14:30:00.000+0100, 13:30",
        "2026-11-13 14:30+01, 13:30",
        "2026-11-13 14:30 UTC, 14:30",
        "2026-11-13T14:30Z, 14:30"
    })
    void cell_withAnOffset_isTaken(String time, String moment) {
        LoggerFile file = Logs.good("time,temp,rh\n" + time + ",8.5,85\n");

        assertEquals(List.of("2026-11-13T" + moment + ":00Z"), Logs.times(file));
    }

    // EXACT: an offset behind the time, the date in a cell of its own.
    @Test
    void timeApart_withAnOffset_isTaken() {
        LoggerFile file = Logs.good("date,time,temp,rh\n2026-11-13,14:30+02:00,8.5,85\n");

        assertEquals(List.of("2026-11-13T12:30:00Z"), Logs.times(file));
    }

    @Test
    void headings_thatNameTwoClocks_areAQuestion() {
        String problems =
                Logs.problems(Logs.read("Date (UTC),Time (UTC+2),temp,rh\n2026-11-13,14:30,8.5,85\n", Asked.nothing()));

        assertTrue(problems.contains("the headings name more than one clock"), problems);
    }

    // EXACT: hour 24 is midnight of the next day; years, months and days stand in cells of their own.
    @Test
    void dateInParts_isPutTogether() {
        String text = "Year;Month;Day;Hour (UTC);TEMP C;%RH\n2026;11;9;1;7,5;88\n2026;11;9;24;7,6;87\n";
        LoggerFile file = Logs.good(text);
        LoggerFile minutes = Logs.good("yyyy,mm,dd,hh,min,temp,rh\n2026,11,9,8,5,7.5,88\n2026,11,9,8,35,7.5,88\n");

        assertEquals(List.of("2026-11-09T01:00:00Z", "2026-11-10T00:00:00Z"), Logs.times(file));
        assertEquals(List.of("2026-11-09T08:05:00Z", "2026-11-09T08:35:00Z"), Logs.times(minutes));
        assertEquals("Year + Month + Day", file.plan().words().get(PlanKey.DATE));
    }

    // EXACT: a plan that names several columns reads the file as it was proposed.
    @Test
    void dateInParts_namedByAPlan_isTheSame(@TempDir Path folder) throws IOException {
        String text = "Year,Month,Day,Hour,temp,rh\n2026,11,9,1,7.5,88\n2026,11,9,2,7.6,87\n";
        LoggerFile proposed = Logs.good(text);
        Path plan = Files.writeString(folder.resolve("log.plan.yaml"), PlanFile.text(proposed));

        LoggerFile again = Logs.good(text, PlanFile.read(plan));

        assertEquals(proposed.readings(), again.readings());
        assertEquals(proposed.plan(), again.plan());
    }

    // EXACT: 3,000 lines above the headings, 5,000 readings below, the first day that is no month on the 13th.
    @Test
    void longFile_withALongPreamble_isReadToTheLastLine() {
        String preamble =
                IntStream.range(0, 3_000).mapToObj(i -> "remark " + i + "\n").collect(Collectors.joining());
        String readings = IntStream.range(0, 5_000)
                .mapToObj(i -> String.format(
                        Locale.ROOT, "%02d/11/2026 %02d:%02d,8.%d,85%n", 1 + i / 288, i / 12 % 24, i % 12 * 5, i % 10))
                .collect(Collectors.joining());

        LoggerFile file = Logs.good(preamble + "time,temp,rh\n" + readings);

        assertEquals(5_000, file.readings().all().size());
        assertEquals(3_001, file.plan().cells().headingLine());
        assertEquals(DateOrder.DAY_MONTH_YEAR, file.plan().clock().order());
    }

    // EXACT: a doubt that one line far below raises is raised in a long file too.
    @Test
    void longFile_whoseOnlyPercentStandsFarBelow_isNoFraction() {
        String readings = IntStream.range(0, 5_000)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "2026-11-%02d %02d:%02d,8.%d,%s%n",
                        1 + i / 288,
                        i / 12 % 24,
                        i % 12 * 5,
                        i % 10,
                        i == 4_321 ? "85" : "0.85"))
                .collect(Collectors.joining());
        String fractions = readings.replace(",85\n", ",0.85\n").replace(",85\r\n", ",0.85\r\n");

        assertEquals("", Logs.problems(Logs.read("time,temp,rh\n" + readings, Asked.nothing())));
        assertTrue(Logs.problems(Logs.read("time,temp,rh\n" + fractions, Asked.nothing()))
                .contains("look like fractions of 1"));
    }

    // EXACT: year 9999 is left out and listed, the rest is read.
    @Test
    void dateOfNoAge_isLeftOut() {
        LoggerFile file = Logs.good("time,temp,rh\n9999-01-01 00:00,8,85\n2026-11-09 08:00,8,85\n");

        assertEquals(List.of("2026-11-09T08:00:00Z"), Logs.times(file));
        assertEquals(List.of("NO_TIME 2-2"), Logs.found(file));
    }

    @Test
    void oneLongLine_isRefused() {
        String problems = Logs.problems(Logs.read("time,temp,rh," + "1".repeat(100_000), Asked.nothing()));

        assertTrue(problems.contains("must be at most 100000 letters a line"), problems);
    }

    @Test
    void device_isRefusedUnread() {
        Path device = Path.of("/dev/zero");
        assumeTrue(Files.exists(device));

        LoggerFile.Result result = LoggerFile.read(device, Asked.nothing(), Logs.DUBLIN);

        assertTrue(Logs.problems(result).contains("a pipe or a device"), Logs.problems(result));
    }

    // EXACT: a column told by name overrules the parts of the date.
    @Test
    void dateInParts_withTheHourToldElse_takesThat() {
        String text = "Year,Month,Day,Hour,Local,temp,rh\n2026,11,9,7,8,7.5,88\n2026,11,9,8,9,7.6,87\n";

        LoggerFile file =
                Logs.good(text, Logs.asked(Map.of(PlanKey.DATE, "Year + Month + Day", PlanKey.TIME, "Local")));

        assertEquals(List.of("2026-11-09T08:00:00Z", "2026-11-09T09:00:00Z"), Logs.times(file));
    }

    // EXACT: one reading of 2000 before three of 2026 is left out; two before three are kept.
    @Test
    void clockThatWasNotSet_leavesItsFewReadingsOut() {
        String rest = "2026-11-08 18:10,9.1,81.9\n2026-11-08 18:20,9.1,81.3\n2026-11-08 18:30,9.1,81.3\n";

        LoggerFile stray = Logs.good("time,temp,rh\n2000-01-01 00:00,9.0,81.5\n" + rest);
        LoggerFile kept = Logs.good("time,temp,rh\n2000-01-01 00:00,9.0,81.5\n2000-01-01 00:10,9.0,81.4\n" + rest);

        assertEquals(List.of("STRAY_CLOCK 2-2"), Logs.found(stray));
        assertEquals(3, stray.readings().all().size());
        assertEquals(5, kept.readings().all().size());
    }
}
