package org.limedry.cli.wallcase;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.RunProgress;
import org.limedry.cli.page.OutputFolder;
import org.limedry.cli.safety.Situation;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code limedry wall CASE --out DIR}. */
@Command(
        name = "wall",
        description = "One wall of your own material tables between given climates: test our numbers.",
        footer = {
            "",
            "Writes profiles.csv, layers.csv, faces.csv and summary.json into DIR; positive is into the",
            "wall. The case file is described in docs/wall-case.md; limedry schema --wall prints its form."
        })
public final class WallCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", description = "The case file; its tables lie beside it.")
    private Path file;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Folder for the results; made if need be.")
    private Path out;

    @Override
    public Integer call() throws IOException {
        WallCase wallCase = CaseReader.read(file);
        CaseResult result;
        try (OutputFolder folder = OutputFolder.open(out, CaseFiles.names())) {
            try (RunProgress progress = new RunProgress(CaseResult.hoursOfBoth(wallCase))) {
                result = CaseResult.of(wallCase, progress.ofARun());
            }
            CaseFiles.write(result, String.join(" ", spec.root().version()), folder.aside());
            folder.publish();
        }
        CaseAnswer.lines(result, file.toString(), out.toString())
                .forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().println(Situation.withoutSite().line());
        if (!result.isComplete()) {
            spec.commandLine().getErr().println(CaseAnswer.gaveUp(result, file.toString()));
        }
        return (result.isComplete() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }
}
