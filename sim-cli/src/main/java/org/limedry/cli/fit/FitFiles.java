package org.limedry.cli.fit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.NarrowingChart;
import org.limedry.cli.chart.Ready;
import org.limedry.cli.chart.ResidualChart;
import org.limedry.cli.chart.Timeline;
import org.limedry.cli.issue.IssueWords;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Table;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.FittedJson;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.FitResult;
import org.limedry.study.fit.Residual;
import org.limedry.units.Units;

/** The files of {@code fit}. */
final class FitFiles {
    /** Where the dates of a fit are kept for the next run. */
    static final String FITTED = "fitted.json";

    private final FitFindings findings;
    private final Days days;
    private final List<ResidualChart> residuals;

    private FitFiles(FitFindings findings) {
        this.findings = findings;
        this.days = findings.days();
        this.residuals = FitStrips.of(findings);
    }

    /**
     * Returns the files.
     *
     * @param foot what to put under the page
     */
    static Bundle of(FitFindings findings, Page.Foot foot) {
        return new FitFiles(findings).bundle(foot);
    }

    /** Returns how the figures were found, for the foot of the page. */
    static List<String> basis(FitFindings findings) {
        return List.of(
                "Regularised least squares over %s unknowns and an offset for each logger, %s runs on the quick grid: the ranges of the"
                                .formatted(
                                        findings.fit().unknowns().size(),
                                        findings.fit().runs())
                        + " site file are what was believed before, and an unknown that no reading touches keeps its range."
                        + " Readings of one logger that are wrong together count for less than their number.",
                "What they leave open is told by %s ways in which all unknowns may lie together, drawn as often as the readings allow"
                                .formatted(SiteFit.POINTS)
                        + " them; one run of each gives the ranges of the dates, the likely date is that of the best fit.",
                "The first two days of the run are not compared: how warm and damp room and walls begin is guessed.",
                "Until the last reading the weather is what was read outdoors and doors, plant and mist are what the diary has;"
                        + " after it both are as the site file plans them.");
    }

    private Bundle bundle(Page.Foot foot) {
        Bundle bundle = new Bundle();
        bundle.page("fit", page(foot));
        narrowing().ifPresent(chart -> bundle.chart("fit-dates", chart));
        residuals.forEach(chart -> bundle.chart(chart.id(), chart));
        bundle.csv("fit-readings", sheet());
        findings.dates().ifPresent(dates -> bundle.text(FITTED, () -> FittedJson.text(dates.file())));
        return bundle;
    }

    private Page page(Page.Foot foot) {
        List<Block> blocks = new ArrayList<>();
        findings.dates().ifPresentOrElse(dates -> addDates(blocks, dates), () -> addBad(blocks));
        residuals.forEach(
                chart -> blocks.add(
                        new Block.Figure(
                                chart,
                                "The band is twice the usual error of a reading about the run after fitting. Offsets of loggers are taken off.")));
        blocks.add(new Block.Figures(channels()));
        if (!FitAnswer.remarks(findings).isEmpty()) {
            blocks.add(new Block.Lines(
                    "Found in the files", false, findings.readings().remarks()));
        }
        blocks.add(new Block.Words(FitAnswer.HAND, Block.Weight.SMALL));
        blocks.add(new Block.Cautions(FitAnswer.situation(findings)));
        Page.Head head = new Page.Head(
                findings.site().name(),
                "what the readings say, to " + findings.untilWords(),
                findings.site().isInvented(),
                FitAnswer.headline(findings));
        return new Page(head, blocks, foot);
    }

    private void addBad(List<Block> blocks) {
        blocks.add(new Block.Lines("Why, and where to look", false, FitAnswer.bad(findings)));
    }

    private void addDates(List<Block> blocks, FitFindings.Dates dates) {
        findings.issue(dates).parts().forEach(part -> blocks.add(new Block.Lines(part.heading(), false, part.lines())));
        narrowing()
                .ifPresent(chart -> blocks.add(new Block.Figure(
                        chart,
                        "From the date that one run in five is earlier than to the one that one in five is later than: three in"
                                + " five lie between. The heading goes farther out, to hold four in five.")));
        blocks.add(new Block.Figures(coats(findings.issue(dates))));
        findings.issue(dates)
                .heldBack()
                .forEach(held -> blocks.add(new Block.Words("The " + held + ".", Block.Weight.SMALL)));
        Table unknowns = unknowns();
        if (!unknowns.rows().isEmpty()) {
            blocks.add(new Block.Figures(unknowns));
        }
        if (!FitAnswer.untold(findings).isEmpty()) {
            blocks.add(new Block.Lines("What the readings could not tell", false, FitAnswer.untold(findings)));
        }
        if (!FitAnswer.offsets(findings).isEmpty()) {
            blocks.add(new Block.Lines("Loggers", false, FitAnswer.offsets(findings)));
        }
    }

