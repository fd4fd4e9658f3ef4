package org.limedry.cli.ask;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.OutputFolder;
import org.limedry.cli.page.Page;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command that asks one question of one site takes, and how it runs and tells: a mixin. */
public final class Question {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Parameters(paramLabel = "SITE", description = "The site file.")
    private Path file;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Folder for page, charts and figures; made if need be. Without it only the answer is printed.")
    private @Nullable Path out;

    @Option(names = "--ranges", description = "Also earliest and latest dates; takes about members + 1 times as long.")
    private boolean ranges;

    @Option(
            names = "--members",
            paramLabel = "N",
            defaultValue = "16",
            description = "Runs behind earliest and latest dates, 4 to 256; ordinarily ${DEFAULT-VALUE}.")
    private int members;

    /** Reads the site file, or throws with everything that is wrong with it. */
    public Site site() {
        if (members < 4 || members > 256) {
            throw new ParameterException(spec.commandLine(), "--members: must be 4 to 256, was " + members);
        }
        SiteReader.Result result = SiteReader.read(file);
        if (result instanceof SiteReader.Bad bad) {
            throw new BadInputException(bad.problems());
        }
        return ((SiteReader.Good) result).site();
    }

    /** Returns the site file as the user named it. */
    public Path file() {
        return file;
    }

    /** Returns how many members the user asked for. */
    public int members() {
        return members;
    }

    /** Tells whether earliest and latest dates are asked for. */
    public boolean wantsRanges() {
        return ranges;
    }

    /** Returns the members that the user asked for: those of the site's unknowns, or none. */
    public Ensemble ensemble(Site site) {
        return ranges && !site.uncertain().isEmpty()
                ? Ensemble.over(site.uncertain(), site.members(members))
                : Ensemble.likelyOnly();
    }

    /**
     * Runs several ways of doing a job on the same members, on the quick grid, on all cores.
     *
     * @param ensemble the members
     * @param ways each makes the scenario of a draw
     * @param until how long each run goes on
     */
    public List<EnsembleResult> run(Ensemble ensemble, List<Function<Draw, Scenario>> ways, Simulation.Until until) {
        long hours = ways.stream()
                .map(way -> way.apply(Draw.likely()))
                .mapToLong(scenario ->
                        Duration.between(scenario.from(), scenario.until()).toHours())
                .sum();
        try (RunProgress progress = new RunProgress(hours * (ensemble.draws().size() + 1))) {
            Progress told = progress.ofARun();
            return ensemble.runAll(
                    ways,
                    scenario -> Simulation.run(scenario.with(Accuracy.quick()), until, told),
                    Runtime.getRuntime().availableProcessors(),
                    (done, total) -> {});
        }
    }

    /**
     * Runs one way of doing a job until every coat is ready, on the quick grid, on all cores.
     *
     * @param ensemble the members
     * @param way makes the scenario of a draw
     */
    public EnsembleResult untilReady(Ensemble ensemble, Function<Draw, Scenario> way) {
        return run(ensemble, List.of(way), Simulation.Until.ALL_READY).get(0);
    }

    /**
     * Writes the files, if the user named a folder, and prints the answer.
     *
     * @param answer lines of any length
     * @param files what to write
     */
    public void tell(List<String> answer, Bundle files) throws IOException {
        PrintWriter printed = spec.commandLine().getOut();
        if (out == null) {
            print(answer, printed);
            return;
        }
        List<Path> names = files.names().stream().map(Path::of).toList();
        try (OutputFolder folder = OutputFolder.open(out, names)) {
            files.write(folder.aside());
            folder.publish();
        }
        print(answer, printed);
        Ascii.wrap("Wrote " + out + ": " + String.join(", ", files.names())).forEach(printed::println);
    }

    private static void print(List<String> answer, PrintWriter printed) {
        answer.stream().flatMap(line -> Ascii.wrap(line).stream()).forEach(printed::println);
    }

    /** Prints a problem that did not stop the command, or a date that is missing in the answer. */
    public void warn(String line) {
        spec.commandLine().getErr().println(line);
    }

    /** Returns a problem with what was asked: wrong use, exit code 2. */
    public ParameterException refused(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    /** Returns the foot of a page. */
    public Page.Foot foot(Site site, List<String> basis, List<String> limits) {
        return new Page.Foot(
                basis, limits, site.attribution(), String.join(" ", spec.root().version()));
    }
}
