package org.limedry.cli.handover;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.page.Figures;
import org.limedry.cli.site.Site;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.care.CareRecord;
import org.limedry.units.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry handover SITE}. */
@Command(
        name = "handover",
        description = "Aftercare sheet for the owner: decorate when. Record of care: how gently it was dried.",
        footer = {"", "With --out writes aftercare.html, .csv, care.html, .svg, .png, .csv and handover.json."})
public final class HandoverCommand implements Callable<Integer> {
    @Mixin
    private final Question question = new Question();

    @Option(
            names = "--warming",
            paramLabel = "K",
            defaultValue = "5",
            description = "Most that room air may be warmer than 24 hours before; ordinarily ${DEFAULT-VALUE}"
                    + " (common practice, no source).")
    private double warmingK;

    @Option(
            names = "--driest",
            paramLabel = "PERCENT",
            defaultValue = "40",
            description = "Lowest relative humidity; ordinarily ${DEFAULT-VALUE} (common practice, no source).")
    private double driestPercent;

    @Option(
            names = "--coldest",
            paramLabel = "C",
            defaultValue = "5",
            description = "Lowest air temperature; ordinarily ${DEFAULT-VALUE}, the trade's cold line.")
    private double coldestCelsius;

    @Override
    public Integer call() throws IOException {
        CareRecord.Limits limits = limits();
        Site site = question.site();
        if (site.scenario(Draw.likely()).coats().isEmpty()) {
            throw question.refused("coats: must be at least one to hand over, was none");
        }
        Ensemble ensemble = question.ensemble(site);
        EnsembleResult result = question.untilReady(ensemble, site::scenario);
        Handover handover = Handover.of(site, result, limits);
        question.tell(
                HandoverAnswer.lines(handover),
                HandoverFiles.of(handover, question.foot(site, basis(site, ensemble), List.of())));
        if (!handover.isComplete()) {
            question.warn("handover: not all coats are ready by " + handover.lastDay()
                    + ", the end of the run: no date given, not guessed");
        }
        return (handover.isComplete() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private CareRecord.Limits limits() {
        check("--warming", warmingK, 0.1, 50.0);
        check("--driest", driestPercent, 0.0, 100.0);
        check("--coldest", coldestCelsius, -30.0, 40.0);
        return new CareRecord.Limits(warmingK, Units.fractionFromPercent(driestPercent), coldestCelsius);
    }

    private void check(String option, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw question.refused(
                    option + ": must be " + Figures.plain(low) + " to " + Figures.plain(high) + ", was " + value);
        }
    }

    private static List<String> basis(Site site, Ensemble ensemble) {
        int members = ensemble.draws().size();
        return List.of(
                "Weather " + site.weatherName()
                        + ", taken as one possible year; runs on the quick grid, until every coat is"
                        + " ready (rule: " + site.ruleName()
                        + "). Waits of the finishes count from the day on which the last"
                        + " coat of the room is ready.",
                members == 0
                        ? "Likely dates only, from one run; limedry gives ranges with --ranges."
                        : "Ranges from " + members
                                + " runs over what nobody can know: one chance in five that the plaster is"
                                + " ready earlier, one in five later.",
                "Warming is told against the same hour of the day before. Spells less than six hours apart are one.");
    }
}
