package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.cli.Cli;

/**
 * Hand tests that cannot be, in the site file, in its diary and between the two. EXACT: which are refused follows from the days
 * and coats put in. PINNED: our own words.
 */
final class HandTestChecksTest {
    private static final String SITE = """
            site: Salt house (invented)
            place: {weather: valentia-2017}
            from: 2026-11-02
            until: 2026-12-31
            rooms:
              store:
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                openings: [{name: door, widthM: 0.9, heightM: 2.0, open: "Mon-Fri 08:00-09:00"}]
                walls:
                  north: {areaM2: 6.0, background: old brick, wetness: damp}
                  east: {areaM2: 6.0, background: old brick, wetness: damp}
            mixes:
              base: {lime: putty, sandParts: 3}
            coats:
              - {wall: north, mix: base, thicknessMm: 11, laid: 2026-11-03}
              - {wall: north, mix: base, thicknessMm: 9, laid: when ready}
              - {wall: east, mix: base, thicknessMm: 11, laid: 2026-11-05}
            handTests:
              - {wall: north, coat: 1, date: 2026-11-13, result: dents}
            """;
    private static final String DIARY = "readings: {diary: diary.csv}\n";

    @TempDir
    Path folder;

    private static String problems(String handTests) {
        return Examples.problems(SITE + handTests);
    }

    private List<String> diaryProblems(String lines) throws IOException {
        Path site = Files.writeString(folder.resolve("site.yaml"), SITE + DIARY);
        Path diary = Files.writeString(folder.resolve("diary.csv"), "date;hand tests\n" + lines);
        List<String> read = bare(Examples.texts(SiteReader.read(site)));
        Cli check = Cli.run("diary", site, "--check", diary);
        assertEquals(read.isEmpty() ? 0 : 2, check.code(), check.err());
        assertEquals(read, bare(check.err()), "every reader of the site and diary --check say the same");
        return read;
    }

    private List<String> bare(String problems) {
        return problems.lines()
                .map(line -> line.replace(folder + File.separator, ""))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "coat: 3, date: 2026-11-20|site.yaml:20: handTests[1].coat: 3; there are 2 coats on that wall",
                "coat: 1, date: 2026-11-02|site.yaml:20: handTests[1].date: 2026-11-02; that coat is not laid before 2026-11-03",
                "coat: 2, date: 2026-11-03|site.yaml:20: handTests[1].date: 2026-11-03; that coat is not laid before 2026-11-04",
                "coat: 1, date: 2027-01-01|site.yaml:20: handTests[1].date: 2027-01-01; must be in the run, 2026-11-02 to 2026-12-31",
            })
    void file_impossibleTest_isOneProblem(String test, String problem) {
        assertEquals(problem, problems("  - {wall: north, " + test + ", result: dents}\n"));
    }

    @Test
    void file_dentsOnOrAfterReady_namesBothPlaces() {
        assertEquals(
                "site.yaml:19: handTests[0].result: dents on 2026-11-13; must agree with hard on 2026-11-06 (site.yaml:20), "
                        + "nail not knuckle on 2026-11-13 (site.yaml:21): strike out the wrong one",
                problems("""
                      - {wall: north, coat: 1, date: 2026-11-06, result: hard}
                      - {wall: north, coat: 1, date: 2026-11-13, result: nail not knuckle}
                    """));
    }

    // The day of laying is no day before it, and another wall or coat says nothing.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-03;north dents\n2026-11-05;east dents\n",
                "2026-11-06;east 1 hard\n2026-11-20;north 1 hard\n2026-11-21;north 2 dents\n",
                "2026-12-31;north 1 nail not knuckle\n2027-03-01;\n"
            })
    void diary_testsThatCanBe_areTaken(String lines) throws IOException {
        assertEquals(List.of(), diaryProblems(lines));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-11-20;east 2 dents|diary.csv:2: hand tests: store east, coat 2; there is 1 coat on that wall",
                "2026-11-04;east dents|diary.csv:2: hand tests: store east, coat 1: 2026-11-04; that coat is not laid before 2026-11-05",
                "2027-02-01;east dents|diary.csv:2: hand tests: store east, coat 1: 2027-02-01; must be in the run, 2026-11-02 to 2026-12-31",
                "2026-11-06;east hard, east dents|diary.csv:2: hand tests: store east, coat 1: dents on 2026-11-06; must agree with hard on 2026-11-06 (diary.csv:2): strike out the wrong one",
                "2026-11-13;north hard|diary.csv:2: hand tests: store north, coat 1: hard on 2026-11-13; must agree with dents on 2026-11-13 (site.yaml:19): strike out the wrong one",
            })
    void diary_impossibleTest_isOneProblem(String line, String problem) throws IOException {
        assertEquals(List.of(problem), diaryProblems(line + "\n"));
    }

    @Test
    void diary_everythingWrongWithIt_isToldAtOnce() throws IOException {
        List<String> found =
                diaryProblems("2026-11-06;east hard\n2026-11-13;east dents, north 9 hard\n2026-11-20;east dents\n");

        assertEquals(
                List.of(
                        "diary.csv:3: hand tests: store north, coat 9; there are 2 coats on that wall",
                        "diary.csv:3: hand tests: store east, coat 1: dents on 2026-11-13; must agree with hard on 2026-11-06 (diary.csv:2): strike out the wrong one",
                        "diary.csv:4: hand tests: store east, coat 1: dents on 2026-11-20; must agree with hard on 2026-11-06 (diary.csv:2): strike out the wrong one"),
                found);
    }
}
