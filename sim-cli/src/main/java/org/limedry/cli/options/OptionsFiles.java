package org.limedry.cli.options;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.chart.SavedChart;
import org.limedry.cli.options.OptionsFindings.Row;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;

/** The files of {@code options}. */
final class OptionsFiles {
    private final OptionsFindings findings;
    private final List<Row> rows;

    private OptionsFiles(OptionsFindings findings) {
        this.findings = findings;
        this.rows = findings.rows();
    }

    /** Returns the files. */
    static Bundle of(OptionsFindings findings, Page.Foot foot) {
        return new OptionsFiles(findings).bundle(foot);
    }

    private Bundle bundle(Page.Foot foot) {
        return new Bundle()
                .page("options", page(foot))
                .chart("options", chart())
                .csv("options", columns().csv(rows))
                .json("options", json());
    }

    private Page page(Page.Foot foot) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(Names.capital(OptionsAnswer.asItStands(findings)) + ".", Block.Weight.STRONG));
        OptionsAnswer.heaterOut(findings).map(Block::words).ifPresent(blocks::add);
        blocks.add(new Block.Figure(
                chart(),
                "Every measure was run on the same weather and the same guesses. " + OptionsAnswer.basis(findings)));
        blocks.add(new Block.Figures(columns().table("Ranked by days saved; limedry ships no prices", rows)));
        rows.stream()
                .filter(Row::harms)
                .forEach(row -> blocks.add(new Block.Words(
                        Names.capital(row.name()) + " loses time: " + OptionsAnswer.saved(row.saved())
                                + OptionsAnswer.risks(row) + ".",
                        Block.Weight.STRONG)));
        findings.refused()
                .forEach(measure -> blocks.add(new Block.Words(OptionsAnswer.refused(measure), Block.Weight.STRONG)));
        blocks.add(Block.words(OptionsAnswer.waiting(findings)));
        blocks.add(new Block.Cautions(OptionsAnswer.situation(findings)));
        Page.Head head = new Page.Head(
                findings.site().name(),
                "ways to be ready sooner",
                findings.site().isInvented(),
                OptionsAnswer.headline(findings, rows));
        return new Page(head, blocks, foot);
    }

    private SavedChart chart() {
        String title = rows.isEmpty() ? "No measure was tried" : OptionsAnswer.headline(findings, rows);
        return new SavedChart(
                "options",
                title,
                rows.stream()
                        .map(row -> new SavedChart.Row(
                                Names.capital(row.name()),
                                row.saved().likely(),
                                row.saved().low(),
                                row.saved().high(),
                                row.tied()))
                        .toList());
    }

    private Columns<Row> columns() {
        return Columns.<Row>of()
                .words("Measure", row -> Names.capital(row.name()))
                .words(
                        "Days saved",
                        row -> OptionsAnswer.saved(row.saved()) + (row.tied() ? ", tie with the one above" : ""))
                .words("Uses, against the job as it stands", OptionsAnswer::used)
                .words("Cost at your rates", row -> OptionsAnswer.money(findings, row))
                .words("Watch", row -> OptionsAnswer.risks(row).replaceFirst("^; watch: ", ""))
                .key("measure", Row::name)
                .key("room", row -> row.tried().measure().measure().room())
                .key("daysSaved", row -> row.saved().likely())
                .key("daysSavedOneInFive", row -> row.saved().low())
                .key("daysSavedFourInFive", row -> row.saved().high())
                .key("tieWithRowBefore", Row::tied)
                .key("electricKWhMore", row -> row.energy().electricKWh())
                .key("fuelKWhMore", row -> row.energy().fuelKWh())
                .key("litresOutMore", Row::litresMore)
                .key("burnsFuelInTheRoom", Row::fumes)
                .key("unfluedHeaterOut", row -> row.tried().measure().measure().fuelOut())
                .key("cost", Row::cost)
                .key("costPerDaySaved", Row::costPerDay)
                .key(
                        "warnings",
                        row -> row.warned().stream().map(Enum::name).sorted().toList());
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object();
        root.put("site", findings.site().name());
        JsonText.put(root, "lastCoatReady", findings.ready().map(findings.days()::date));
        JsonText.putCautions(root, OptionsAnswer.situation(findings));
        JsonText.put(
                root,
                "notTriedForDanger",
                findings.refused().stream()
                        .map(measure -> measure.measure().name())
                        .toList());
        root.set("measures", columns().json(rows));
        return root;
    }
}
