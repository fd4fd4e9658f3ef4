package org.limedry.cli.airing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.limedry.cli.chart.AiringChart;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Table;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.Site;
import org.limedry.room.Plant;
import org.limedry.study.Draw;
import org.limedry.study.airing.Airing;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;

/** The page. */
final class AiringPage {
    private final AiringAnswer answer;
    private final AiringWords words;
    private final AiringText text;

    private AiringPage(AiringAnswer answer) {
        this.answer = answer;
        this.words = new AiringWords(answer);
        this.text = new AiringText(answer);
    }

    /**
     * Returns the page.
     *
     * @param answer what was found
     * @param chart its chart
     * @param foot what it rests on
     */
    static Page of(AiringAnswer answer, AiringChart chart, Page.Foot foot) {
        AiringPage page = new AiringPage(answer);
        return new Page(page.head(), page.blocks(chart), foot);
    }

    /** Returns what the site has and what the levels would have people do. */
    static Situation situation(AiringAnswer answer) {
        Site site = answer.site();
        List<Plant> plant = answer.building().rooms().stream()
                .flatMap(room -> room.plant().stream())
                .toList();
        Situation situation = Situation.at(site)
                .with(site.scenario(Draw.likely()), site.zone())
                .with(plant, site.zone())
                .warned(answer.building().warned())
                .advising(Advised.SHUT, Advised.TOUCH);
        for (AiringLine line : answer.study().lines()) {
            for (AiringFinding finding : line.levels()) {
                situation = situation.advising(advised(finding));
            }
        }
        return situation;
    }

    private static List<Advised> advised(AiringFinding finding) {
        Airing airing = finding.level().airing();
        List<Advised> advised = new ArrayList<>();
        if (finding.level().heat().isPresent()) {
            advised.add(Advised.HEAT);
        }
        if (airing.doorHours() > 0.0) {
            advised.add(airing.doorHours() >= Airing.WHOLE_DAY_HOURS ? Advised.OPEN_BY_NIGHT : Advised.OPEN);
        }
        if (airing.fanM3PerS() > 0.0) {
            advised.add(Advised.BLOW);
        }
        if (finding.watch().tooFast()) {
            advised.add(Advised.MIST);
        }
        return advised;
    }

    private Page.Head head() {
        String kind = "airing of the " + answer.room().name() + " ("
                + Figures.whole(answer.building().plan().volumeM3()) + " m\u00b3), first coat laid "
                + Days.full(words.day(0.0));
        return new Page.Head(answer.site().name(), kind, answer.site().isInvented(), text.headline());
    }

    private List<Block> blocks(AiringChart chart) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(text.air() + text.dates(), Block.Weight.STRONG));
        blocks.add(new Block.Figure(chart, chartNote()));
        blocks.add(new Block.Figures(waits()));
        blocks.add(new Block.Lines("What stands out", false, text.marks()));
        blocks.add(new Block.Figures(airs()));
        blocks.add(new Block.Lines(
                "Air for hardening",
                false,
                Stream.concat(text.hardening().stream(), Stream.of(text.wholeHardening()))
                        .toList()));
        blocks.add(new Block.Cautions(situation(answer)));
        return blocks;
    }

    private String chartNote() {
        String marks = text.mainLine().levels().get(0).waiting().isRanged()
                ? "Thick line likely, grey band earliest to latest (one in five either side). "
                : "Likely dates only. ";
        return marks
                + "Striped: too little air for anyone to tell the difference. Dotted: the first days dry faster than the "
                + "lime can take. An arrow: not ready in " + words.horizon() + ".";
    }

    private Table waits() {
        List<AiringLine> lines = answer.study().lines();
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.words("airing"));
        columns.add(Table.Column.words("m\u00b3 an hour (low to high)"));
        lines.forEach(line -> columns.add(Table.Column.words(AiringWords.heat(line))));
        List<List<String>> rows = new ArrayList<>();
        for (AiringFinding like : text.mainLine().levels()) {
            Stream<String> waits = lines.stream().map(line -> wait(line, like));
            rows.add(Stream.concat(
                            Stream.of(words.level(like.level().airing()), AiringWords.air(like.freshAir())), waits)
                    .toList());
        }
        answer.dryDays().ifPresent(dry -> rows.add(dryRow(dry.finding(), lines)));
        return new Table(
                "What each level of airing buys: how long until every coat is ready (air as with "
                        + AiringWords.heat(text.mainLine()) + ")",
                columns,
                rows);
    }

    private List<String> dryRow(AiringFinding dry, List<AiringLine> lines) {
        Stream<String> waits = lines.stream()
                .map(line -> line.heat().equals(dry.level().heat()) ? words.range(dry.waiting()) : "not tried");
        return Stream.concat(
                        Stream.of(
                                words.level(dry.level().airing()) + ", dry days only", AiringWords.air(dry.freshAir())),
                        waits)
                .toList();
    }

    private String wait(AiringLine line, AiringFinding like) {
        return line.levels().stream()
                .filter(one -> one.level().airing().equals(like.level().airing()))
                .map(one -> words.range(one.waiting())
                        + (one.watch().tooFast() ? "; too fast: mist" : "")
                        + (one.watch().dryButSoft() ? "; dry but soft" : ""))
                .findFirst()
                .orElse("not tried");
    }

    private Table airs() {
        return Columns.<AiringFinding>of()
                .words("airing", one -> words.level(one.level().airing()))
                .number(
                        "fresh air given, m\u00b3 an hour",
                        one -> AiringWords.air(one.freshAir().likelyM3PerS()))
                .number(
                        "needed to harden, m\u00b3 an hour",
                        one -> AiringWords.air(one.hardening().needM3PerS()))
                .number("pace of hardening, % of open air", one -> text.pacePercent(one.hardening()))
                .number(
                        "lowest CO\u2082, ppm",
                        one -> Figures.whole(one.hardening().lowestPpm()))
                .number(
                        "water carried out, litres",
                        one -> Figures.litres(one.water().outByAirKg()))
                .table(
                        "Drying air and hardening air side by side, " + AiringWords.heat(text.mainLine()),
                        text.mainLine().levels());
    }
}
