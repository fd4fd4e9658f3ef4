package org.limedry.cli.odds;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.Fitted;
import org.limedry.study.odds.Odds;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry odds SITE}. */
@Command(
        name = "odds",
        description = "How sure are the dates, and which unknown matters most.",
        footer = {
            "",
            "Every unknown of the site and the weather are varied together. With --out: odds.html, two charts,",
            "odds-members.csv, odds-unknowns.csv and odds.json."
        })
public final class OddsCommand implements Callable<Integer> {
    private static final int WEATHER_RUNS = 16;

    @Mixin
    private Question question;

    @Option(
            names = "--runs",
            paramLabel = "N",
            defaultValue = "64",
            description = "Runs to make, 32 to 1000; ordinarily ${DEFAULT-VALUE}.")
    private int runs;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "The same seed gives the same dates; ordinarily ${DEFAULT-VALUE}.")
    private int seed;

    @Override
    public Integer call() throws IOException {
        if (runs < 32 || runs > 1000) {
            throw question.refused("--runs: must be 32 to 1000, was " + runs);
        }
        Site site = question.site();
        if (site.scenario(Draw.likely()).coats().isEmpty()) {
            throw question.refused("coats: must be at least one for odds of ready dates, was none");
        }
        OddsFindings findings = findings(site);
        question.tell(
                OddsAnswer.lines(findings),
                OddsFiles.of(findings, question.foot(site, OddsFiles.basis(findings), List.of())));
        return (findings.allLikelyDatesKnown() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private OddsFindings findings(Site site) {
        List<Uncertain> unknowns = unknowns(site);
        Optional<Uncertain> weather = site.otherWeather();
        List<Uncertain> drawn = new ArrayList<>(drawn(site));
        weather.ifPresent(drawn::add);
        if (drawn.isEmpty()) {
            throw question.refused(
                    "everything in this file is known: there are no odds, only the dates of limedry run");
        }
        EnsembleResult result = oneByOne(site, question.untilReady(Ensemble.over(drawn, runs, seed), site::scenario));
        EnsembleResult byWeather = weather.map(
                        one -> question.untilReady(Ensemble.over(List.of(one), WEATHER_RUNS, seed), site::scenario))
                .orElseGet(() -> new EnsembleResult(result.likely(), List.of(), List.of()));
        Scenario scenario = site.scenario(Draw.likely());
        return new OddsFindings(
                site,
                scenario,
                unknowns,
                result,
                byWeather,
                weather.map(Uncertain::source).orElse(site.weatherName() + " does not reach around the run"),
                seed,
                OddsFindings.odds(
                        scenario,
                        unknowns,
                        result,
                        site.fitted().isPresent() ? Odds.Drawn.TOGETHER : Odds.Drawn.ONE_BY_ONE));
    }

    /** Returns what is drawn beside the weather: what a fit left open as one. */
    private static List<Uncertain> drawn(Site site) {
        return site.uncertain().stream()
                .filter(unknown -> !unknown.key().equals(Site.WEATHER_SHIFT))
                .toList();
    }

    /** Returns the unknowns one by one, those that were fitted too: what all of them leave open together cannot be ranked. */
    private static List<Uncertain> unknowns(Site site) {
        return Stream.concat(
                        site.fitted().stream().flatMap(file -> file.unknowns().stream()),
                        drawn(site).stream().filter(unknown -> !unknown.key().equals(Fitted.LEFT_OPEN)))
                .distinct()
                .toList();
    }

    /** Returns the same with each member told by where its unknowns lie, one by one. */
    private static EnsembleResult oneByOne(Site site, EnsembleResult result) {
        List<EnsembleResult.Member> members = result.members().stream()
                .map(member -> member.at(site.oneByOne(member.draw())))
                .toList();
        return new EnsembleResult(result.likely(), members, result.coats());
    }
}
