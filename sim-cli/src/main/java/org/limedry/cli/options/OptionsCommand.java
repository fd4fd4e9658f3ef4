package org.limedry.cli.options;

import java.io.IOException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.options.OptionsFindings.Tried;
import org.limedry.cli.options.OptionsFindings.Wait;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteMeasure;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry options SITE}. */
@Command(
        name = "options",
        description = "The cheapest way to get a week back, at your own rates.",
        footer = {
            "",
            "Tries the measures of the file, or a usual set in the room that is ready last. Prices are yours (rates);",
            "without them measures are ranked by days. With --out: options.html, .svg, .png, .csv and .json."
        })
public final class OptionsCommand implements Callable<Integer> {
    /** Runs go on at least this long, so that what is late is still seen. */
    private static final int LEAST_DAYS = 150;

    @Mixin
    private Question question;

    @Option(
            names = "--wait-until",
            paramLabel = "DATE",
            description = "Also try to stop and begin the job on this day instead.")
    private @Nullable LocalDate waitUntil;

    @Override
    public Integer call() throws IOException {
        Site asWritten = question.site();
        long days = ChronoUnit.DAYS.between(
                asWritten.from().atZone(asWritten.zone()), asWritten.until().atZone(asWritten.zone()));
        Site site =
                days >= LEAST_DAYS ? asWritten : asWritten.lasting(LEAST_DAYS).orElse(asWritten);
        Scenario scenario = site.scenario(Draw.likely());
        if (scenario.coats().isEmpty()) {
            throw question.refused("coats: must be at least one for options, was none");
        }
        Optional<Integer> moved = movedDays(site);
        OptionsFindings findings = findings(site, scenario, moved);
        question.tell(
                OptionsAnswer.lines(findings),
                OptionsFiles.of(findings, question.foot(site, basis(findings), List.of())));
        return (findings.allReady() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private static List<String> basis(OptionsFindings findings) {
        int members = findings.base().members().size();
        String ranges = members == 0 ? "" : members + " members stand behind each range. ";
        return List.of(
                "Each measure is the job as it stands with one thing changed, from the first day of the run until the last coat is"
                        + " ready. " + ranges
                        + "Dehumidifiers count their power for every hour in which they are on. Sheets leave half of the leakage:"
                        + " judgement, without a source.");
    }

    private Optional<Integer> movedDays(Site site) {
        if (waitUntil == null) {
            return Optional.empty();
        }
        LocalDate first = site.from().atZone(site.zone()).toLocalDate();
        long days = ChronoUnit.DAYS.between(first, waitUntil);
        if (days < 1 || days > 366) {
            throw question.refused("--wait-until: must be within a year after " + first + ", was " + waitUntil);
        }
        return Optional.of(Math.toIntExact(days));
    }

    private OptionsFindings findings(Site site, Scenario scenario, Optional<Integer> moved) {
        Ensemble ensemble = question.ensemble(site);
        EnsembleResult base = question.untilReady(ensemble, site::scenario);
        List<SiteMeasure> all = site.measures().isEmpty() ? usual(site, scenario, base.likely()) : site.measures();
        Map<Boolean, List<SiteMeasure>> deadly =
                all.stream().collect(Collectors.partitioningBy(one -> OptionsFindings.isDeadly(one, scenario)));
        List<SiteMeasure> measures = Objects.requireNonNull(deadly.get(false));
        List<Function<Draw, Scenario>> ways = new ArrayList<>();
        measures.forEach(one -> ways.add(draw -> one.measure().on(site.scenario(draw))));
        Optional<Site> later = moved.map(days -> site.moved(days)
                .orElseThrow(() -> question.refused("--wait-until: the weather of the file does not reach that far")));
        later.ifPresent(other -> ways.add(other::scenario));
        List<EnsembleResult> results = question.run(ensemble, ways, Simulation.Until.ALL_READY);
        List<Tried> tried = IntStream.range(0, measures.size())
                .mapToObj(i -> new Tried(measures.get(i), results.get(i)))
                .toList();
        Optional<Wait> wait = moved.map(days -> new Wait(days, results.get(results.size() - 1)));
        return new OptionsFindings(site, scenario, base, tried, Objects.requireNonNull(deadly.get(true)), wait);
    }

    /** Returns the usual measures for the room whose coat is ready last as the job stands. */
    private static List<SiteMeasure> usual(Site site, Scenario scenario, Outcome asItStands) {
        Outcome.CoatResult worst = asItStands.coats().stream()
                .max(Comparator.comparing(coat -> coat.ready().orElse(scenario.until())))
                .orElseThrow();
        Optional<String> name = scenario.walls().stream()
                .filter(wall -> wall.name().equals(worst.wall()))
                .flatMap(wall -> wall.innerRoom().stream())
                .findFirst();
        RoomPlan room = scenario.rooms().stream()
                .filter(plan -> name.equals(Optional.of(plan.name())))
                .findFirst()
                .orElse(scenario.rooms().get(0));
        return UsualMeasures.of(room, scenario, site.zone());
    }
}
