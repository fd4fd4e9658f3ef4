package org.limedry.cli.verify;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.RunProgress;
import org.limedry.cli.page.OutputFolder;
import org.limedry.cli.page.WholeFile;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.safety.Situation;
import org.limedry.proof.Proofs;
import org.limedry.proof.figure.Proof;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code limedry check}: the library against tables, benchmarks and the trade. */
@Command(
        name = "check",
        description = "Run every published table, benchmark and saying of the trade that is shipped.",
        footer = {
            "",
            "Prints a line for each case and then every figure that is not in: case, part,",
            "quantity, source, expected, found, difference, accepted, unit, verdict and why.",
            "Ends with 1 if any figure falls short or a case fails to run. Rows of a source that",
            "no correct formula meets (misprints) are shown and do not count."
        })
public final class CheckCommand implements Callable<Integer> {
    private static final double NANOS_PER_SECOND = 1.0e9;

    private final Supplier<List<Proof>> shipped;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", arity = "0..*", description = "Cases to run, as --list names them. Default: all.")
    private List<String> cases = List.of();

    @Option(names = "--list", description = "List the cases and run nothing.")
    private boolean list;

    @Option(names = "--all", description = "Print every figure, some 50,000 lines.")
    private boolean all;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write every figure into FILE, in full precision.")
    private @Nullable Path csv;

    @Option(
            names = "--pages",
            paramLabel = "DIR",
            description = "Write validation.md and trade-checks.md with their charts into DIR; needs all cases.")
    private @Nullable Path pages;

    /** Checks everything that is shipped. */
    public CheckCommand() {
        this(Proofs::all);
    }

    CheckCommand(Supplier<List<Proof>> shipped) {
        this.shipped = shipped;
    }

    @Override
    public Integer call() throws IOException {
        List<Proof> proofs = chosen();
        PrintWriter answer = spec.commandLine().getOut();
        if (list) {
            proofs.forEach(proof -> answer.println(proof.name() + ": " + proof.setUp()));
            return ExitCode.DONE.code();
        }
        long started = System.nanoTime();
        List<CaseRun> runs = run(proofs);
        double seconds = (System.nanoTime() - started) / NANOS_PER_SECOND;
        if (csv != null) {
            WholeFile.write(csv, "--csv", out -> out.write(CheckCsv.of(runs).text()));
        }
        boolean allRan = runs.stream().allMatch(run -> run.failure().isEmpty());
        if (pages != null && allRan) {
            writePages(runs, pages);
        }
        List<String> first = all ? CheckLines.everything(runs) : CheckLines.table(runs);
        first.forEach(answer::println);
        if (!all) {
            CheckLines.outside(runs).forEach(answer::println);
        }
        answer.println();
        answer.println(CheckLines.sum(runs, seconds));
        if (pages != null && !allRan) {
            answer.println("The pages were not written: they need every case.");
        }
        answer.println(Situation.withoutSite().line());
        return (runs.stream().allMatch(CaseRun::isMet) ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private List<Proof> chosen() {
        List<Proof> every = shipped.get();
        List<InputProblem> problems = new ArrayList<>();
        for (String name : cases) {
            if (every.stream().noneMatch(proof -> proof.name().equals(name))) {
                problems.add(new InputProblem("command line", 0, "CASE", "must be a case that --list names", name));
            }
        }
        if (pages != null && !cases.isEmpty()) {
            problems.add(new InputProblem("command line", 0, "--pages", "must be without CASE", "some cases only"));
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        return cases.isEmpty()
                ? every
                : every.stream().filter(proof -> cases.contains(proof.name())).toList();
    }

    private static List<CaseRun> run(List<Proof> proofs) {
        try (RunProgress progress = RunProgress.ofCases(proofs.size())) {
            return CaseRun.all(proofs, Runtime.getRuntime().availableProcessors(), progress::step);
        }
    }

    private static void writePages(List<CaseRun> runs, Path directory) throws IOException {
        Map<String, String> files = EvidencePages.all(runs);
        List<Path> names = files.keySet().stream().map(Path::of).toList();
        try (OutputFolder folder = OutputFolder.open(directory, names)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path place = folder.aside().resolve(file.getKey());
                Files.createDirectories(place.toAbsolutePath().getParent());
                Files.writeString(place, file.getValue(), StandardCharsets.UTF_8);
            }
            folder.publish();
        }
    }
}
