package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
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
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * {@code limedry airing}, from the command line to the files, on the demo and on the worked examples.
 *
 * <p>EXACT: exit codes, names and counts are those the command promises. What the examples find is PINNED: they stand in
 * the document of the command as what the model says, whatever that is worth.
 */
final class AiringCommandTest {
    private static final Path EXAMPLES = Path.of("..", "docs", "examples");
    private static final String DEMO = EXAMPLES.resolve("net-loft.yaml").toString();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MOST_LINES = 25;
    private static final int COLUMNS = 80;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    @Test
    void demo_oneRoom_answersInTheFirstLineAndWritesEveryFile() throws IOException {
        int code = run(DEMO, "--room", "store", "--levels", "4,fan300", "--out", folder.toString());

        assertEquals(0, code, err::toString);
        List<String> lines = out.toString().lines().toList();
        JsonNode json = JSON.readTree(folder.resolve("airing.json").toFile());
        assertAll(
                () -> assertTrue(
                        lines.get(0).startsWith("Open the yard door and window together 4 hours"), lines.get(0)),
                () -> assertTrue(lines.get(0).contains("m3/h"), lines.get(0)),
                () -> assertTrue(lines.size() <= MOST_LINES, out::toString),
                () -> assertTrue(lines.stream().allMatch(line -> line.length() <= COLUMNS), out::toString),
                () -> assertTrue(out.toString().contains("Left out of the store: electric heater."), out::toString),
                () -> assertTrue(out.toString().contains("carbon monoxide"), out::toString),
                () -> assertEquals(
                        List.of("airing.csv", "airing.html", "airing.json", "airing.png", "airing.svg"), names()),
                () -> assertEquals(6, json.path("levels").size()),
                () -> assertTrue(json.path("told").path("freshAirLowM3PerHour").asDouble()
                        < json.path("told").path("freshAirHighM3PerHour").asDouble()),
                () -> assertEquals(
                        7, Files.readAllLines(folder.resolve("airing.csv")).size()));
    }

    // More fresh air through the same door may not take longer with heat than without on the demo.
    @Test
    void demo_heatAndAir_eachMakeItSooner() throws IOException {
        run(DEMO, "--room", "store", "--levels", "8", "--out", folder.toString());

        JsonNode levels = JSON.readTree(folder.resolve("airing.json").toFile()).path("levels");
        double shutCold = levels.get(0).path("likelyDays").asDouble();
        double airedCold = levels.get(1).path("likelyDays").asDouble();
        double airedHeated = levels.get(3).path("likelyDays").asDouble();
        assertTrue(shutCold > airedCold && airedCold > airedHeated, levels::toString);
    }

    @Test
    void heatWithoutAir_isSlowerThanColdAndSaysSo() throws IOException {
        int code = run(example("heat-without-air.yaml"), "--levels", "8", "--out", folder.toString());

        assertEquals(0, code, err::toString);
        assertTrue(out.toString().contains("Heat without air makes it worse"), out::toString);
        JsonNode json = JSON.readTree(folder.resolve("airing.json").toFile());
        assertTrue(json.path("marks").path("heatMakesItWorse").asBoolean());
    }

    @Test
    void moreAirWithColdStone_isSlowerAndSaysSo() throws IOException {
        int code = run(example("summer-undercroft.yaml"), "--levels", "2,24", "--out", folder.toString());

        assertEquals(0, code, err::toString);
        assertTrue(out.toString().contains("More air, slower (no heat)"), out::toString);
        assertTrue(Files.readString(folder.resolve("airing.html")).contains("mild damp air brought"));
    }

    @Test
    void by_dayThatCanBeMet_isMet() throws IOException {
        run(DEMO, "--room", "store", "--levels", "8,12", "--by", "2026-11-20", "--out", folder.toString());

        JsonNode json = JSON.readTree(folder.resolve("airing.json").toFile());
        assertTrue(out.toString().startsWith("To be ready by 20 November: "), out::toString);
        assertTrue(json.path("inTime").asBoolean());
        assertTrue(json.path("told").path("likelyDate").asText().compareTo("2026-11-20") <= 0);
    }

    @Test
    void by_dayThatCannotBeMet_saysSoAndTellsTheSoonest() {
        int code = run(DEMO, "--room", "store", "--levels", "2", "--by", "2026-10-14");

        assertEquals(0, code);
        assertTrue(out.toString().startsWith("Not by 14 October; soonest: open the yard door"), out::toString);
    }

    @Test
    void roomWithoutOpenings_isGivenFansOnly() throws IOException {
        Path site = closedRoom();

        int code = run(site.toString());

        assertEquals(0, code, err::toString);
        assertTrue(out.toString().contains("fan 50 m3/h"), out::toString);
        assertFalse(out.toString().contains("h a day"), out::toString);
        assertEquals(2, run(site.toString(), "--levels", "4"));
        assertTrue(err.toString().contains("has no door or window to outdoors"), err::toString);
    }

    @Test
    void roomWithoutACoat_isRefused() throws IOException {
        String text = Files.readString(Path.of(DEMO)).replaceAll("  - \\{wall: (partition|south).*\\n", "");
        Path site = Files.writeString(folder.resolve("half.yaml"), text);

        assertEquals(2, run(site.toString(), "--room", "sail room"));
        assertTrue(err.toString().contains("--room: must be a room with a coat, was sail room"), err::toString);
    }

    @ParameterizedTest
    @CsvSource({
        "--room, attic, '--room: must be one of store, sail room, was attic'",
        "--by, soon, '--by: must be a date like 2026-11-20, was soon'",
        "--levels, 25, '--levels: must be door hours a day from 0 to 24, or fan and m3/h as in fan200, was 25'",
        "--levels, fan, 'was fan'",
        "--heat, 0, '--heat: must be 0.1 to 200 kW, was 0.0'",
        "--hold, 99, '--hold: must be 1 to 35 C, was 99.0'",
        "--hold, NaN, '--hold: must be 1 to 35 C, was NaN'",
        "--members, 2, '--members: must be 4 to 256, was 2'"
    })
    void badInput_isRefusedInOneLine(String option, String value, String problem) {
        int code = run(DEMO, option, value);

        assertEquals(2, code);
        assertEquals(1, err.toString().lines().count(), err::toString);
        assertTrue(err.toString().contains(problem), err::toString);
        assertEquals("", out.toString());
    }

    @Test
    void by_beforeTheFirstCoat_isRefused() {
        assertEquals(2, run(DEMO, "--room", "store", "--by", "2026-10-01"));
        assertTrue(err.toString().contains("--by: must be after 2026-10-12"), err::toString);
    }

    private Path closedRoom() throws IOException {
        String text = Files.readString(EXAMPLES.resolve("heat-without-air.yaml"))
                .replaceAll("(?m)^    openings:\\n.*\\n", "");
        return Files.writeString(folder.resolve("closed.yaml"), text.replace("wetness: wet", "wetness: dry"));
    }

    private static String example(String name) {
        return EXAMPLES.resolve(name).toString();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private int run(String... args) {
        String[] all = Stream.concat(Stream.of("airing"), Stream.of(args)).toArray(String[]::new);
        return Main.run(all, new PrintWriter(out, true), new PrintWriter(err, true));
    }
}
