package org.limedry.cli.odds;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.ChancesChart;
import org.limedry.cli.chart.RankChart;
import org.limedry.cli.chart.Ready;
import org.limedry.cli.chart.Timeline;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;
import org.limedry.study.EnsembleResult;
import org.limedry.study.Uncertain;
import org.limedry.study.odds.Odds;

/** The files of {@code odds}. */
final class OddsFiles {
    private static final String METHOD =
            "What a measurement is worth: the dates of the runs are explained by a sum of curves, one for each unknown (first-order"
                    + " effects by least squares); what one curve explains is taken off, and the range is taken anew. It is what"
                    + " an exact measurement would take off; a real one takes off less.";

    private static final String METHOD_TOGETHER =
            "What a measurement is worth: of each unknown a curve through the dates of the runs, by least squares and adjusted for"
                    + " their number; the range goes down with the root of what it leaves. Unknowns hang together since the fit, so"
                    + " these overlap. It is what an exact measurement would take off; a real one takes off less.";

    private final OddsFindings findings;
    private final int coat;
    private final Odds odds;
    private final Days days;

    private OddsFiles(OddsFindings findings) {
        this.findings = findings;
        this.coat = findings.lastCoat();
        this.odds = findings.odds(coat);
        this.days = findings.days();
    }

    /**
     * Returns the files.
     *
     * @param foot what to put under the page, given a paragraph on how the figures were found
     */
    static Bundle of(OddsFindings findings, Page.Foot foot) {
        return new OddsFiles(findings).bundle(foot);
    }

    /** Returns how the figures were found, for the foot of the page. */
    static List<String> basis(OddsFindings findings) {
        return List.of(
                "%s runs on the quick grid, a Latin hypercube over %s and the weather (seed %s); the likely run with all of them likely. Dates not reached by the end of the run count as later than all others."
                        .formatted(findings.result().members().size(), drawn(findings), findings.seed()),
                findings.site().fitted().isPresent() ? METHOD_TOGETHER : METHOD);
    }

    private static String drawn(OddsFindings findings) {
        return findings.site()
                .fitted()
                .map(file -> "the " + file.fitted().points().size()
                        + " ways that the readings left open, in which the unknowns hang together,")
                .orElse(findings.unknowns().size() + " unknowns");
    }

    private Bundle bundle(Page.Foot foot) {
        Bundle bundle = new Bundle();
        bundle.page("odds", page(foot));
        bundle.chart("odds-dates", chances());
        rank().ifPresent(chart -> bundle.chart("odds-unknowns", chart));
        bundle.csv("odds-members", members());
        bundle.csv("odds-unknowns", unknowns());
        return bundle.json("odds", json());
    }

    private Page page(Page.Foot foot) {
        List<Block> blocks = new ArrayList<>();
        List<String> worth =
                OddsAnswer.told(odds).stream().map(OddsAnswer::worth).toList();
        if (worth.isEmpty()) {
            blocks.add(new Block.Words(OddsAnswer.whatMatters(findings, coat), Block.Weight.STRONG));
        } else {
            blocks.add(new Block.Lines(OddsAnswer.whatMatters(findings, coat), true, worth));
        }
        blocks.add(new Block.Words(
                "The likely run, with every unknown at its likely value, says " + dated(findings.likely(coat)) + "; "
                        + OddsAnswer.notReady(odds) + ".",
                Block.Weight.SMALL));
        blocks.add(new Block.Figure(
                chances(), "Each step is one run: the unknowns lie otherwise in each, and so does the weather."));
        rank().ifPresent(
                        chart -> blocks.add(
                                new Block.Figure(
                                        chart,
                                        "What an exact measurement of each unknown alone would take off the range. A real one takes off less.")));
        blocks.add(Block.words(OddsAnswer.weather(findings, coat)));
        blocks.add(Block.words(OddsAnswer.trust(findings, odds)));
        blocks.add(new Block.Cautions(OddsAnswer.situation(findings)));
        blocks.add(new Block.Figures(coatColumns()
                .table(
                        "Every coat: one run in five is earlier than the first date, one in five later than the last",
                        everyCoat())));
        if (!odds.influences().isEmpty()) {
            blocks.add(new Block.Figures(influences().table("Every unknown that was varied", odds.influences())));
        }
        Page.Head head = new Page.Head(
                findings.site().name(),
                "how sure the dates are",
                findings.site().isInvented(),
                OddsAnswer.headline(findings, coat));
        return new Page(head, blocks, foot);
    }

    private ChancesChart chances() {
        String title = odds.median()
                .map(date -> "An even chance by " + days.textWithoutWeekday(days.date(date)) + ", " + width())
                .orElse("Less than an even chance by " + OddsAnswer.lastDay(findings));
        return new ChancesChart(
                "odds-dates",
                title,
                new Timeline(
                        findings.scenario().from(),
                        findings.scenario().until(),
                        findings.site().zone()),
                Names.capital(findings.name(coat)),
                new Ready.Range(odds.oneInFive(), odds.median(), odds.fourInFive()),
                odds.members());
    }

    private String width() {
        return Figures.count(findings.widthDays(coat), "day") + " from 1 in 5 to 4 in 5";
    }

