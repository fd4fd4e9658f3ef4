package org.limedry.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** Entry point: runs one command and turns every way of ending into an exit code. */
public final class Main {
    /** Libraries that write PDF files tell of their cache of fonts at the first run; held, or the setting would be lost. */
    private static final List<Logger> CHATTY =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    private final RootCommand root = new RootCommand();
    private final PrintWriter err;
    private final CommandLine commandLine;

    private Main(List<? extends Callable<Integer>> commands, PrintWriter out, PrintWriter err) {
        this.err = err;
        commandLine = new CommandLine(root);
        commands.forEach(commandLine::addSubcommand);
        commandLine.registerConverter(LocalDate.class, Main::date);
        commandLine.setOut(out);
        commandLine.setErr(err);
        commandLine.setParameterExceptionHandler((e, args) -> badUsage(e));
        commandLine.setExecutionExceptionHandler((e, command, parsed) -> failed(e));
    }

    /** Runs the command line of the process and ends the process. */
    public static void main(String[] args) {
        // Charts are drawn into files; no display is needed or wanted.
        System.setProperty("java.awt.headless", "true");
        CHATTY.forEach(library -> library.setLevel(Level.SEVERE));
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(args, out, err));
    }

    /**
     * Runs one command.
     *
     * @param args the command line
     * @param out where results go
     * @param err where problems go, one line each
     * @return the exit code, see {@link ExitCode}
     */
    static int run(String[] args, PrintWriter out, PrintWriter err) {
        return run(Commands.all(), args, out, err);
    }

    /** Runs one command out of those given. */
    static int run(List<? extends Callable<Integer>> commands, String[] args, PrintWriter out, PrintWriter err) {
        Main main = new Main(commands, out, err);
        try {
            return main.commandLine.execute(args);
        } catch (Throwable e) { // memory or stack exhausted: picocli hands on exceptions, not errors
            return main.internalError(e);
        } finally {
            out.flush();
            err.flush();
        }
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException("\"" + text + "\" is no day; must be a day such as 2026-11-09");
        }
    }

    private int badUsage(ParameterException e) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        String problem = String.valueOf(e.getMessage()).strip().replaceAll("\\s*\\R\\s*", " ");
        err.println("error: " + problem + "; see " + command + " --help");
        return ExitCode.BAD_INPUT.code();
    }

    private int failed(Exception e) {
        if (e instanceof BadInputException bad) {
            List<InputProblem> problems = bad.problems();
            problems.stream().map(InputProblem::text).forEach(err::println);
            String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
            err.println(count + ". Nothing was run, nothing was written.");
            return ExitCode.BAD_INPUT.code();
        }
        if (e instanceof IOException || e instanceof UncheckedIOException) {
            err.println("error: reading or writing failed: " + e.getMessage());
            showStackTrace(e);
            return ExitCode.UNFINISHED.code();
        }
        return internalError(e);
    }

    private int internalError(Throwable e) {
        err.println("internal error (please report): " + e);
        showStackTrace(e);
        return ExitCode.INTERNAL_ERROR.code();
    }

    private void showStackTrace(Throwable e) {
        if (root.wantsStackTrace()) {
            e.printStackTrace(err);
        }
    }
}
