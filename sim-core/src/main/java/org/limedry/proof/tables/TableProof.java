package org.limedry.proof.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;

/**
 * A table of moist air, column by column.
 *
 * @param table its name
 * @param keys the columns that tell its rows apart
 * @param setUp what is compared
 * @param comparisons every comparison
 */
record TableProof(String table, List<String> keys, String setUp, List<Comparison> comparisons) implements Proof {
    TableProof {
        keys = List.copyOf(keys);
        comparisons = List.copyOf(comparisons);
    }

    @Override
    public String name() {
        return table.replaceFirst("^psychro/", "");
    }

    @Override
    public Kind kind() {
        return Kind.TABLE;
    }

    @Override
    public String source() {
        return ReferenceTable.load(table).provenance().source();
    }

    @Override
    public String bands() {
        return comparisons.stream()
                .collect(Collectors.groupingBy(c -> c.tolerance().reason(), LinkedHashMap::new, names()))
                .entrySet()
                .stream()
                .map(entry -> entry.getValue() + ": " + entry.getKey())
                .collect(Collectors.joining("; "));
    }

    private static Collector<Comparison, ?, String> names() {
        return Collectors.mapping(Comparison::part, Collectors.joining(", "));
    }

    @Override
    public List<Figure> figures() {
        ReferenceTable read = ReferenceTable.load(table);
        return comparisons.stream()
                .flatMap(comparison ->
                        read.rows().stream().filter(comparison.rows()).map(row -> figure(comparison, row, read)))
                .toList();
    }

    private Figure figure(Comparison comparison, ReferenceTable.Row row, ReferenceTable read) {
        double found = comparison.found().applyAsDouble(row);
        Claim claim = new Claim(
                words(row),
                comparison.unit().isEmpty() ? row.text("unit") : comparison.unit(),
                new Source(comparison.label(), table + " line " + row.line() + fromMemory(row, read)),
                Expected.near(
                        row.number(comparison.column()),
                        comparison.tolerance().size().applyAsDouble(row, found)),
                comparison.tolerance().reason(),
                comparison.standing().apply(row));
        return new Figure(name(), comparison.part(), claim, found);
    }

    private String words(ReferenceTable.Row row) {
        String words = keys.stream()
                .filter(key -> !row.text(key).isEmpty())
                .map(key -> key + " " + row.text(key))
                .collect(Collectors.joining(", "));
        return words + " (line " + row.line() + ")";
    }

    private static String fromMemory(ReferenceTable.Row row, ReferenceTable read) {
        boolean isFromMemory =
                read.header().contains("status") && row.text("status").contains("FROM MEMORY");
        return isFromMemory ? ", FROM MEMORY" : "";
    }
}
