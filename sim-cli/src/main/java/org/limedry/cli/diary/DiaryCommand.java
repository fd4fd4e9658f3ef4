package org.limedry.cli.diary;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.page.OutputFolder;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.DiaryFile;
import org.limedry.cli.readings.diary.DiaryForm;
import org.limedry.cli.readings.diary.DiaryPlaces;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code limedry diary}. */
@Command(
        name = "diary",
        description = "Print the blank site diary, or check a filled one.",
        footer = {
            "",
            "limedry diary site.yaml --out out > diary.csv    a form to save, and one to print",
            "limedry diary site.yaml --check diary.csv        bad lines, gaps, totals",
            "A form is never written over a diary that you keep: it is printed, you save it."
        })
public final class DiaryCommand implements Callable<Integer> {
    private static final String PAGE = "diary.html";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Parameters(paramLabel = "SITE", arity = "0..1", description = "Site file whose doors, walls and rooms are named.")
    private @Nullable Path site;

    @Option(names = "--check", paramLabel = "FILE", description = "The diary to check.")
    private @Nullable Path check;

    @Option(
            names = "--from",
            paramLabel = "DATE",
            description = "First day of the form, such as 2026-11-09. Default: the first day of the site file.")
    private @Nullable LocalDate from;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for diary.html: four weeks on one A4 page.")
    private @Nullable Path out;

    @Override
    public Integer call() throws IOException {
        Optional<Site> read = site == null ? Optional.empty() : Optional.of(read(site));
        DiaryPlaces places = read.map(Site::diaryPlaces).orElseGet(DiaryPlaces::any);
        if (check != null) {
            return check(check, places, read).code();
        }
        LocalDate first = from != null
                ? from
                : read.map(known -> known.from().atZone(known.zone()).toLocalDate())
                        .orElseThrow(() -> new ParameterException(
                                spec.commandLine(), "--from: needed where no site file says the first day"));
        PrintWriter answer = spec.commandLine().getOut();
        DiaryForm.lines(places, first).forEach(answer::println);
        if (out != null) {
            try (OutputFolder folder = OutputFolder.open(out, List.of(Path.of(PAGE)))) {
                Files.writeString(folder.aside().resolve(PAGE), DiaryPage.of(places, first));
                folder.publish();
            }
        }
        return ExitCode.DONE.code();
    }

    private static Site read(Path file) {
        SiteReader.Result result = SiteReader.readAlone(file);
        if (result instanceof SiteReader.Bad bad) {
            throw new BadInputException(bad.problems());
        }
        return ((SiteReader.Good) result).site();
    }

    /** Tells the totals of what can be read even where some lines cannot. */
    private ExitCode check(Path file, DiaryPlaces places, Optional<Site> of) {
        DiaryFile diary = DiaryFile.read(file, places);
        DiaryWords.of(diary.diary()).forEach(spec.commandLine().getOut()::println);
        spec.commandLine()
                .getOut()
                .println(of.map(Situation::at)
                        .orElseGet(Situation::withoutSite)
                        .advising(Advised.TOUCH)
                        .line());
        List<InputProblem> problems = new ArrayList<>(diary.problems());
        of.ifPresent(known -> problems.addAll(known.doubts(diary.diary(), file.toString())));
        problems.stream()
                .sorted(Comparator.comparing(InputProblem::line))
                .map(InputProblem::text)
                .forEach(spec.commandLine().getErr()::println);
        return problems.isEmpty() ? ExitCode.DONE : ExitCode.BAD_INPUT;
    }
}