    private Optional<NarrowingChart> narrowing() {
        return findings.dates().map(dates -> {
            FittedFile.Issue before = dates.file().before().orElseThrow();
            IssueWords issue = findings.issue(dates);
            int coat = issue.lastCoat();
            String title = issue.now(coat)
                    .likely()
                    .map(date -> "With readings to " + findings.untilWords() + ": likely ready "
                            + days.text(days.date(date)))
                    .orElse("With readings to " + findings.untilWords() + ": not ready within the run");
            return new NarrowingChart(
                    "fit-dates",
                    title,
                    timeline(),
                    Names.capital(issue.name(coat)),
                    List.of(
                            row(issue.beforeWords(), before.readingsUntil(), issue.before(coat)),
                            row(issue.nowWords(), findings.readings().until(), issue.now(coat))),
                    Optional.empty());
        });
    }

    private static NarrowingChart.Row row(String words, Instant issued, FittedFile.CoatDates dates) {
        return new NarrowingChart.Row(
                words, Optional.of(issued), new Ready.Range(dates.earliest(), dates.likely(), dates.latest()));
    }

    private Timeline timeline() {
        return new Timeline(
                findings.scenario().from(),
                findings.scenario().until(),
                findings.site().zone());
    }

    private Table coats(IssueWords issue) {
        return Columns.<Integer>of()
                .words("Coat", coat -> Names.capital(issue.name(coat)))
                .words("Earliest", coat -> dated(issue.now(coat).earliest()))
                .words("Likely", coat -> dated(issue.now(coat).likely()))
                .words("Latest", coat -> dated(issue.now(coat).latest()))
                .words("Likely before", coat -> dated(issue.before(coat).likely()))
                .table(
                        "Every coat: one chance in five before the first date, one in five after the last",
                        IntStream.range(0, findings.scenario().coats().size())
                                .boxed()
                                .toList());
    }

    private String dated(Optional<Instant> date) {
        return date.map(days::date).map(days::table).orElse("after the run");
    }

    /** Only what the readings told something of, the most first: an unknown that keeps its range is in the list below. */
    private Table unknowns() {
        FitResult fit = findings.fit();
        List<Uncertain> untold = fit.untold();
        return Columns.<Integer>of()
                .words("Unknown", i -> Names.capital(fit.unknowns().get(i).words()))
                .words("Before", i -> before(fit.unknowns().get(i)))
                .words("Now", i -> now(fit.unknowns().get(i)))
                .number("Spread taken off", i -> takenOff(fit.fitted().spread(i)))
                .table(
                        "What nobody could know: our range before, and where 4 chances in 5 lie now",
                        IntStream.range(0, fit.unknowns().size())
                                .filter(i -> !untold.contains(fit.unknowns().get(i)))
                                .boxed()
                                .sorted(Comparator.comparing(fit.fitted()::spread))
                                .toList());
    }

    private static String before(Uncertain unknown) {
        return FitAnswer.before(unknown) + " " + unknown.unit();
    }

    private String now(Uncertain unknown) {
        return FitAnswer.range(findings.now(unknown), unknown);
    }

    private static String takenOff(double spread) {
        return Figures.whole(Units.percentFromFraction(1.0 - spread)) + " %";
    }

    private Table channels() {
        return Columns.<FitResult.Channel>of()
                .words("Readings", channel -> Names.capital(channel.name()))
                .number("How many", channel -> Figures.whole(channel.readings()))
                .number("Before", channel -> Figures.oneDecimal(channel.before()))
                .number("After", channel -> Figures.oneDecimal(channel.after()))
                .table(
                        "How well the run meets the readings, in usual errors of one reading; above "
                                + Figures.oneDecimal(FitResult.BAD_SIGMA) + " no date is drawn",
                        findings.fit().channels());
    }

    private CsvSheet sheet() {
        return Columns.<Residual>of()
                .key("readings", residual -> residual.reading().channel())
                .key("timeUtc", residual -> residual.reading().at())
                .key("unit", residual -> FitStrips.unit(residual.reading()))
                .key("measured", Residual::measured)
                .key("offset", Residual::offset)
                .key("runBefore", Residual::before)
                .key("runAfter", Residual::after)
                .key("usualError", Residual::sigma)
                .csv(findings.fit().residuals());
    }
}
