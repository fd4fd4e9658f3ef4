package org.limedry.cli.options;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.limedry.cli.chart.SavedChart;
import org.limedry.cli.options.OptionsFindings.Row;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Table;

/** The files of {@code options}. */
public final class OptionsFiles {
    private final OptionsFindings findings;
    private final List<Row> rows;

    private OptionsFiles(OptionsFindings findings) {
        this.findings = findings;
        this.rows = findings.rows();
    }

    /** Returns the files. */
    public static Bundle of(OptionsFindings findings, Page.Foot foot) {
        return new OptionsFiles(findings).bundle(foot);
    }

    private Bundle bundle(Page.Foot foot) {
        return new Bundle()
                .page("options", page(foot))
                .chart("options", chart())
                .csv("options", sheet())
                .json("options", json());
    }

    private Page page(Page.Foot foot) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(Names.capital(OptionsAnswer.asItStands(findings)) + ".", Block.Weight.STRONG));
        OptionsAnswer.heaterOut(findings).map(Block::words).ifPresent(blocks::add);
        blocks.add(new Block.Figure(
                chart(),
                "Every measure was run on the same weather and the same guesses. " + OptionsAnswer.basis(findings)));
        blocks.add(new Block.Figures(table()));
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

    private Table table() {
        List<List<String>> cells = rows.stream()
                .map(row -> List.of(
                        Names.capital(row.name()),
                        OptionsAnswer.saved(row.saved()) + (row.tied() ? ", tie with the one above" : ""),
                        OptionsAnswer.used(row),
                        OptionsAnswer.money(findings, row),
                        OptionsAnswer.risks(row).replaceFirst("^; watch: ", "")))
                .toList();
        return new Table(
                "Ranked by days saved; limedry ships no prices",
                List.of(
                        Table.Column.words("Measure"),
                        Table.Column.words("Days saved"),
                        Table.Column.words("Uses, against the job as it stands"),
                        Table.Column.words("Cost at your rates"),
                        Table.Column.words("Watch")),
                cells);
    }

    private static Object value(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : "";
    }

    private CsvSheet sheet() {
        List<List<?>> lines = new ArrayList<>();
        for (Row row : rows) {
            lines.add(List.of(
                    row.name(),
                    row.tried().measure().measure().room(),
                    row.saved().likely(),
                    value(row.saved().low()),
                    value(row.saved().high()),
                    row.tied(),
                    row.energy().electricKWh(),
                    row.energy().fuelKWh(),
                    row.litresMore(),
                    row.fumes(),
                    row.cost(),
                    row.costPerDay(),
                    String.join(
                            " ", row.warned().stream().map(Enum::name).sorted().toList())));
        }
        return new CsvSheet(
                List.of(
                        "measure",
                        "room",
                        "daysSaved",
                        "daysSavedOneInFive",
                        "daysSavedFourInFive",
                        "tieWithRowBefore",
                        "electricKWhMore",
                        "fuelKWhMore",
                        "litresOutMore",
                        "burnsFuelInTheRoom",
                        "cost",
                        "costPerDaySaved",
                        "warnings"),
                lines);
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object();
        root.put("site", findings.site().name());
        root.put(
                "lastCoatReady",
                findings.ready()
                        .map(findings.days()::date)
                        .map(Object::toString)
                        .orElse(null));
        JsonText.putCautions(root, OptionsAnswer.situation(findings));
        ArrayNode refused = root.putArray("notTriedForDanger");
        findings.refused().forEach(measure -> refused.add(measure.measure().name()));
        ArrayNode measures = root.putArray("measures");
        for (Row row : rows) {
            ObjectNode node = measures.addObject();
            node.put("measure", row.name());
            node.put("burnsFuelInTheRoom", row.fumes());
            node.put("unfluedHeaterOut", row.tried().measure().measure().fuelOut());
            node.put("daysSaved", row.saved().likely());
            row.saved().low().ifPresent(low -> node.put("daysSavedOneInFive", low));
            row.saved().high().ifPresent(high -> node.put("daysSavedFourInFive", high));
            node.put("tieWithTheOneBefore", row.tied());
            node.put("electricKWhMore", row.energy().electricKWh());
            node.put("fuelKWhMore", row.energy().fuelKWh());
            node.put("litresOutMore", row.litresMore());
            row.cost().ifPresent(cost -> node.put("cost", cost));
            row.costPerDay().ifPresent(cost -> node.put("costPerDaySaved", cost));
        }
        return root;
    }
}
