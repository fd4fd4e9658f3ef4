package org.limedry.cli.starter;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.Starter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code limedry new FILE}. */
@Command(name = "new", description = "Write a site file for one room to start from; it runs as it is.")
public final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The file to write; one that is there already is left alone.")
    private Path file;

    @Override
    public Integer call() throws IOException {
        try {
            Files.writeString(file, Starter.text(), StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw bad("it is there already", "must be a new file: nothing is written over");
        } catch (NoSuchFileException e) {
            throw bad("there is no such folder", "must be a file in a folder that is there");
        }
        spec.commandLine().getOut().println("Wrote " + file + ": one room, invented. Change it to yours, then:");
        spec.commandLine().getOut().println("limedry run " + file + " --out out");
        spec.commandLine()
                .getOut()
                .println(Situation.withoutSite().advising(Advised.TOUCH).line());
        return ExitCode.DONE.code();
    }

    private BadInputException bad(String found, String rule) {
        return new BadInputException(List.of(new InputProblem(file.toString(), 0, "", rule, found)));
    }
}
