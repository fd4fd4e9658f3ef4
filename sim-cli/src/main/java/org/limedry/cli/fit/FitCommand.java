package org.limedry.cli.fit;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.page.Days;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReadings;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.study.ReadyRange;
import org.limedry.study.fit.FitResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code limedry fit SITE}. */
@Command(
        name = "fit",
        description = "A date that learns: bring the unknowns of the site to what was read there.",
        footer = {
            "",
            "The site file names the files under readings: loggers, outdoors, diary. With --out: fit.html, charts,",
            "fit-readings.csv and fitted.json. Put fitted.json beside the site file and say fitted: fitted.json there:",
            "every later run goes by it, and the next fit tells what moved since. A bad fit writes no fitted.json."
        })
public final class FitCommand implements Callable<Integer> {
    @Mixin
    private Question question;

    @Override
    public Integer call() throws IOException {
        Site site = question.site();
        SiteReadings read =
                site.readings().orElseThrow(() -> missing("readings", "missing", "must name what was read"));
        ReadingsToFit readings = ReadingsToFit.of(site, read);
        check(site, readings);
        FitResult fit = SiteFit.of(site, readings, Runtime.getRuntime().availableProcessors());
        Scenario scenario = site.scenario(Draw.likely());
        Optional<FitFindings.Dates> dates =
                fit.isConverged() && fit.unexplained().isEmpty()
                        ? Optional.of(dates(site, readings, fit))
                        : Optional.empty();
        FitFindings findings = new FitFindings(site, scenario, readings, fit, dates);
        question.tell(
                FitAnswer.lines(findings),
                FitFiles.of(findings, question.foot(site, FitFiles.basis(findings), List.of())));
        return (findings.allLikelyDatesKnown() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private BadInputException missing(String path, String found, String rule) {
        return new BadInputException(List.of(new InputProblem(String.valueOf(question.file()), 0, path, rule, found)));
    }

    private void check(Site site, ReadingsToFit readings) {
        site.weatherDoubt(readings.until()).ifPresent(doubt -> {
            throw missing("readings.outdoors", doubt, "must be the outdoor air from the first day of the run on");
        });
        if (readings.list().isEmpty()) {
            String found = readings.remarks().isEmpty()
                    ? "no reading"
                    : "no reading that counts (" + String.join("; ", readings.remarks()) + ")";
            throw missing("readings", found, "must be at least one from the third day of the run on");
        }
        if (site.fittable().isEmpty() || site.scenario(Draw.likely()).coats().isEmpty()) {
            throw missing("readings", "nothing in this file is open", "must have a coat and something not known");
        }
    }

    private FitFindings.Dates dates(Site site, ReadingsToFit readings, FitResult fit) {
        Optional<SiteReadings.Known> known = site.readings().map(SiteReadings::known);
        FittedFile learnt = FittedFile.undated(site.name(), fit.unknowns(), fit.fitted(), readings.until());
        Site after = site.knowing(known, Optional.of(learnt));
        Site before = site.knowing(Optional.empty(), Optional.empty());
        EnsembleResult result = members(after);
        FittedFile.Issue now = issue(readings.until(), result);
        FittedFile.Issue then =
                site.fitted().map(FittedFile::issue).orElseGet(() -> issue(site.from(), members(before)));
        WhatMoved.Changes changes = changes(site, fit);
        List<FitFindings.Wide> wide = IntStream.range(0, now.coats().size())
                .mapToObj(coat -> wide(result, coat))
                .toList();
        FittedFile file = new FittedFile(
                site.name(),
                site.building(),
                fit.unknowns(),
                fit.fitted(),
                now,
                Optional.of(then),
                changes.steps(),
                changes.leftOut());
        return new FitFindings.Dates(file, wide);
    }

    private EnsembleResult members(Site site) {
        Ensemble ensemble = Ensemble.over(site.uncertain(), site.members(question.members()));
        return question.untilReady(ensemble, site::scenario);
    }

    private WhatMoved.Changes changes(Site site, FitResult fit) {
        WhatMoved moved = WhatMoved.of(site, fit, Days.of(site.zone(), site.from(), site.until()));
        List<Function<Draw, Scenario>> ways = new ArrayList<>();
        moved.sites().forEach(job -> ways.add(job::scenario));
        List<Outcome> outcomes = question.run(Ensemble.likelyOnly(), ways, Simulation.Until.ALL_READY).stream()
                .map(EnsembleResult::likely)
                .toList();
        return moved.changes(outcomes, site.until());
    }

    private static FittedFile.Issue issue(Instant until, EnsembleResult result) {
        return new FittedFile.Issue(
                until,
                result.coats().stream()
                        .map(coat -> new FittedFile.CoatDates(
                                coat.wall(), coat.coat(), coat.earliest(), coat.likely(), coat.latest()))
                        .toList());
    }

    private static FitFindings.Wide wide(EnsembleResult result, int coat) {
        ReadyRange range = result.coats().get(coat);
        if (range.byHand()) {
            return new FitFindings.Wide(range.likely(), range.likely());
        }
        List<Optional<Instant>> dates = result.members().stream()
                .map(member -> member.coats().get(coat).ready())
                .toList();
        return new FitFindings.Wide(
                ReadyRange.quantile(dates, MemberQuantile.ONE_IN_TEN),
                ReadyRange.quantile(dates, MemberQuantile.NINE_IN_TEN));
    }
}
