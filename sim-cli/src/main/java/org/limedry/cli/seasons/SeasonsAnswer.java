package org.limedry.cli.seasons;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.limedry.cli.chart.ProgrammeChart;
import org.limedry.cli.chart.SeasonsChart;
import org.limedry.cli.job.Bars;
import org.limedry.cli.job.CoatRows;
import org.limedry.cli.job.Job;
import org.limedry.cli.job.JobCare;
import org.limedry.cli.job.WeekWords;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Page;

/**
 * The answer to: when should the job be begun.
 *
 * @param all every start, in the order in which they are shown; at least one
 * @param pair the two looked at more closely, the quicker first; one if there is only one
 * @param left starts that the weather does not reach, in words
 * @param foot what the page rests on
 */
record SeasonsAnswer(List<Begun> all, List<Begun> pair, List<String> left, Page.Foot foot) {
    private static final String NAME = "seasons";
    private static final String PROGRAMMES = "programmes";

    SeasonsAnswer {
        all = List.copyOf(all);
        pair = List.copyOf(pair);
        left = List.copyOf(left);
    }

    /** Returns the lines for the console. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(site() + ": the same job begun on other days");
        lines.add(headline() + ".");
        lines.addAll(StartRows.lines(all));
        lines.add(
                ranged()
                        ? "  (1 in 5 quicker, 1 in 5 slower). A hand test overrules."
                        : "  Likely only; --ranges for ranges. A hand test overrules.");
        // The rows above say what each start brings.
        lines.addAll(PairWords.difference(pair));
        if (!left.isEmpty()) {
            lines.add("Left out, for the weather does not reach: " + String.join(", ", left) + ".");
        }
        return JobCare.of(jobs(all)).around(lines);
    }

    private String site() {
        return all.get(0).job().site().name();
    }

    private boolean ranged() {
        return all.get(0).job().weeks().ranged();
    }

    private static List<Job> jobs(List<Begun> begun) {
        return begun.stream().map(Begun::job).toList();
    }

    private String headline() {
        return pair.stream().map(Begun::headline).collect(Collectors.joining(". "));
    }

    /** Returns the starts whose job is not ready by the end of its run. */
    List<String> unfinished() {
        return all.stream()
                .filter(begun -> begun.job().result().jobReady().isEmpty())
                .map(begun ->
                        begun.start().words() + ", by " + Days.full(begun.job().lastDay()))
                .toList();
    }

    /** Returns the files. */
    Bundle files() {
        SeasonsChart bars = bars();
        ProgrammeChart programmes = programmes();
        return new Bundle()
                .page(NAME, page(bars, programmes))
                .chart(NAME, bars)
                .chart(PROGRAMMES, programmes)
                .csv(NAME, StartRows.sheet(all))
                .csv(PROGRAMMES, CoatRows.sheet(jobs(pair)))
                .json(NAME, json());
    }

    private SeasonsChart bars() {
        return new SeasonsChart(
                NAME,
                PairWords.title(all, pair),
                all.stream()
                        .map(begun -> new SeasonsChart.Bar(
                                begun.start().name(),
                                begun.start().shortName(),
                                pair.contains(begun) && pair.size() > 1,
                                begun.job().weeks()))
                        .toList(),
                runWeeks());
    }

    private double runWeeks() {
        return all.stream().mapToDouble(begun -> begun.job().runWeeks()).min().orElseThrow();
    }

    private ProgrammeChart programmes() {
        return new ProgrammeChart(
                PROGRAMMES,
                pair.get(0).job().workWords() + (pair.size() > 1 ? " either way" : "") + "; the rest is waiting",
                pair.stream()
                        .map(begun -> Bars.of(
                                begun.job(),
                                "Start " + Days.full(begun.start().day()) + ": ready in "
                                        + WeekWords.range(begun.job())))
                        .toList(),
                runWeeks());
    }

    private Page page(SeasonsChart bars, ProgrammeChart programmes) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(String.join(" ", PairWords.sentences(pair)), Block.Weight.STRONG));
        String bar = ranged()
                ? "Bar: one chance in five it is quicker, one in five slower; thick tick: likely."
                : "Thick tick: likely weeks; no range was asked for.";
        String grey = pair.size() > 1 ? " Grey: the two starts compared below." : "";
        blocks.add(new Block.Figure(bars, bar + grey));
        blocks.add(new Block.Numbers(StartRows.table(all)));
        String dashed = ranged() ? " Dashed: may be ready from here to here." : "";
        blocks.add(new Block.Figure(
                programmes,
                "The gang is free to work elsewhere in the striped stretches." + dashed + " Dates: likely ready."));
        blocks.add(new Block.Cautions(JobCare.of(jobs(all))));
        pair.forEach(begun -> blocks.add(new Block.Figures(
                CoatRows.table(begun.job(), "Start " + Days.full(begun.start().day()) + ", coat by coat"))));
        return new Page(
                new Page.Head(
                        site(),
                        "the same job begun on other days",
                        all.get(0).job().site().isInvented(),
                        headline()),
                blocks,
                foot);
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object().put("site", site());
        JsonText.putCautions(root, JobCare.of(jobs(all)));
        ArrayNode starts = root.putArray("starts");
        for (Begun begun : all) {
            ObjectNode node = StartRows.json(begun).put("compared", pair.contains(begun));
            node.set("coats", CoatRows.json(begun.job()));
            starts.add(node);
        }
        return root;
    }
}
