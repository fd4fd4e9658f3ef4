package org.limedry.cli.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;
import picocli.CommandLine;

/** {@code limedry check} where a case throws: the case is shown as failed, and the rest goes on. */
final class CheckFailureTest {
    private record Made(String name, Supplier<List<Figure>> run) implements Proof {
        @Override
        public Kind kind() {
            return Kind.BENCHMARK;
        }

        @Override
        public String setUp() {
            return "made up";
        }

        @Override
        public String source() {
            return "made up";
        }

        @Override
        public String bands() {
            return "made up";
        }

        @Override
        public List<Figure> figures() {
            return run.get();
        }
    }

    private static final Proof GOOD = new Made("GOOD", () -> {
        Source source = new Source(Label.EXACT, "made up");
        Claim claim = new Claim("length", "m", source, Expected.near(3.5, 0.5), "made up", new Standing.Sound());
        return List.of(new Figure("GOOD", "ordinary grid", claim, 3.6));
    });
    private static final Proof BROKEN = new Made("BROKEN", () -> {
        throw new IllegalStateException("no such\nmaterial");
    });
    private static final Proof TOO_DEEP = new Made("TOO_DEEP", () -> {
        throw new StackOverflowError();
    });
    private static final Proof EMPTY = new Made("EMPTY", List::of);

    private record Ran(int code, List<String> out) {}

    private static Ran run(List<Proof> proofs, String... args) {
        StringWriter out = new StringWriter();
        CommandLine command = new CommandLine(new CheckCommand(() -> proofs)).setOut(new PrintWriter(out, true));
        int code = command.execute(args);
        return new Ran(code, out.toString().lines().toList());
    }

    private static long startingWith(Ran ran, String start) {
        return ran.out().stream()
                .filter(line -> line.replaceAll(" +", " ").startsWith(start))
                .count();
    }

    @Test
    void check_withCasesThatThrow_showsThemRunsTheRestAndEndsWith1() {
        Ran ran = run(List.of(BROKEN, GOOD, TOO_DEEP, EMPTY));

        assertEquals(1, ran.code());
        assertEquals(1, startingWith(ran, "BROKEN failed to run: IllegalStateException: no such material"));
        assertEquals(1, startingWith(ran, "TOO_DEEP failed to run: StackOverflowError: no message"));
        assertEquals(1, startingWith(ran, "EMPTY failed to run: it came to no figure"));
        assertEquals(1, startingWith(ran, "GOOD, ordinary grid 1 1 0 0 "));
        assertEquals(
                1,
                startingWith(
                        ran,
                        "1 figures of 4 cases: 1 in, 0 outside, 0 misprints of sources; cases that failed to run: 3;"));
    }

    @Test
    void check_all_namesTheCaseThatFailed() {
        Ran ran = run(List.of(BROKEN, GOOD), "--all");

        assertEquals(1, ran.code());
        assertEquals(1, startingWith(ran, "BROKEN | failed to run: IllegalStateException: no such material"));
        assertEquals(1, startingWith(ran, "GOOD | ordinary grid | length | "));
    }

    @Test
    void check_csv_isWrittenWithARowForTheCaseThatFailed(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("figures.csv");

        Ran ran = run(List.of(BROKEN, GOOD), "--csv", file.toString());

        assertEquals(1, ran.code());
        List<String> lines = Files.readAllLines(file);
        assertEquals(3, lines.size());
        assertEquals("BROKEN,,,,,made up,,,,,,,,failed to run,IllegalStateException: no such material", lines.get(1));
        assertTrue(lines.get(2).startsWith("GOOD,ordinary grid,length,m,EXACT,"), lines.get(2));
    }

    @Test
    void check_pages_areNotWrittenWithoutEveryCase(@TempDir Path folder) {
        Path pages = folder.resolve("pages");

        Ran ran = run(List.of(BROKEN, GOOD), "--pages", pages.toString());

        assertEquals(1, ran.code());
        assertEquals(1, startingWith(ran, "The pages were not written"));
        assertFalse(Files.exists(pages));
    }
}
