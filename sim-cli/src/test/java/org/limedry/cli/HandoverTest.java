package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code limedry handover}, on the summer example. EXACT: what the ladder and the limits promise. */
final class HandoverTest {
    private static final Path SUMMER = Path.of("..", "docs", "examples", "summer-room.yaml");

    @TempDir
    Path temp;

    @Test
    void handover_ofTheSummerRoom_writesSheetAndRecord() throws IOException {
        Path results = temp.resolve("results");

        Cli cli = Cli.run("handover", SUMMER, "--out", results);

        assertEquals(0, cli.code(), cli.err());
        assertTrue(cli.lines().size() <= 25, cli.out());
        assertTrue(cli.lines().stream().allMatch(line -> line.length() <= 80), cli.out());
        assertEquals(
                List.of(
                        "aftercare.csv",
                        "aftercare.html",
                        "care.csv",
                        "care.html",
                        "care.png",
                        "care.svg",
                        "handover.json"),
                names(results));
        JsonNode room = Cli.json(results.resolve("handover.json")).at("/aftercare/0");
        LocalDate ready = LocalDate.parse(room.get("lastCoatReady").asText());
        assertEquals(ready.toString(), room.at("/finishes/0/from").asText());
        assertEquals(ready.plusWeeks(4).toString(), room.at("/finishes/1/from").asText());
        assertEquals(ready.plusWeeks(8).toString(), room.at("/finishes/1/until").asText());
        assertEquals(ready.plusMonths(9).toString(), room.at("/finishes/2/from").asText());
        assertFalse(room.at("/finishes/3/onlyIfWallDry").asBoolean());
    }

    @Test
    void handover_aWetWall_putsVapourTightPaintOff() throws IOException {
        Path wet = Files.writeString(
                temp.resolve("wet.yaml"), Files.readString(SUMMER).replace("wetness: dry", "wetness: soaked"));
        Path results = temp.resolve("results");

        Cli.run("handover", wet, "--out", results);

        JsonNode finishes = Cli.json(results.resolve("handover.json")).at("/aftercare/0/finishes");
        assertFalse(finishes.at("/1/putOffByWetWall").asBoolean());
        assertTrue(finishes.at("/2/putOffByWetWall").asBoolean());
        assertTrue(finishes.at("/2/from").isNull(), finishes.toString());
        assertTrue(Files.readString(results.resolve("aftercare.html")).contains("Not while the wall is wet"));
    }

    // No room without heat is above 39 C all summer, and no air warms by 50 K: one spell, all of the run.
    @Test
    void handover_aLimitThatCannotBeHeld_isAnException() throws IOException {
        Path results = temp.resolve("results");

        Cli.run("handover", SUMMER, "--coldest", "39", "--driest", "0", "--warming", "50", "--out", results);

        List<String> rows = Files.readAllLines(results.resolve("care.csv"));
        assertEquals(2, rows.size(), rows.toString());
        assertTrue(rows.get(1).startsWith("parlour,airCelsius,"), rows.get(1));
        assertTrue(Files.readString(results.resolve("care.html")).contains("colder than 39 \u00b0C: 1 time"));
    }

    @ParameterizedTest
    @CsvSource({
        "--warming,0,--warming: must be 0.1 to 50",
        "--warming,NaN,--warming: must be 0.1 to 50",
        "--driest,101,--driest: must be 0 to 100",
        "--coldest,-31,--coldest: must be \u221230 to 40",
        "--members,3,--members: must be 4 to 256"
    })
    void handover_badOption_isRefused(String option, String value, String message) {
        Cli cli = Cli.run("handover", SUMMER, option, value);

        assertEquals(2, cli.code());
        assertTrue(cli.err().contains(message), cli.err());
        assertEquals("", cli.out());
    }

    @Test
    void handover_noCoats_isRefused() throws IOException {
        String text = Files.readString(SUMMER);
        Path bare = Files.writeString(
                temp.resolve("bare.yaml"),
                text.substring(0, text.indexOf("coats:")) + "coats: []\nuntil: 2027-07-31\nfrom: 2027-06-14\n");

        Cli cli = Cli.run("handover", bare);

        assertEquals(2, cli.code());
        assertTrue(cli.err().contains("coats: "), cli.err());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
