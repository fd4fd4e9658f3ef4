package org.limedry.cli.command;

import java.util.List;
import java.util.concurrent.Callable;

/**
 * The list of all commands. A new command is a class in this package, annotated with picocli's {@code @Command}, and one
 * entry here; the help lists them in this order.
 *
 * <p>A command returns the code of an {@link ExitCode}, writes its results to {@code spec.commandLine().getOut()} and
 * throws {@link org.limedry.cli.problem.BadInputException} for input that it cannot use.
 */
public final class Commands {
    private Commands() {}

    /** Returns a new instance of each command. */
    public static List<Callable<Integer>> all() {
        return List.of(
                new RunCommand(),
                new AiringCommand(),
                new DoorsCommand(),
                new OptionsCommand(),
                new SeasonsCommand(),
                new ProgrammeCommand(),
                new DelayCommand(),
                new OddsCommand(),
                new FitCommand(),
                new HandoverCommand(),
                new ReadingsCommand(),
                new DiaryCommand(),
                new NewCommand(),
                new AirCommand(),
                new WallCommand(),
                new CheckCommand(),
                new SchemaCommand());
    }
}
