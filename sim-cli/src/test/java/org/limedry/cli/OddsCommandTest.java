package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code limedry odds} as a user calls it. */
final class OddsCommandTest {
    private static final String SUMMER = "../docs/examples/summer-room.yaml";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    // EXACT: the order of the dates, and the same seed gives the same figures to the byte.
    @Test
    void odds_ofTheSummerRoom_areInOrderAndReproducible(@TempDir Path folder) throws IOException {
        int code =
                run("odds", SUMMER, "--runs", "32", "--out", folder.resolve("a").toString());
        run("odds", SUMMER, "--runs", "32", "--out", folder.resolve("b").toString());

        assertEquals(0, code, err.toString());
        String json = Files.readString(folder.resolve("a/odds.json"));
        assertEquals(json, Files.readString(folder.resolve("b/odds.json")));
        JsonNode coat = new ObjectMapper().readTree(json).get("coats").get(1);
        LocalDate early = LocalDate.parse(coat.get("oneInFive").asText());
        LocalDate middle = LocalDate.parse(coat.get("median").asText());
        LocalDate late = LocalDate.parse(coat.get("fourInFive").asText());
        assertTrue(!middle.isBefore(early) && !late.isBefore(middle), json);
        assertTrue(out.toString().contains("odds of 32 runs"), out.toString());
        assertTrue(Files.readString(folder.resolve("a/odds.html")).contains("invented scenario"));
    }

    @Test
    void odds_ofTooFewRuns_areRefused() {
        assertEquals(2, run("odds", SUMMER, "--runs", "31"));
        assertTrue(err.toString().contains("--runs: must be 32 to 1000, was 31"), err.toString());
    }

    @Test
    void odds_ofAFileThatIsNotThere_areRefused() {
        assertEquals(2, run("odds", "no-such.yaml"));
        assertTrue(err.toString().contains("no-such.yaml"), err.toString());
    }
}
