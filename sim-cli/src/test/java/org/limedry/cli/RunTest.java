package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.report.ReportFiles;

/**
 * {@code limedry run}, from the command line to the files, on a small invented site.
 *
 * <p>EXACT: exit codes are those the command promises, counts and names are those put in by each test, and the account
 * closes to zero by its definition.
 */
final class RunTest {
    private static final String SITE = """
            site: Kiln house (invented)
            place: {weather: mullingar-2017}
            until: 2027-06-20
            rooms:
              kiln:
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                floor: boards
                openings:
                  - {name: door, widthM: 0.9, heightM: 2.0, open: "daily 08:00-18:00"}
                walls:
                  north: {areaM2: 6.0, background: old brick, thicknessMm: 220, wetness: dry}
            mixes:
              base: {lime: putty, limeParts: 1, sandParts: 3}
            coats:
              - {wall: north, mix: base, thicknessMm: 10, laid: 2027-06-10}
            """;

    /** A run of a day: no coat is ready by then. */
    private static final String SHORT = SITE.replace("until: 2027-06-20", "until: 2027-06-10");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path temp;

    private Path site;

    @BeforeEach
    void writeSite() throws IOException {
        site = Files.writeString(temp.resolve("kiln.yaml"), SITE);
    }

    @Test
    void run_ofASite_answersAndWritesItsFiles() throws IOException {
        int code = run(site, "--out", temp.resolve("results"), "--members", "4");

        assertEquals(0, code, () -> text(err));
        assertEquals(ReportFiles.names().stream().sorted().toList(), names(temp.resolve("results")));
        List<String> lines = text(out).lines().toList();
        assertEquals("Kiln house (invented), 10 Jun 2027 to 20 Jun 2027", lines.get(0));
        assertTrue(lines.get(1).startsWith("rule: green-hard        laid      earliest   LIKELY     latest"));
        assertTrue(lines.size() < 20, () -> text(out));
        JsonNode summary = new ObjectMapper()
                .readTree(temp.resolve("results").resolve("summary.json").toFile());
        assertEquals("kiln", summary.at("/coats/0/room").asText());
        assertEquals("north", summary.at("/coats/0/wall").asText());
        assertEquals(4, summary.at("/statistics/rangeRuns").asInt());
        assertEquals(0.0, summary.at("/waterAccount/residualKg").asDouble(), 1e-9); // kg; the account closes
    }

    @Test
    void quickRun_hasLikelyDatesOnly() {
        int code = run(site, "--out", temp.resolve("results"), "--quick");

        assertEquals(0, code, () -> text(err));
        assertTrue(text(out).contains("Likely dates only"), () -> text(out));
        assertFalse(text(out).contains("earliest"));
    }

    @Test
    void run_again_replacesOursAndKeepsTheirs() throws IOException {
        Path results = Files.createDirectory(temp.resolve("results"));
        Files.writeString(results.resolve("report.html"), "old");
        Files.writeString(results.resolve("photo.jpg"), "theirs");

        run(site, "--out", results, "--quick");

        assertEquals("theirs", Files.readString(results.resolve("photo.jpg")));
        assertTrue(Files.readString(results.resolve("report.html")).contains("Kiln house"));
        assertEquals(List.of("kiln.yaml", "results"), names(temp));
    }

    @Test
    void coatThatIsNotReady_endsWithOneAndSaysWhichAndWhatToSet() throws IOException {
        Files.writeString(site, SHORT);

        int code = run(site, "--out", temp.resolve("results"), "--quick");

        assertEquals(1, code);
        assertEquals(
                List.of(
                        "coats[0]: likely date lies past the run, 10 Jun 2027: no date given, not guessed",
                        "coats[0]: set until: 2027-08-10 to see it"),
                text(err).lines().toList());
        assertTrue(Files.exists(temp.resolve("results").resolve("report.html")));
    }

    @Test
    void folderOfSites_givesEachAFolderOfItsOwn() throws IOException {
        Path jobs = Files.createDirectory(temp.resolve("jobs"));
        Files.writeString(jobs.resolve("one.yaml"), SITE);
        Files.writeString(jobs.resolve("two.yml"), SHORT);
        Files.writeString(jobs.resolve("notes.txt"), "not a site");

        int code = run(jobs, "--out", temp.resolve("results"), "--quick");

        assertEquals(1, code);
        assertEquals(List.of("one", "two"), names(temp.resolve("results")));
        assertTrue(Files.exists(temp.resolve("results").resolve("two").resolve("hours.csv")));
        assertTrue(text(err).startsWith(jobs.resolve("two.yml") + ": coats[0]: "), () -> text(err));
    }

    @Test
    void oneBadFileAmongSeveral_runsAndWritesNothing() throws IOException {
        Path bad = Files.writeString(
                temp.resolve("bad.yaml"),
                SITE.replace("thicknessMm: 10", "thicknessMm: 110").replace("4.0", "-4"));
        Path missing = temp.resolve("missing.yaml");

        int code = run(site, bad, missing, "--out", temp.resolve("results"));

        assertEquals(2, code);
        assertEquals("", text(out));
        assertAll(
                () -> assertTrue(text(err).contains("bad.yaml:6: rooms.kiln.size.lengthM: -4;"), () -> text(err)),
                () -> assertTrue(text(err).contains("bad.yaml:15: coats[0].thicknessMm: 110;"), () -> text(err)),
                () -> assertTrue(text(err).contains("missing.yaml"), () -> text(err)),
                () -> assertTrue(
                        text(err).endsWith("3 problems. Nothing was run, nothing was written.\n"), () -> text(err)));
        assertFalse(Files.exists(temp.resolve("results")));
    }

    @Test
    void fileInPlaceOfTheFolder_isRefusedInOneLine() throws IOException {
        Path file = Files.writeString(temp.resolve("results"), "theirs");

        int code = run(site, "--out", file);

        assertEquals(2, code);
        assertEquals(
                List.of(
                        "--out: " + file + " is a file; must be a folder, or a name still free",
                        "1 problem. Nothing was run, nothing was written."),
                text(err).lines().toList());
        assertEquals("theirs", Files.readString(file));
    }

    @Test
    void sitesOfTheSameName_areRefused() throws IOException {
        Path other = Files.createDirectory(temp.resolve("jobs")).resolve("kiln.yml");
        Files.writeString(other, SITE);

        int code = run(site, other, "--out", temp.resolve("results"));

        assertEquals(2, code);
        assertTrue(text(err).contains("kiln.yml: named like " + site), () -> text(err));
    }

    @Test
    void folderWithoutASite_isRefused() throws IOException {
        Path empty = Files.createDirectory(temp.resolve("jobs"));

        assertEquals(2, run(empty, "--out", temp.resolve("results")));
        assertTrue(text(err).contains("a folder without any .yaml file"), () -> text(err));
    }

    @Test
    void wrongNumberOfMembers_isRefused() {
        assertEquals(2, run(site, "--out", temp.resolve("results"), "--members", "0"));
        assertTrue(text(err).contains("--members: must be 4 to 256, was 0"), () -> text(err));
    }

    @Test
    void outLeftOut_isRefused() {
        assertEquals(2, run(site));
        assertTrue(text(err).contains("--out"), () -> text(err));
    }

    private int run(Object... args) {
        String[] all = Stream.concat(Stream.of("run"), Stream.of(args).map(Object::toString))
                .toArray(String[]::new);
        return Main.run(all, stream(out), stream(err));
    }

    private static PrintWriter stream(ByteArrayOutputStream bytes) {
        return new PrintWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8), true);
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
