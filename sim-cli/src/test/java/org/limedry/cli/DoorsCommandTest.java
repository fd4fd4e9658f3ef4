package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.cli.ask.ExitCode;

/** {@code limedry doors}, from the command line to the files. */
final class DoorsCommandTest {
    private static final Path TRAP = Path.of("..", "docs", "examples", "doors-trap.yaml");
    private static final String SITE = """
            site: Kiln house (invented)
            place: {weather: mullingar-2017}
            from: 2026-11-09
            until: 2026-11-30
            rooms:
              kiln:
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                openings:
                  - {name: door, widthM: 0.9, heightM: 2.0, open: "daily 08:00-18:00"}
                walls:
                  north: {areaM2: 6.0, background: old brick, thicknessMm: 220, wetness: damp}
              loft:
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                openings:
                  - {name: hatch, to: kiln, widthM: 0.9, heightM: 0.9, open: never}
                walls:
                  back: {areaM2: 6.0, background: old brick, thicknessMm: 220, wetness: damp}
            mixes:
              base: {lime: putty, limeParts: 1, sandParts: 3}
            coats:
              - {wall: north, mix: base, thicknessMm: 10, laid: 2026-11-09}
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path temp;

    private int doors(Path site, String... options) {
        String[] args = Stream.concat(Stream.of("doors", site.toString()), Stream.of(options))
                .toArray(String[]::new);
        return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    private Path kiln() throws IOException {
        return Files.writeString(temp.resolve("kiln.yaml"), SITE);
    }

    /** Hours from the given one on, all alike. */
    private Path forecast(String from, int hours, double celsius, int rhPercent) throws IOException {
        List<String> lines = new ArrayList<>(List.of("timeUtc,celsius,rhPercent,windMPerS"));
        LocalDateTime start = LocalDateTime.parse(from);
        for (int hour = 0; hour < hours; hour++) {
            lines.add(start.plusHours(hour) + "," + celsius + "," + rhPercent + ",2.0");
        }
        return Files.write(temp.resolve("forecast.csv"), lines);
    }

    // PINNED: our own finding on the example of docs/doors.md; what it rests on is tested in the library.
    @Test
    void trapWeek_isToldShutAndWhy_andTheSheetIsWritten() throws IOException {
        Path folder = temp.resolve("out");

        int code = doors(TRAP, "--from", "2026-11-16", "--days", "6", "--out", folder.toString());

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertTrue(out.toString().startsWith("Doors on Mon 16 Nov: open all day; night SHUT."), out.toString());
        assertTrue(out.toString().contains("Fri 20 Nov: shut all day. Mild wet air, cold walls: open doors put"));
        assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80), out.toString());
        // Cautions, which come last, are as many as are due.
        assertTrue(
                out.toString()
                                .lines()
                                .takeWhile(line -> !line.startsWith("Care: "))
                                .count()
                        <= 22,
                out.toString());
        JsonNode json = new ObjectMapper().readTree(folder.resolve("doors.json").toFile());
        assertEquals("shut", json.at("/days/4/blocks/0/word").asText());
        assertTrue(json.at("/days/4/ontoWallsLitresIfOpen").asDouble() > 2.0);
        double plan = json.at("/ways/0/outOfWallsLitres").asDouble();
        double open = json.at("/ways/1/outOfWallsLitres").asDouble();
        double shut = json.at("/ways/3/outOfWallsLitres").asDouble();
        assertTrue(plan > open + 2.0 && plan > shut + 2.0, plan + " against " + open + " and " + shut);
        // EXACT: six days of fourteen hours, and the headings.
        assertEquals(6 * 14 + 1, Files.readAllLines(folder.resolve("doors.csv")).size());
        String html = Files.readString(folder.resolve("doors.html"));
        assertTrue(html.contains("invented scenario") && html.contains("forecast, not a measurement"));
        assertTrue(html.contains("Rain") || html.contains("rain is not in the plan"));
        assertTrue(html.contains("Local codes and the competent person first."));
    }

    // EXACT: air of 12 C and 97 % in November wets cold walls, air of 3 C and 60 % dries them.
    @ParameterizedTest
    @CsvSource({"12.0, 97, shut all day", "4.0, 60, open all day"})
    void forecast_isWhatThePlanIsMadeFor(double celsius, int rhPercent, String words) throws IOException {
        Path file = forecast("2026-11-16T05:00", 40, celsius, rhPercent);

        int code = doors(kiln(), "--forecast", file.toString());

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertTrue(out.toString().startsWith("Doors on Mon 16 Nov: " + words), out.toString());
        assertTrue(out.toString().contains("forecast"), out.toString());
        assertEquals(
                1,
                out.toString()
                        .lines()
                        .filter(line -> line.startsWith("Tue 17 Nov:"))
                        .count());
        assertFalse(out.toString().contains("Wed 18 Nov:"), out.toString());
    }

    @Test
    void ranges_areGivenWithTheLitres() throws IOException {
        int code = doors(kiln(), "--from", "2026-11-10", "--days", "1", "--ranges", "--members", "4");

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertTrue(
                out.toString()
                        .replaceAll("\\s+", " ")
                        .matches(".*by the plan -?[\\d.]+ \\(-?[\\d.]+ to -?[\\d.]+\\);.*"),
                out.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--room attic | error: --room: must be a room of the site (kiln, loft), was \"attic\"",
                "--room loft | error: --room: must have a door or window to outdoors, loft has none",
                "--from 2027-01-05 | error: --from: must be a day of the run, 9 Nov 2026 to 30 Nov 2026, was 5 Jan 2027",
                "--from 2026-11-28 --days 5 | error: --days: must end within the run, on 30 Nov 2026 at the latest",
                "--days 8 | error: --days: must be 1 to 7, was 8",
                "--days 0 | error: --days: must be 1 to 7, was 0",
                "--temperature-error -1 | error: --temperature-error: must be 0 to 5 K, was -1.0",
                "--humidity-error NaN | error: --humidity-error: must be 0 to 20 percent, was NaN",
                "--humidity-error -3 | error: --humidity-error: must be 0 to 20 percent, was -3.0",
                "--from yesterday | error: Invalid value for option '--from'"
            })
    void badInput_isToldInOneLine(String options, String told) throws IOException {
        int code = doors(kiln(), options.split(" ", -1));

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertTrue(err.toString().startsWith(told), err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void forecast_thatDoesNotCoverTheDays_isRefused() throws IOException {
        Path file = forecast("2026-11-16T05:00", 20, 5.0, 80);

        int code = doors(kiln(), "--forecast", file.toString(), "--days", "2");

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertTrue(
                err.toString()
                        .startsWith("error: --forecast: must cover the days, 6:00 on 16 Nov 2026 to 20:00 on 17 Nov"),
                err.toString());
    }

    @Test
    void forecast_thatIsNotThere_isToldByItsName() throws IOException {
        int code = doors(kiln(), "--forecast", temp.resolve("none.csv").toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertTrue(err.toString().contains("none.csv"), err.toString());
    }
}
