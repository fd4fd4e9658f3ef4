package org.limedry.cli.seasons;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.job.Job;
import org.limedry.cli.job.JobBasis;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.Uncertain;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry seasons SITE}. */
@Command(
        name = "seasons",
        description = "The same job begun in each month, or on days of your own: weeks, risks, heat.",
        footer = {
            "",
            "Dates of plant, doors and coats move along with the start, which keeps its day of the week.",
            "With --out writes seasons.html, .svg, .png, .csv, .json and programmes.svg, .png, .csv."
        })
public final class SeasonsCommand implements Callable<Integer> {
    private static final int MOST_STARTS = 24;

    @Mixin
    private final Question question = new Question();

    @Option(
            names = "--start",
            paramLabel = "DATE",
            description = "Begin on this day instead of in each month; may be given several times.")
    private List<String> starts = List.of();

    @Option(
            names = "--compare",
            paramLabel = "DATE,DATE",
            split = ",",
            description = "The two starts to show in full; ordinarily the quickest and the slowest.")
    private List<String> compare = List.of();

    /** A start with its site. */
    private record Way(Start start, Site site) {
        /** Unknowns that this season's weather does not allow stay at their likely values. */
        Scenario scenario(Draw draw) {
            Set<String> keys = site.uncertain().stream().map(Uncertain::key).collect(Collectors.toSet());
            return site.programme(draw.of(keys));
        }
    }

    @Override
    public Integer call() throws IOException {
        Site site = question.site();
        Starts days = new Starts(site.firstLaid());
        List<LocalDate> asked = dates("--start", starts, days);
        List<LocalDate> compared = dates("--compare", compare, days);
        if (compared.size() != 0 && compared.size() != 2) {
            throw question.refused("--compare: must be two dates, DATE,DATE, was " + String.join(",", compare));
        }
        List<String> left = new ArrayList<>();
        List<Way> ways = ways(site, days.all(asked, compared), left);
        if (ways.isEmpty() || (!left.isEmpty() && !(asked.isEmpty() && compared.isEmpty()))) {
            throw question.refused("weather: " + site.weatherName()
                    + " must reach from the start on for as long as the run in the file," + " does not for a start "
                    + String.join(", ", left));
        }
        Ensemble ensemble = question.ensemble(site);
        List<Begun> all = run(ensemble, ways);
        SeasonsAnswer answer = new SeasonsAnswer(
                all,
                Begun.pair(all, compared, days),
                left,
                question.foot(site, basis(site, ensemble.draws().size()), List.of()));
        question.tell(answer.lines(), answer.files());
        answer.unfinished()
                .forEach(start -> question.warn("seasons: not ready for a start " + start
                        + ", the end of its run: no number given, not guessed"));
        return (answer.unfinished().isEmpty() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private List<LocalDate> dates(String option, List<String> texts, Starts days) {
        List<LocalDate> dates = new ArrayList<>();
        for (String text : texts) {
            LocalDate date = date(option, text.strip());
            if (!days.isWithinAYear(date)) {
                throw question.refused(
                        option + ": must be within a year of the start in the file, " + days.first() + ", was " + date);
            }
            dates.add(date);
        }
        if (dates.size() > MOST_STARTS) {
            throw question.refused(option + ": must be at most " + MOST_STARTS + " days, was " + dates.size());
        }
        return dates;
    }

    private LocalDate date(String option, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw question.refused(option + ": must be a date such as 2027-05-03, was \"" + text + "\"");
        }
    }

    /** Returns a way for each start that the weather reaches; adds the others to {@code left}. */
    private static List<Way> ways(Site site, List<Start> starts, List<String> left) {
        List<Way> ways = new ArrayList<>();
        for (Start start : starts) {
            Optional<Site> there = Job.longest(site, start.movedDays());
            there.ifPresentOrElse(moved -> ways.add(new Way(start, moved)), () -> left.add(start.words()));
        }
        return ways;
    }

    private List<Begun> run(Ensemble ensemble, List<Way> ways) {
        List<Function<Draw, Scenario>> scenarios = new ArrayList<>();
        ways.forEach(way -> scenarios.add(way::scenario));
        List<EnsembleResult> results = question.run(ensemble, scenarios, Simulation.Until.ALL_READY);
        List<Begun> all = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            all.add(Begun.of(ways.get(i).start(), Job.of(ways.get(i).site(), results.get(i))));
        }
        return all;
    }

    private static List<String> basis(Site site, int members) {
        List<String> basis = new ArrayList<>();
        basis.add(
                "It is the same job: dates of plant, doors and coats move along with the start, which keeps its day of"
                        + " the week. One weather year: the numbers show what this year does to each start, not the climate"
                        + (members == 0
                                ? "; a start a week later may find other weather."
                                : "; the ranges take starts up to 21 days earlier and later among what cannot be known."));
        basis.add(
                "Frost nights, noon to noon, count both lines: air below 0 \u00b0C over young work, and a wet face below"
                        + " 0 \u00b0C under warmer air. Wet hours: dew point of the room air at or above the face, on the plastered"
                        + " wall that has most. Sucked back: condensed and drunk by walls and plaster, whole site. Days to mist: a"
                        + " young coat lost more than lime can give. Heat: what the heaters of the file gave. All for the likely"
                        + " run, until the last coat is ready.");
        basis.addAll(JobBasis.of(site, members));
        return basis;
    }
}
