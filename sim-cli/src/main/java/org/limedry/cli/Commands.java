package org.limedry.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.limedry.cli.air.AirCommand;
import org.limedry.cli.airing.AiringCommand;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.delay.DelayCommand;
import org.limedry.cli.diary.DiaryCommand;
import org.limedry.cli.doors.DoorsCommand;
import org.limedry.cli.fit.FitCommand;
import org.limedry.cli.handover.HandoverCommand;
import org.limedry.cli.loggers.ReadingsCommand;
import org.limedry.cli.odds.OddsCommand;
import org.limedry.cli.options.OptionsCommand;
import org.limedry.cli.programme.ProgrammeCommand;
import org.limedry.cli.report.RunCommand;
import org.limedry.cli.schema.SchemaCommand;
import org.limedry.cli.seasons.SeasonsCommand;
import org.limedry.cli.starter.NewCommand;
import org.limedry.cli.verify.CheckCommand;
import org.limedry.cli.wallcase.WallCommand;

/**
 * The list of all commands. A new command is a class in a package of its own, annotated with picocli's {@code @Command},
 * and one entry here; the help lists them in this order.
 *
 * <p>A command returns the code of an {@link ExitCode}, writes its results to {@code spec.commandLine().getOut()} and
 * throws {@link org.limedry.cli.problem.BadInputException} for input that it cannot use.
 */
final class Commands {
    private Commands() {}

    /** Returns a new instance of each command. */
    static List<Callable<Integer>> all() {
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