    private Optional<RankChart> rank() {
        List<Odds.Influence> told = OddsAnswer.told(odds);
        if (told.isEmpty()) {
            return Optional.empty();
        }
        String title = "Knowing " + told.get(0).unknown().words() + " would take off most: "
                + Figures.count(told.get(0).daysOff(), "day") + " of "
                + Figures.whole(findings.widthDays(coat));
        return Optional.of(new RankChart(
                "odds-unknowns",
                title,
                "days",
                told.stream()
                        .map(one ->
                                new RankChart.Bar(Names.capital(one.unknown().words()), one.daysOff()))
                        .toList()));
    }

    private Columns<Odds> coats() {
        return Columns.<Odds>of()
                .words("1 in 5", its -> dated(its.oneInFive()))
                .words("Middle", its -> dated(its.median()))
                .words("4 in 5", its -> dated(its.fourInFive()))
                .number(
                        "Runs not ready",
                        its -> its.notReady() + " of " + its.members().size())
                .key("oneInFive", its -> its.oneInFive().map(days::date))
                .key("median", its -> its.median().map(days::date))
                .key("fourInFive", its -> its.fourInFive().map(days::date))
                .key("runsNotReady", Odds::notReady);
    }

    private Columns<Integer> coatColumns() {
        return Columns.<Integer>of()
                .words("Coat", other -> Names.capital(findings.name(other)))
                .key("coat", findings::name)
                .and(coats().through(findings::odds))
                .key("likely", other -> findings.likely(other).map(days::date))
                .key("widthDays", findings::widthDays)
                .key("weatherAloneWidthDays", findings::weatherWidthDays)
                .key("shareExplained", other -> findings.odds(other).explained());
    }

    private List<Integer> everyCoat() {
        return IntStream.range(0, findings.scenario().coats().size()).boxed().toList();
    }

    private Columns<Odds.Influence> influences() {
        return Columns.<Odds.Influence>of()
                .words("Unknown", one -> Names.capital(one.unknown().words()))
                .words("Range", one -> OddsAnswer.range(findings.range(one.unknown()), one.unknown()))
                .number("Days a measurement takes off", one -> Figures.oneDecimal(one.daysOff()))
                .number("Share of the spread", one -> Figures.whole(100.0 * one.share()) + " %")
                .words("Which way", OddsAnswer::direction)
                .key("key", one -> one.unknown().key())
                .key("unknown", one -> one.unknown().words())
                .key("unit", one -> unit(one.unknown()))
                .key("low", one -> findings.range(one.unknown()).low())
                .key("likely", one -> findings.range(one.unknown()).likely())
                .key("high", one -> findings.range(one.unknown()).high())
                .key("daysOff", Odds.Influence::daysOff)
                .key("shareOfVariance", Odds.Influence::share)
                .key("laterWhenHigh", Odds.Influence::laterWhenHigh);
    }

    /** An influence on a coat. */
    private record OnCoat(int coat, Odds.Influence influence) {}

    private String dated(Optional<Instant> date) {
        return date.map(days::date).map(days::table).orElse("after the run");
    }

    private CsvSheet members() {
        List<String> headings = new ArrayList<>(List.of("member"));
        List<String> keys =
                new ArrayList<>(findings.unknowns().stream().map(Uncertain::key).toList());
        findings.unknowns().forEach(unknown -> headings.add(unknown.key() + "." + unit(unknown)));
        for (int other = 0; other < findings.scenario().coats().size(); other++) {
            headings.add(findings.name(other) + " readyUtc");
        }
        List<List<?>> rows = new ArrayList<>();
        for (EnsembleResult.Member member : findings.result().members()) {
            List<Object> row = new ArrayList<>(List.of(rows.size() + 1));
            for (int i = 0; i < keys.size(); i++) {
                row.add(findings.unknowns().get(i).in(member.draw()));
            }
            member.coats().forEach(result -> row.add(result.ready()));
            rows.add(row);
        }
        return new CsvSheet(headings, rows);
    }

    private static String unit(Uncertain unknown) {
        return unknown.unit().isEmpty() ? "times" : unknown.unit();
    }

    private CsvSheet unknowns() {
        List<OnCoat> all = everyCoat().stream()
                .flatMap(other -> findings.odds(other).influences().stream().map(one -> new OnCoat(other, one)))
                .toList();
        return Columns.<OnCoat>of()
                .key("coat", one -> findings.name(one.coat()))
                .and(influences().through(OnCoat::influence))
                .csv(all);
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object();
        root.put("site", findings.site().name());
        root.put("members", findings.result().members().size());
        root.put("seed", findings.seed());
        root.put("weather", findings.weather());
        JsonText.putCautions(root, OddsAnswer.situation(findings));
        ArrayNode coats = root.putArray("coats");
        for (int other : everyCoat()) {
            ObjectNode node = coatColumns().json(other);
            node.set(
                    "unknowns", influences().json(mostFirst(findings.odds(other).influences())));
            coats.add(node);
        }
        return root;
    }

    private static List<Odds.Influence> mostFirst(List<Odds.Influence> all) {
        return all.stream()
                .sorted(Comparator.comparingDouble(Odds.Influence::daysOff).reversed())
                .toList();
    }
}
