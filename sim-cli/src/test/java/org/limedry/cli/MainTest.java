package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import picocli.CommandLine.Command;

final class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void help_isPrintedAsAResult() {
        int code = Main.run(new String[] {"--help"}, new PrintWriter(out), new PrintWriter(err));

        assertEquals(ExitCode.DONE.code(), code);
        assertTrue(out.toString().startsWith("Usage: limedry "), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void version_isTheOneOfTheBuild() {
        int code = Main.run(new String[] {"--version"}, new PrintWriter(out), new PrintWriter(err));

        assertEquals(ExitCode.DONE.code(), code);
        assertTrue(out.toString().matches("limedry \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R"), out.toString());
        assertEquals("", err.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--colour", "dance", "--help=maybe", "two\nlines"})
    void badUsage_endsWithTwoAndOneLine(String commandLine) {
        String[] args = commandLine.isEmpty() ? new String[0] : new String[] {commandLine};

        int code = Main.run(args, new PrintWriter(out), new PrintWriter(err));

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertTrue(err.toString().matches("error: .+; see limedry --help\\R"), err.toString());
    }

    @Test
    void badUsageOfACommand_pointsToItsOwnHelp() {
        int code = runCommand(() -> ExitCode.DONE.code(), "--colour");

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertTrue(err.toString().matches("error: .+; see limedry act --help\\R"), err.toString());
    }

    @Test
    void badInput_endsWithTwoAndOneLineForEachProblem() {
        List<InputProblem> problems = List.of(
                new InputProblem("site.yaml", 12, "rooms.store.walls.north.areaM2", "must be 0.1 to 1000", "-11.5"),
                new InputProblem("weather.csv", 0, "", "must be a file", "this is a folder"));

        int code = runCommand(
                () -> {
                    throw new BadInputException(problems);
                },
                "--stacktrace");

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertEquals(
                List.of(
                        "site.yaml:12: rooms.store.walls.north.areaM2: -11.5; must be 0.1 to 1000",
                        "weather.csv: this is a folder; must be a file",
                        "2 problems. Nothing was run, nothing was written."),
                err.toString().lines().toList());
    }

    @Test
    void internalError_endsWithThreeAndOneLine() {
        int code = runCommand(() -> {
            throw new IllegalStateException("the sum does not close");
        });

        assertEquals(ExitCode.INTERNAL_ERROR.code(), code);
        assertEquals("", out.toString());
        assertEquals(
                List.of("internal error (please report): java.lang.IllegalStateException: the sum does not close"),
                err.toString().lines().toList());
    }

    @Test
    void internalErrorWithStackTrace_showsWhereItArose() {
        int code = runCommand(
                () -> {
                    throw new IllegalStateException("the sum does not close");
                },
                "--stacktrace");

        assertEquals(ExitCode.INTERNAL_ERROR.code(), code);
        assertTrue(err.toString().contains("at org.limedry.cli.MainTest"), err.toString());
    }

    @Test
    void exhaustedMemory_isAnInternalErrorToo() {
        int code = runCommand(() -> {
            throw new OutOfMemoryError("made up by a test");
        });

        assertEquals(ExitCode.INTERNAL_ERROR.code(), code);
        assertEquals(
                List.of("internal error (please report): java.lang.OutOfMemoryError: made up by a test"),
                err.toString().lines().toList());
    }

    @Test
    void failureToWrite_endsWithOne() {
        int code = runCommand(() -> {
            throw new IOException("no space left");
        });

        assertEquals(ExitCode.UNFINISHED.code(), code);
        assertEquals(
                List.of("error: reading or writing failed: no space left"),
                err.toString().lines().toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void codeOfACommand_isHandedToTheShell(int code) {
        assertAll(() -> assertEquals(code, runCommand(() -> code)), () -> assertEquals("", err.toString()));
    }

    private int runCommand(Callable<Integer> action, String... options) {
        String[] args = new String[options.length + 1];
        args[0] = "act";
        System.arraycopy(options, 0, args, 1, options.length);
        return Main.run(List.of(new Act(action)), args, new PrintWriter(out), new PrintWriter(err));
    }

    /** A command that does what the test says. */
    @Command(name = "act")
    private static final class Act implements Callable<Integer> {
        private final Callable<Integer> action;

        Act(Callable<Integer> action) {
            this.action = action;
        }

        @Override
        public Integer call() throws Exception {
            return action.call();
        }
    }
}
