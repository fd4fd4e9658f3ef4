package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which column is what, what is asked and what is not used. PINNED: sentences are our own. */
final class ColumnsTest {
    private static List<String> unused(LoggerFile file) {
        return file.said().stream()
                .filter(said -> said.what().equals("not used"))
                .map(Said::words)
                .toList();
    }

    private static String problems(String text, Map<PlanKey, String> words) {
        return Logs.problems(Logs.read(text, Logs.asked(words)));
    }

    // EXACT: every column with figures is a role or not used; words and marks are no figures.
    @Test
    void columns_thatAreTakenForNothing_areTold() {
        String text = """
                Zeit;Temperatur;Feuchte;wind km/h;window;mark
                2026-11-09 08:00;7,5;85,5;12;0;on
                2026-11-09 09:00;7,6;85,4;14;1;off
                """;

        LoggerFile file = Logs.good(text);
        LoggerFile told = Logs.good(text, Logs.asked(Map.of(PlanKey.HUMIDITY, "Feuchte", PlanKey.ONLY, "window=1")));

        assertEquals(
                List.of(
                        "column 3 \"Feuchte\"",
                        "column 4 \"wind km/h\" (wind is taken in m/s only: --wind 4 if it is)",
                        "column 5 \"window\""),
                unused(file));
        assertEquals(List.of("column 4 \"wind km/h\" (wind is taken in m/s only: --wind 4 if it is)"), unused(told));
    }

    // EXACT: a cell that only a spoilt line has is no column.
    @Test
    void columns_ofASpoiltLine_areNone() {
        LoggerFile file = Logs.good(
                "time,temp,rh\n2026-11-09 08:00,7.5,85\n2026-11-09 09:00,7,5,85\n2026-11-09 10:00,7.5,84\n",
                Logs.asked(Map.of(PlanKey.HEADINGS, "1")));

        assertEquals(List.of(), unused(file));
    }

    // EXACT: 53 F are 11.7 C and 0.8 is 80 %; 85 % with 33 may be 33 F; 85 % with 9 is nothing else.
    @ParameterizedTest
    @CsvSource({"53.1, 0.80, true", "85.0, 33.0, true", "55.0, 30.0, true", "85.0, 9.0, false", "85.0, -0.5, false"})
    void figuresWithoutHeadings_areAskedForWhereFahrenheitOrFractionsFit(String first, String second, boolean asked) {
        String line = "2026-11-09 %s:00," + first + "," + second + "\n";
        String text = line.formatted("08") + line.formatted("09") + line.formatted("10");

        String problems = problems(text, Map.of());

        assertEquals(
                asked,
                problems.contains("could be the humidity in percent or the temperature in Fahrenheit"),
                problems);
        assertEquals(asked, !problems.isEmpty(), problems);
    }

    // EXACT: both units are asked for, and the columns are not said to be the wrong way round.
    @Test
    void fahrenheitWithFractions_isTwoQuestionsOfUnits() {
        String text =
                "time,temp,rh\n2026-11-09 08:00,53.1,0.80\n2026-11-09 09:00,53.2,0.81\n2026-11-09 10:00,53.5,0.81\n";

        String problems = problems(text, Map.of());

        assertTrue(problems.contains("--temperature-unit F"), problems);
        assertTrue(problems.contains("--humidity-unit fraction"), problems);
        assertFalse(problems.contains("wrong way round"), problems);
    }

    @Test
    void oneColumn_forTwoRoles_isRefused() {
        String text = "time,temperature C,rh\n2026-11-09 08:00,7.1,80\n2026-11-09 09:00,7.2,81\n";

        assertEquals(
                "--humidity: humidity: \"2\"; must be a column of its own, not that of the temperature too",
                problems(text, Map.of(PlanKey.TEMPERATURE, "temperature C", PlanKey.HUMIDITY, "2")));
        assertEquals(
                "--humidity: humidity: \"temperature C\"; is by its heading the temperature; if not, say which that is with"
                        + " --temperature COLUMN; the columns are: 1 \"time\", 2 \"temperature C\", 3 \"rh\"",
                problems(text, Map.of(PlanKey.HUMIDITY, "temperature C")));
    }

    // EXACT: headings that are the wrong way round can be told so, and a wall may be headed as a temperature.
    @Test
    void headings_areOverruledWhereEveryRoleIsTold() {
        String text = "time,temperature C,rh\n2026-11-09 08:00,80,7.1\n2026-11-09 09:00,81,7.2\n";
        String wall = "time,temperature C\n2026-11-09 08:00,7.1\n";

        assertEquals("", problems(text, Map.of(PlanKey.HUMIDITY, "2", PlanKey.TEMPERATURE, "3")));
        assertEquals("", problems(wall, Map.of(PlanKey.SURFACE, "2")));
    }

    // EXACT: 36 km/h are 10 m/s; taken as m/s they would be 36.
    @ParameterizedTest
    @CsvSource({"wind km/h, true", "Wind (mph), true", "wind kn, true", "wind, false", "wind m/s, false"})
    void windTold_inAnotherUnit_isRefused(String heading, boolean refused) {
        String text = "time,temp,rh," + heading + "\n2026-11-09 08:00,7.1,80,36\n2026-11-09 09:00,7.2,81,35\n";

        String problems = problems(text, Map.of(PlanKey.WIND, "4"));

        assertEquals(refused, problems.contains("must be in m/s"), problems);
        assertEquals(refused, !problems.isEmpty(), problems);
    }

    // EXACT: a clock is taken only where neither heading, cells, plan nor option say one.
    @ParameterizedTest
    @CsvSource({
        "time, 2026-11-09 08:00, true",
        "time UTC, 2026-11-09 08:00, false",
        "time, 2026-11-09T08:00Z, false",
        "time, 2026-11-09 08:00+01:00, false"
    })
    void clock_isTakenOnlyIfNothingSaysIt(String heading, String time, boolean taken) {
        String text = heading + ",temp,rh\n" + time + ",7.1,80\n";

        assertEquals(taken, Logs.good(text).isClockTaken());
        assertFalse(Logs.good(text, Logs.asked(Map.of(PlanKey.ZONE, "UTC"))).isClockTaken());
    }
}
