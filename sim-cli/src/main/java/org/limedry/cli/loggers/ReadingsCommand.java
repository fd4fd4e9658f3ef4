package org.limedry.cli.loggers;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.logger.Asked;
import org.limedry.cli.readings.logger.ClockWords;
import org.limedry.cli.readings.logger.InsideOutside;
import org.limedry.cli.readings.logger.Joined;
import org.limedry.cli.readings.logger.LoggerFile;
import org.limedry.cli.readings.logger.PlanFile;
import org.limedry.cli.readings.logger.SideBySide;
import org.limedry.cli.safety.Situation;
import org.limedry.climate.SensorError;
import org.limedry.units.Units;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code limedry readings FILE...}. */
@Command(
        name = "readings",
        description = "Look at the file of a logger or a forecast: how it is understood, what is wrong with it.",
        footer = {
            "",
            "What is not said is proposed from the file and printed. A reading plan beside the",
            "file (store.csv: store.plan.yaml) says it once for good; options overrule it.",
            "Nothing is mended in silence, and one bad line does not lose the file.",
            "With --out: NAME-clean.csv (times UTC), NAME-hourly.csv (weather for a site file),",
            "NAME-found.csv (each line with something wrong) and a chart."
        })
public final class ReadingsCommand implements Callable<Integer> {
    private static final double MOST_SECONDS = 86_400;
    private static final double MOST_ERROR_K = 5;
    private static final double MOST_ERROR_PERCENT = 20;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Logger files: CSV of any make.")
    private List<Path> paths = List.of();

    @Mixin
    private final PlanOptions options = new PlanOptions();

    @Option(names = "--plan", paramLabel = "FILE", description = "A reading plan that lies elsewhere.")
    private @Nullable Path plan;

    @Option(names = "--write-plan", description = "Write the reading plan beside each file that has none.")
    private boolean writePlan;

    @ArgGroup
    private Together together = new Together();

    @Option(
            names = "--tolerance",
            paramLabel = "SECONDS",
            defaultValue = "120",
            description = "How far apart two readings may be to be of one time. Default ${DEFAULT-VALUE}.")
    private long toleranceSeconds;

    @Option(
            names = "--temperature-error",
            paramLabel = "K",
            defaultValue = "0.5",
            description = "Error of one sensor, for --inside-outside. Default ${DEFAULT-VALUE}.")
    private double temperatureErrorK;

    @Option(
            names = "--humidity-error",
            paramLabel = "PERCENT",
            defaultValue = "3",
            description = "The same for humidity. Default ${DEFAULT-VALUE}.")
    private double humidityErrorPercent;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for clean figures and charts.")
    private @Nullable Path out;

    /** What several files have to do with each other. */
    private static final class Together {
        @Option(names = "--join", description = "The files are of one logger: put them together.")
        private boolean join;

        @Option(names = "--side-by-side", description = "Two loggers lay beside each other: compare them.")
        private boolean sideBySide;

        @Option(names = "--inside-outside", description = "The first logger was in the room, the second outdoors.")
        private boolean insideOutside;
    }

    @Override
    public Integer call() throws IOException {
        checkOptions();
        List<LoggerFile> files = read();
        ReadingsFiles.Job job = new ReadingsFiles.Job(files, together.join ? List.of(joined(files)) : List.of());
        PrintWriter answer = spec.commandLine().getOut();
        for (LoggerFile file : files) {
            ReadingsWords.of(file).forEach(answer::println);
            answer.println();
        }
        tellTogether(files, answer);
        if (writePlan) {
            writePlans(files, answer);
        }
        if (out != null) {
            ReadingsFiles.write(job, out).forEach(answer::println);
        }
        answer.println(Situation.withoutSite().line());
        return ExitCode.DONE.code();
    }

    private void checkOptions() {
        boolean pair = together.sideBySide || together.insideOutside;
        if (pair && paths.size() != 2) {
            throw bad("two files are needed for this, were " + paths.size());
        }
        if (plan != null && paths.size() > 1) {
            throw bad("--plan: is of one file; keep a plan beside each");
        }
        checkRange("--tolerance", (double) toleranceSeconds, MOST_SECONDS);
        checkRange("--temperature-error", temperatureErrorK, MOST_ERROR_K);
        checkRange("--humidity-error", humidityErrorPercent, MOST_ERROR_PERCENT);
    }

    private void checkRange(String option, double value, double most) {
        if (!(value >= 0.0 && value <= most)) {
            throw bad(option + ": must be 0 to " + Math.round(most) + ", was " + value);
        }
    }

    private ParameterException bad(String words) {
        return new ParameterException(spec.commandLine(), words);
    }

    /** Reads every file before anything is told, so that all problems are told at once. */
    private List<LoggerFile> read() {
        List<InputProblem> problems = new ArrayList<>();
        List<LoggerFile> files = new ArrayList<>();
        for (Path path : paths) {
            LoggerFile.Result result = LoggerFile.read(path, asked(path), ZoneId.systemDefault());
            if (result instanceof LoggerFile.Good good) {
                files.add(good.file());
            } else if (result instanceof LoggerFile.Bad wrong) {
                problems.addAll(wrong.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        return files;
    }

    private Asked asked(Path path) {
        Path beside = plan != null ? plan : PlanFile.beside(path);
        Asked kept = plan != null || Files.exists(beside) ? PlanFile.read(beside) : Asked.nothing();
        return kept.with(options.asked());
    }

    private Joined joined(List<LoggerFile> files) {
        return Joined.of(files.stream().map(LoggerFile::readings).toList(), Duration.ofSeconds(toleranceSeconds));
    }

    private void tellTogether(List<LoggerFile> files, PrintWriter answer) {
        Duration tolerance = Duration.ofSeconds(toleranceSeconds);
        if (together.join) {
            Joined joined = joined(files);
            PairWords.joined(joined, toleranceSeconds).forEach(answer::println);
            ReadingsWords.summary(joined.readings(), new ClockWords(files.get(0).zone()))
                    .forEach(answer::println);
        } else if (together.sideBySide) {
            SideBySide both = SideBySide.of(
                            files.get(0).readings(), files.get(1).readings(), tolerance)
                    .orElseThrow(() -> tooFew("must be " + SideBySide.LEAST_PAIRS + " or more"));
            PairWords.sideBySide(both, files.get(0), files.get(1)).forEach(answer::println);
        } else if (together.insideOutside) {
            SensorError error = new SensorError(temperatureErrorK, Units.fractionFromPercent(humidityErrorPercent));
            InsideOutside both = InsideOutside.of(
                            files.get(0).readings(), files.get(1).readings(), tolerance, error)
                    .orElseThrow(() -> tooFew("must be 1 or more"));
            PairWords.insideOutside(both, error).forEach(answer::println);
        }
    }

    private BadInputException tooFew(String rule) {
        String found = "too few readings with temperature and humidity within " + toleranceSeconds + " s of each other";
        return new BadInputException(List.of(new InputProblem(String.valueOf(paths.get(1)), 0, "", rule, found)));
    }

    private void writePlans(List<LoggerFile> files, PrintWriter answer) throws IOException {
        for (int i = 0; i < files.size(); i++) {
            Path beside = PlanFile.beside(paths.get(i));
            try {
                Files.writeString(beside, PlanFile.text(files.get(i)), StandardOpenOption.CREATE_NEW);
                answer.println("Wrote " + beside);
            } catch (FileAlreadyExistsException e) {
                answer.println("Kept " + beside + ": it is there already, nothing is written over");
            }
        }
    }
}
