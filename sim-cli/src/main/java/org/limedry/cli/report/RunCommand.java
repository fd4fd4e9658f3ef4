package org.limedry.cli.report;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.RunProgress;
import org.limedry.cli.page.OutputFolder;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code limedry run SITE... --out DIR}. */
@Command(
        name = "run",
        description = "When is each coat ready, where does the water go, what to do about it.",
        footer = {
            "",
            "Writes report.html, summary.json, hours.csv and three charts (svg, png) into DIR;",
            "other files in it stay. A forecast, not a measurement: a hand test overrules it."
        })
public final class RunCommand implements Callable<Integer> {
    private static final double NANOS_PER_SECOND = 1.0e9;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "SITE",
            arity = "1..*",
            description = "Site files, or folders of site files (each then in a folder of its own in DIR).")
    private List<Path> sites;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Folder for the report, the charts and the figures; made if need be.")
    private Path out;

    @Option(names = "--quick", description = "Likely dates only, on a coarser grid, without earliest and latest.")
    private boolean quick;

    @Option(
            names = "--members",
            paramLabel = "N",
            defaultValue = "16",
            description = "Runs behind the earliest and latest dates, 4 to 256; ordinarily ${DEFAULT-VALUE}.")
    private int members;

    /** A site file that can be run, and where its results go. */
    private record Job(Site site, SiteFiles.Job place) {}

    @Override
    public Integer call() throws IOException {
        if (members < 4 || members > 256) {
            throw new ParameterException(spec.commandLine(), "--members: must be 4 to 256, was " + members);
        }
        List<Job> jobs = read();
        List<Path> files = jobs.stream()
                .flatMap(job -> ReportFiles.names().stream().map(job.place().folder()::resolve))
                .toList();
        boolean complete = true;
        try (OutputFolder folder = OutputFolder.open(out, files)) {
            for (Job job : jobs) {
                Findings findings = findings(job.site());
                ReportFiles.write(
                        findings,
                        Files.createDirectories(
                                folder.aside().resolve(job.place().folder())));
                // Each site as soon as it is done: whatever becomes of the next, this one is there.
                folder.publish();
                complete &= tell(findings, job.place(), jobs.size() > 1);
            }
        }
        return (complete ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    /** Reads every file before any is run, so that all problems are told at once. */
    private List<Job> read() throws IOException {
        SiteFiles named = SiteFiles.of(sites);
        List<InputProblem> problems = new ArrayList<>(named.problems());
        List<Job> jobs = new ArrayList<>();
        for (SiteFiles.Job file : named.jobs()) {
            SiteReader.Result result = SiteReader.read(file.file());
            if (result instanceof SiteReader.Good good) {
                jobs.add(new Job(good.site(), file));
            } else if (result instanceof SiteReader.Bad bad) {
                problems.addAll(bad.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        return jobs;
    }

    private Findings findings(Site site) {
        long started = System.nanoTime();
        Scenario ordinary = site.scenario(Draw.likely());
        Scenario scenario = quick ? ordinary.with(Accuracy.quick()) : ordinary;
        int runs = quick ? 1 : site.members(members) + 1;
        long hours = runs * Duration.between(scenario.from(), scenario.until()).toHours();
        EnsembleResult result;
        try (RunProgress progress = new RunProgress(hours)) {
            Progress told = progress.ofARun();
            result = quick ? likelyOnly(scenario, told) : ensemble(site, told);
        }
        double seconds = (System.nanoTime() - started) / NANOS_PER_SECOND;
        String version = String.join(" ", spec.root().version());
        Effort effort = new Effort(result.members().size(), Math.toIntExact(result.membersGivenUp()), seconds, version);
        return new Findings(SiteNotesOf.site(site), scenario, result.likely(), result.coats(), effort);
    }

    private static EnsembleResult likelyOnly(Scenario scenario, Progress progress) {
        Outcome outcome = Simulation.run(scenario, progress);
        return new EnsembleResult(outcome, List.of(), List.of());
    }

    private static Scenario scenario(Site site, Draw draw) {
        Scenario scenario = site.scenario(draw);
        return draw.equals(Draw.likely()) ? scenario : scenario.with(Accuracy.quick());
    }

    private EnsembleResult ensemble(Site site, Progress progress) {
        // A site of which everything is known has dates without a spread: its one member is the likely run again.
        Ensemble ensemble = site.uncertain().isEmpty()
                ? new Ensemble(List.of(Draw.likely()))
                : Ensemble.over(site.uncertain(), site.members(members));
        int threads = Runtime.getRuntime().availableProcessors();
        return ensemble.run(
                draw -> scenario(site, draw),
                scenario -> Simulation.run(scenario, progress),
                threads,
                (done, total) -> {});
    }

    /** Prints the answer and what is missing in it; returns whether every likely date is there. */
    private boolean tell(Findings findings, SiteFiles.Job place, boolean several) {
        PrintWriter answer = spec.commandLine().getOut();
        ConsoleAnswer.lines(findings, out.resolve(place.folder()).toString()).forEach(answer::println);
        Shortfalls shortfalls = Shortfalls.of(findings);
        String file = several ? place.file() + ": " : "";
        shortfalls.lines().forEach(line -> spec.commandLine().getErr().println(file + line));
        return shortfalls.allLikelyDatesKnown();
    }
}
