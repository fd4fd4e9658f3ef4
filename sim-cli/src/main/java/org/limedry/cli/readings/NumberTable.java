package org.limedry.cli.readings;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.limedry.cli.problem.InputProblem;

/** A CSV file of numbers under a heading that is known beforehand; lines that begin with # are passed over. */
public final class NumberTable {
    private static final int MOST_PROBLEMS = 10;

    private final String shown;
    private final List<String> columns;
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private List<String> header = List.of();

    private NumberTable(String shown, List<String> columns) {
        this.shown = shown;
        this.columns = columns;
    }

    /**
     * One row.
     *
     * @param line its line in the file
     * @param numbers its numbers, in the order in which the columns were asked for
     */
    public record Row(int line, List<Double> numbers) {
        public Row {
            numbers = List.copyOf(numbers);
        }

        /** Returns the number in a column, counted from 0 as asked for. */
        public double at(int column) {
            return numbers.get(column);
        }
    }

    /**
     * Reads a table.
     *
     * @param text the text of the file
     * @param shown the file as the user named it
     * @param columns the columns that it must have, in any order, and no others
     */
    public static NumberTable parse(String text, String shown, List<String> columns) {
        NumberTable table = new NumberTable(shown, columns);
        CsvFactory factory = CsvFactory.builder()
                .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
                .enable(CsvParser.Feature.TRIM_SPACES)
                .build();
        try (CsvParser parser = factory.createParser(text)) {
            parser.setSchema(CsvSchema.emptySchema().withComments());
            table.readAll(parser);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(e.getLocation().getLineNr(), 0);
            table.problem(line, "", "this is not CSV", String.valueOf(e.getOriginalMessage()));
        } catch (IOException e) {
            table.problem(0, "", "it cannot be read", String.valueOf(e.getMessage()));
        }
        return table;
    }

    /** Returns the rows that can be read. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Returns what is wrong with it, the first few if there are many. */
    public List<InputProblem> problems() {
        if (problems.size() <= MOST_PROBLEMS) {
            return List.copyOf(problems);
        }
        List<InputProblem> few = new ArrayList<>(problems.subList(0, MOST_PROBLEMS));
        String more = "and " + (problems.size() - MOST_PROBLEMS) + " more like these";
        few.add(new InputProblem(shown, 0, "", "must be put right first", more));
        return few;
    }

    /** Reports that a number, though a number, cannot stand where it does. */
    public void refuse(Row row, int column, String rule) {
        problem(row.line(), columns.get(column), text(row.at(column)), rule);
    }

    /** Reports something about the table as a whole. */
    public void refuse(String found, String rule) {
        problem(0, "", found, rule);
    }

    private void readAll(CsvParser parser) throws IOException {
        while (parser.nextToken() != null) {
            CsvLine line = CsvLine.next(parser);
            if (!header.isEmpty()) {
                readRow(line);
            } else if (!readHeader(line)) {
                return;
            }
        }
        if (header.isEmpty()) {
            refuse("there is nothing in it", "must begin with the heading " + String.join(",", columns));
        }
    }

    private boolean readHeader(CsvLine line) {
        header = line.cells().stream().map(String::strip).toList();
        if (header.size() == 1 && header.get(0).contains(";")) {
            problem(line.number(), "", "columns parted by semicolons", "must be parted by commas");
            return false;
        }
        columns.stream()
                .filter(column -> !header.contains(column))
                .forEach(column -> problem(line.number(), column, "no such column", "must be in the heading"));
        IntStream.range(0, header.size())
                .filter(k -> !columns.contains(header.get(k)) || header.indexOf(header.get(k)) != k)
                .forEach(k -> problem(
                        line.number(),
                        header.get(k),
                        columns.contains(header.get(k)) ? "this column stands twice" : "not a column of this table",
                        "the heading must be " + String.join(",", columns)));
        return problems.isEmpty();
    }

    private void readRow(CsvLine line) {
        if (line.cells().size() != header.size()) {
            problem(line.number(), "", line.cells().size() + " cells", "must have " + header.size());
            return;
        }
        List<Double> numbers = new ArrayList<>();
        for (String column : columns) {
            String text = line.cells().get(header.indexOf(column)).strip();
            try {
                // Not Double.parseDouble, which takes NaN, Infinity and a trailing d or f.
                double value = new BigDecimal(text).doubleValue();
                if (Double.isFinite(value)) {
                    numbers.add(value);
                    continue;
                }
            } catch (NumberFormatException e) {
                // Told below, together with numbers too large to be any.
            }
            String found = text.isEmpty() ? "blank" : "\"" + text + "\"";
            problem(line.number(), column, found, "must be a number with a decimal point");
        }
        if (numbers.size() == columns.size()) {
            rows.add(new Row(line.number(), numbers));
        }
    }

    private static String text(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private void problem(int line, String column, String found, String rule) {
        problems.add(new InputProblem(shown, line, column, rule, found));
    }
}
