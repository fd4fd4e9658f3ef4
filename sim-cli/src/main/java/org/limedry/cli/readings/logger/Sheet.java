package org.limedry.cli.readings.logger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A file as lines of cells, with what stands above the readings told apart from them. Of a long file these are the first
 * lines and some of the others.
 *
 * @param rows the lines
 * @param headingLine line with the headings; 0 for none
 * @param headings what stands over each column; empty texts where nothing does
 * @param readings the lines from the first reading on, blank ones left out
 * @param usualColumns how many cells a reading has, most of the time
 */
record Sheet(List<Row> rows, int headingLine, List<String> headings, List<Row> readings, int usualColumns) {
    private static final Pattern UNIT_WORD = Pattern.compile(
            "[(\\[]?(.{0,2}[CF]|deg\\.? ?[CF]|.?K|%( ?r\\.?[hF]\\.?)?|rh|m/s|[dmyh/:. -]{2,20}|)[)\\]]?",
            Pattern.CASE_INSENSITIVE);

    Sheet {
        rows = List.copyOf(rows);
        headings = List.copyOf(headings);
        readings = List.copyOf(readings);
    }

    /** Finds the headings by what the lines look like. */
    static Sheet laidOut(List<Row> rows, Look look) {
        int first = firstReading(rows, 0, look);
        int heading = headingAbove(rows, first);
        return below(rows, heading + 1, heading < 0 ? List.of() : headings(rows, heading), first, look);
    }

    /** Takes the headings from the line that the user names. */
    static Sheet laidOut(List<Row> rows, Look look, int headingLine) {
        List<String> headings =
                headingLine == 0 ? List.of() : rows.get(headingLine - 1).cells();
        return below(rows, headingLine, headings, firstReading(rows, headingLine, look), look);
    }

    private static Sheet below(List<Row> rows, int headingLine, List<String> headings, int first, Look look) {
        List<Row> readings = rows.subList(first, rows.size()).stream()
                .filter(row -> !row.isBlank())
                .toList();
        return new Sheet(rows, headingLine, headings, readings, usualCells(readings, look));
    }

    private static int usualCells(List<Row> rows, Look look) {
        Map<Integer, Long> counts = rows.stream()
                .filter(look::takes)
                .collect(Collectors.groupingBy(row -> row.cells().size(), Collectors.counting()));
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    private static int firstReading(List<Row> rows, int from, Look look) {
        int usual = usualCells(rows, look);
        return IntStream.range(from, rows.size())
                .filter(i -> rows.get(i).cells().size() == usual && look.takes(rows.get(i)))
                .findFirst()
                .orElse(rows.size());
    }

    /** The nearest line above that has words in as many cells, give or take one or two, and no number. */
    private static int headingAbove(List<Row> rows, int first) {
        if (first >= rows.size()) {
            return -1;
        }
        int cells = rows.get(first).cells().size();
        return IntStream.iterate(first - 1, i -> i >= 0, i -> i - 1)
                .filter(i -> rows.get(i).cells().size() >= 2)
                .filter(i -> Math.abs(rows.get(i).cells().size() - cells) <= 2)
                .filter(i -> rows.get(i).numbers() == 0 && !rows.get(i).hasDate())
                .findFirst()
                .orElse(-1);
    }

    /** A line of units below the names is taken together with them. */
    private static List<String> headings(List<Row> rows, int at) {
        Row last = rows.get(at);
        boolean onlyUnits =
                last.cells().stream().allMatch(cell -> UNIT_WORD.matcher(cell).matches());
        if (!onlyUnits || at == 0 || rows.get(at - 1).cells().size() < 2) {
            return last.cells();
        }
        Row names = rows.get(at - 1);
        List<String> both = new ArrayList<>();
        for (int i = 0; i < Math.max(names.cells().size(), last.cells().size()); i++) {
            both.add((names.cell(i) + " " + last.cell(i)).strip());
        }
        return both;
    }

    int columns() {
        return readings.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    }

    /** Returns the cells of the heading as they stand; nothing if there is none. */
    List<String> headingCells() {
        return headingLine == 0 ? List.of() : rows.get(headingLine - 1).cells();
    }

    String heading(int column) {
        return column < headings.size() ? headings.get(column) : "";
    }

    /** Returns the lines above the readings that are no headings; blank ones left out. */
    List<Row> skipped() {
        int first = readings.isEmpty() ? Integer.MAX_VALUE : readings.get(0).line();
        return rows.stream()
                .filter(row -> row.line() < first
                        && row.line() != headingLine
                        && !row.text().isBlank())
                .toList();
    }

    /** Returns whether at least half of the filled cells of a column are of a kind; blank columns are of none. */
    boolean isMostly(int column, Predicate<String> kind) {
        List<String> filled = readings.stream()
                .map(row -> row.cell(column))
                .filter(cell -> !cell.isEmpty())
                .toList();
        long alike = filled.stream().filter(kind).count();
        return alike > 0 && alike * 2 >= filled.size();
    }

    /** Returns the middle one of a column's numbers. */
    double median(int column) {
        List<Double> values = readings.stream()
                .flatMap(row -> Figure.of(row.cell(column)).stream())
                .map(Figure::value)
                .sorted()
                .toList();
        return values.isEmpty() ? Double.NaN : values.get(values.size() / 2);
    }

    /** Returns whether a column only counts the lines. */
    boolean isCount(int column) {
        List<Double> values = readings.stream()
                .flatMap(row -> Figure.of(row.cell(column)).stream())
                .map(Figure::value)
                .toList();
        return values.size() > 1
                && IntStream.range(1, values.size()).allMatch(i -> values.get(i) - values.get(i - 1) == 1.0);
    }

    /** Returns a column in words: its number and its heading. */
    String words(int column) {
        String heading = heading(column);
        return "column " + (column + 1) + (heading.isEmpty() ? "" : " \"" + heading + "\"");
    }

    boolean isEmpty() {
        return readings.isEmpty();
    }

    List<Integer> allColumns() {
        return columns() == 0
                ? Collections.emptyList()
                : IntStream.range(0, columns()).boxed().toList();
    }
}
