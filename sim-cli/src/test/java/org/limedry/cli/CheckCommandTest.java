package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code limedry check} on single cases; all of them are run by the test of the pages. */
class CheckCommandTest {
    private record Ran(int code, List<String> out, List<String> err) {}

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Ran(
                code, out.toString().lines().toList(), err.toString().lines().toList());
    }

    @Test
    void check_ofACaseThatIsMet_endsWith0() {
        Ran ran = run("check", "HAMSTAD_BM2");

        assertEquals(0, ran.code());
        assertTrue(ran.out().get(1).startsWith("HAMSTAD_BM2, ordinary grid"), ran.out()::toString);
        assertTrue(ran.out().get(2).startsWith("HAMSTAD_BM2, half cells"), ran.out()::toString);
        assertTrue(
                ran.out().get(ran.out().size() - 2).startsWith("140 figures of 1 cases: 140 in, 0 outside"),
                ran.out()::toString);
    }

    // PRACTICE: T7 is known to fall short; see its proof.
    @Test
    void check_ofACaseThatFallsShort_showsTheFigureAndEndsWith1() {
        Ran ran = run("check", "T7", "T8");

        assertEquals(1, ran.code());
        List<String> outside =
                ran.out().stream().filter(line -> line.startsWith("T7 | ")).toList();
        assertEquals(1, outside.size());
        List<String> cells = List.of(outside.get(0).split(" \\| ", -1));
        assertEquals(11, cells.size());
        assertEquals("10 mm NHL 3.5 on damp brick, 15 C/70 %: until the next coat", cells.get(2));
        assertTrue(cells.get(3).startsWith("PUBLISHED: "), cells.get(3));
        assertEquals(
                List.of("4", "+-1", "days", "OUTSIDE"),
                List.of(cells.get(4), cells.get(7), cells.get(8), cells.get(9)));
    }

    // PUBLISHED: psychro/worked_examples has two slips in its sources.
    @Test
    void check_ofATableWithMisprints_showsThemAndEndsWith0() {
        Ran ran = run("check", "worked_examples");

        assertEquals(0, ran.code());
        assertEquals(
                2,
                ran.out().stream()
                        .filter(line -> line.contains("outside, source in error") && line.contains("SLIP IN SOURCE"))
                        .count());
    }

    // EXACT: psychro/iapws_checkpoints has eight rows.
    @Test
    void check_all_printsEveryFigureWithTheReasonOfItsTolerance() {
        Ran ran = run("check", "--all", "iapws_checkpoints");

        assertEquals(0, ran.code());
        List<String> figures = ran.out().stream()
                .filter(line -> line.startsWith("iapws_checkpoints | "))
                .toList();
        assertEquals(8, figures.size());
        assertTrue(figures.get(0).contains("psychro/iapws_checkpoints line 7 |"), figures.get(0));
        assertTrue(figures.get(0).endsWith("| in | the exponent 1/300 is kept to 12 digits"), figures.get(0));
    }

    @Test
    void check_csv_holdsEveryFigureInFullPrecision(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("figures.csv");

        Ran ran = run("check", "T14", "--csv", file.toString());

        assertEquals(0, ran.code());
        List<String> lines = Files.readAllLines(file);
        assertEquals(
                "case,part,quantity,unit,label,source,expected,found,difference,acceptedBelow,acceptedAbove,"
                        + "shareOfAccepted,reason,verdict,why",
                lines.get(0));
        assertEquals(2, lines.size());
        // EXACT: 4 * 18.015 / 44.097 / 12.8 = 0.12766599...
        assertTrue(lines.get(1).contains(",0.12766599"), lines.get(1));
    }

    // PINNED: 55 cases are shipped.
    @Test
    void check_list_namesEveryCaseAndRunsNothing() {
        Ran ran = run("check", "--list");

        assertEquals(0, ran.code());
        assertEquals(55, ran.out().size());
        assertTrue(ran.out().get(0).startsWith("sat_computed: "), ran.out().get(0));
        assertTrue(ran.out().get(54).startsWith("T20: "), ran.out().get(54));
    }

    // EXACT: two wrong names and --pages, and the line that tells of --help.
    @Test
    void check_ofUnknownCases_namesThemAllAndEndsWith2(@TempDir Path folder) {
        Ran ran = run("check", "HEET", "T99", "--pages", folder.toString());

        assertEquals(2, ran.code());
        assertEquals(List.of(), ran.out());
        assertEquals(4, ran.err().size());
        assertTrue(ran.err().get(0).contains("HEET"), ran.err().get(0));
        assertTrue(ran.err().get(1).contains("T99"), ran.err().get(1));
        assertTrue(ran.err().get(2).contains("--pages"), ran.err().get(2));
        assertFalse(Files.exists(folder.resolve("validation.md")));
    }
}
