package org.limedry.cli.odds;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.chart.ChancesChart;
import org.limedry.cli.chart.RankChart;
import org.limedry.cli.chart.Ready;
import org.limedry.cli.chart.Timeline;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Table;
import org.limedry.reference.Estimate;
import org.limedry.study.EnsembleResult;
import org.limedry.study.Uncertain;
import org.limedry.study.odds.Odds;

/** The files of {@code odds}. */
public final class OddsFiles {
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
    public static Bundle of(OddsFindings findings, Page.Foot foot) {
        return new OddsFiles(findings).bundle(foot);
    }

    /** Returns how the figures were found, for the foot of the page. */
    public static List<String> basis(OddsFindings findings) {
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
        blocks.add(new Block.Figures(coatTable()));
        if (!odds.influences().isEmpty()) {
            blocks.add(new Block.Figures(unknownTable()));
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

    private Table coatTable() {
        List<List<String>> rows = new ArrayList<>();
        for (int other = 0; other < findings.scenario().coats().size(); other++) {
            Odds its = findings.odds(other);
            rows.add(List.of(
                    Names.capital(findings.name(other)),
                    dated(its.oneInFive()),
                    dated(its.median()),
                    dated(its.fourInFive()),
                    its.notReady() + " of " + its.members().size()));
        }
        return new Table(
                "Every coat: one run in five is earlier than the first date, one in five later than the last",
                List.of(
                        Table.Column.words("Coat"),
                        Table.Column.words("1 in 5"),
                        Table.Column.words("Middle"),
                        Table.Column.words("4 in 5"),
                        Table.Column.number("Runs not ready")),
                rows);
    }

    private Table unknownTable() {
        List<List<String>> rows = odds.influences().stream()
                .map(one -> List.of(
                        Names.capital(one.unknown().words()),
                        OddsAnswer.range(findings.range(one.unknown()), one.unknown()),
                        Figures.oneDecimal(one.daysOff()),
                        Figures.whole(100.0 * one.share()) + " %",
                        OddsAnswer.direction(one)))
                .toList();
        return new Table(
                "Every unknown that was varied",
                List.of(
                        Table.Column.words("Unknown"),
                        Table.Column.words("Range"),
                        Table.Column.number("Days a measurement takes off"),
                        Table.Column.number("Share of the spread"),
                        Table.Column.words("Which way")),
                rows);
    }

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
        List<List<?>> rows = new ArrayList<>();
        for (int other = 0; other < findings.scenario().coats().size(); other++) {
            for (Odds.Influence one : findings.odds(other).influences()) {
                Estimate range = findings.range(one.unknown());
                rows.add(List.of(
                        findings.name(other),
                        one.unknown().key(),
                        one.unknown().words(),
                        unit(one.unknown()),
                        range.low(),
                        range.likely(),
                        range.high(),
                        one.daysOff(),
                        one.share(),
                        one.laterWhenHigh()));
            }
        }
        return new CsvSheet(
                List.of(
                        "coat",
                        "key",
                        "unknown",
                        "unit",
                        "low",
                        "likely",
                        "high",
                        "daysOff",
                        "shareOfVariance",
                        "laterWhenHigh"),
                rows);
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object();
        root.put("site", findings.site().name());
        root.put("members", findings.result().members().size());
        root.put("seed", findings.seed());
        root.put("weather", findings.weather());
        JsonText.putCautions(root, OddsAnswer.situation(findings));
        ArrayNode coats = root.putArray("coats");
        for (int other = 0; other < findings.scenario().coats().size(); other++) {
            addCoat(coats.addObject(), other);
        }
        return root;
    }

    private void addCoat(ObjectNode node, int other) {
        Odds its = findings.odds(other);
        node.put("coat", findings.name(other));
        put(node, "oneInFive", its.oneInFive());
        put(node, "median", its.median());
        put(node, "fourInFive", its.fourInFive());
        put(node, "likely", findings.likely(other));
        node.put("runsNotReady", its.notReady());
        node.put("widthDays", findings.widthDays(other));
        findings.weatherWidthDays(other).ifPresent(width -> node.put("weatherAloneWidthDays", width));
        node.put("shareExplained", its.explained());
        ArrayNode influences = node.putArray("unknowns");
        its.influences().stream()
                .sorted(Comparator.comparingDouble(Odds.Influence::daysOff).reversed())
                .forEach(one -> influences
                        .addObject()
                        .put("key", one.unknown().key())
                        .put("daysOff", one.daysOff())
                        .put("shareOfVariance", one.share())
                        .put("laterWhenHigh", one.laterWhenHigh()));
    }

    private void put(ObjectNode node, String key, Optional<Instant> date) {
        node.put(key, date.map(days::date).map(Object::toString).orElse(null));
    }
}
