package org.limedry.cli.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.cli.problem.InputProblem;
import org.limedry.climate.WeatherRecord;

final class WeatherFileTest {
    @TempDir
    private Path folder;

    private static List<String> day() {
        List<String> lines = new ArrayList<>(List.of("timeUtc,celsius,rhPercent,windMPerS"));
        for (int hour = 0; hour < 24; hour++) {
            lines.add(String.format(Locale.ROOT, "2026-11-09T%02d:00Z,%d.5,85,2.0", hour, hour));
        }
        return lines;
    }

    private WeatherFile.Result read(List<String> lines) throws IOException {
        Path file = folder.resolve("quay.csv");
        Files.write(file, lines);
        return WeatherFile.read(file, "quay.csv", "place.weather", ZoneId.of("Europe/Dublin"));
    }

    private static String problems(WeatherFile.Result result) {
        return result instanceof WeatherFile.Bad bad
                ? bad.problems().stream().map(InputProblem::text).collect(Collectors.joining("\n"))
                : "";
    }

    // EXACT: mean of 0.5 to 23.5; the wind left blank is counted.
    @Test
    void read_soundFile_givesItsHours() throws IOException {
        List<String> lines = day();
        lines.set(5, "2026-11-09 04:00,4.5,85,");

        WeatherFile.Result result = read(lines);

        WeatherRecord.Sound weather = result instanceof WeatherFile.Good good ? good.weather() : fail(problems(result));
        assertEquals(12.0, weather.weather().meanCelsius(), 1e-12); // rounding of a sum of 24
        assertEquals(1, weather.quality().blankWinds());
        assertEquals(24, weather.quality().readings());
    }

    // EXACT: six hours may be missing, seven may not.
    @Test
    void read_gap_isRefusedAboveSixHours() throws IOException {
        List<String> six = day();
        six.subList(10, 16).clear();
        List<String> seven = day();
        seven.subList(10, 17).clear();

        assertEquals("", problems(read(six)));
        assertEquals(
                "quay.csv:11: place.weather: no readings for 7 hours, 9 Nov 2026 09:00 to 9 Nov 2026 15:00; "
                        + "gaps up to 6 hours are bridged and counted, longer are refused",
                problems(read(seven)));
    }

    @Test
    void read_blankReadings_areAGapToo() throws IOException {
        List<String> lines = day();
        for (int i = 10; i < 17; i++) {
            lines.set(i, lines.get(i).replace(",85,", ",,"));
        }

        assertTrue(problems(read(lines)).startsWith("quay.csv:18: place.weather: no readings for 7 hours"));
    }

    // PINNED: our own words.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1|timeUtc;celsius;rhPercent|quay.csv:1: place.weather: heading \"timeUtc;celsius;rhPercent\"; must begin with the heading timeUtc,celsius,rhPercent,windMPerS (the last may be left out)",
                "3|2026-11-09T01:00Z,1.5,85|quay.csv:3: place.weather: 3 cells; must have 4",
                "3|yesterday,1.5,85,2|quay.csv:3: place.weather: timeUtc \"yesterday\"; must be an hour UTC, such as 2026-11-09T08:00",
                "3|2026-11-09T01:00Z,NaN,85,2|quay.csv:3: place.weather: celsius \"NaN\"; must be a plain number, or blank if there is no reading",
                "3|2026-11-09T01:00Z,1.5,85%,2|quay.csv:3: place.weather: rhPercent \"85%\"; must be a plain number, or blank if there is no reading",
                "3|2026-11-09T00:00Z,1.5,85,2|quay.csv:3: place.weather: timeUtc 2026-11-09T00:00:00Z; must be later than the row before, 2026-11-09T00:00:00Z",
                "3|2026-11-09T01:30Z,1.5,85,2|quay.csv:3: place.weather: timeUtc 2026-11-09T01:30:00Z; must be a full hour",
            })
    void read_badRow_isToldWithItsLine(int line, String text, String problem) throws IOException {
        List<String> lines = day();
        lines.set(line - 1, text);

        assertEquals(problem, problems(read(lines)).lines().findFirst().orElse(""));
    }

    // EXACT: twenty of thirty bad rows and a line for the other ten.
    @Test
    void read_manyBadRows_areToldShort() throws IOException {
        List<String> lines = new ArrayList<>(List.of("timeUtc,celsius,rhPercent"));
        for (int i = 0; i < 30; i++) {
            lines.add("x,1,2");
        }

        List<String> told = problems(read(lines)).lines().toList();

        assertEquals(21, told.size());
        assertTrue(told.get(20).contains("and 10 more like these"), told.get(20));
    }

    @Test
    void read_headingOnlyAndEmpty_areRefused() throws IOException {
        assertTrue(problems(read(List.of("timeUtc,celsius,rhPercent"))).contains("there are no readings in it"));
        assertTrue(problems(read(List.of())).contains("there is nothing in it"));
    }
}
