package org.limedry.cli.readings;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.limedry.air.Saturation;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;

/** A CSV table of air states. Columns that say nothing about air are kept as they are. */
public final class AirTable {
    /** Air temperature, °C. */
    public static final String CELSIUS = "celsius";

    /** Relative humidity, percent. */
    public static final String RH_PERCENT = "rhPercent";

    /** Barometric pressure, Pa. */
    public static final String PRESSURE_PA = "pressurePa";

    /** Wall temperature, °C; the column may be left out, and its cells may be blank. */
    public static final String WALL_CELSIUS = "wallCelsius";

    private static final List<String> NEEDED = List.of(CELSIUS, RH_PERCENT, PRESSURE_PA);
    private static final long MOST_BYTES = 200_000_000;

    private final String shown;
    private final AirRules rules;
    private final Set<String> reserved;
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<AirRow> rows = new ArrayList<>();
    private List<String> header = List.of();

    private AirTable(String shown, Saturation saturation, List<String> reserved) {
        this.shown = shown;
        this.rules = new AirRules(saturation);
        this.reserved = Set.copyOf(reserved);
    }

    /**
     * Reads a table.
     *
     * @param file the file, named as the user named it
     * @param saturation what relative humidity is counted by
     * @param reserved names of columns that the input must not have, because they will be added to it
     * @throws BadInputException with every problem of the file, if there is one
     */
    public static AirTable read(Path file, Saturation saturation, List<String> reserved) {
        AirTable table = new AirTable(file.toString(), saturation, reserved);
        TextFile.Content content = TextFile.read(file, table.shown, "", MOST_BYTES);
        if (content instanceof TextFile.Text text) {
            table.parse(text.text());
        } else if (content instanceof TextFile.Unreadable unreadable) {
            table.problems.add(unreadable.problem());
        }
        if (!table.problems.isEmpty()) {
            throw new BadInputException(table.problems);
        }
        return table;
    }

    /** Names of the columns, in order. */
    public List<String> header() {
        return header;
    }

    /** The rows, in order. */
    public List<AirRow> rows() {
        return List.copyOf(rows);
    }

    /** Says whether the table has a column of wall temperatures. */
    public boolean hasWalls() {
        return header.contains(WALL_CELSIUS);
    }

    private void parse(String text) {
        CsvFactory factory =
                CsvFactory.builder().enable(CsvParser.Feature.SKIP_EMPTY_LINES).build();
        try (CsvParser parser = factory.createParser(text)) {
            parser.setSchema(CsvSchema.emptySchema());
            readAll(parser);
        } catch (JsonProcessingException e) {
            problem(Math.max(e.getLocation().getLineNr(), 0), "", "this is not CSV", e.getOriginalMessage());
        } catch (IOException e) {
            problem(0, "", "it cannot be read", String.valueOf(e.getMessage()));
        }
    }

    private void readAll(CsvParser parser) throws IOException {
        while (parser.nextToken() != null) {
            CsvLine row = CsvLine.next(parser);
            if (!header.isEmpty()) {
                readRow(row.number(), row.cells());
            } else if (!isRemark(row.cells()) && !readHeader(row.number(), row.cells())) {
                return;
            }
        }
        if (header.isEmpty()) {
            problem(0, "", "there is nothing in it", "must begin with a heading that has " + String.join(",", NEEDED));
        } else if (rows.isEmpty() && problems.isEmpty()) {
            problem(0, "", "there are no rows in it", "must have a row for each state of air");
        }
    }

    /** Below the heading, a first cell that begins with # is a name like any other, and its row is kept. */
    private static boolean isRemark(List<String> cells) {
        return cells.get(0).strip().startsWith("#");
    }

    /** Takes the heading; says whether the rows below it can be read. */
    private boolean readHeader(int line, List<String> cells) {
        header = cells.stream().map(String::strip).toList();
        if (header.size() == 1 && header.get(0).contains(";")) {
            problem(
                    line,
                    "",
                    "columns parted by semicolons",
                    "must be parted by commas, with a decimal point in numbers");
            return false;
        }
        NEEDED.stream()
                .filter(column -> !header.contains(column))
                .forEach(column -> problem(line, column, "no such column", "must be in the heading"));
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            if (!seen.add(column)) {
                problem(line, column, "this column stands twice", "must stand once");
            } else if (reserved.contains(column)) {
                problem(line, column, "this column is one of the results", "must not be in the input");
            }
        }
        return problems.isEmpty();
    }

    private void readRow(int line, List<String> cells) {
        if (cells.size() != header.size()) {
            String commas = cells.size() > header.size() ? "; write numbers with a decimal point, not a comma" : "";
            problem(line, "", cells.size() + " cells", "must have " + header.size() + ", as the heading has" + commas);
            return;
        }
        int before = problems.size();
        OptionalDouble celsius = number(line, cells, CELSIUS, rules::brokenByCelsius);
        OptionalDouble rhPercent = number(line, cells, RH_PERCENT, rules::brokenByRhPercent);
        OptionalDouble pressurePa = number(line, cells, PRESSURE_PA, rules::brokenByPressurePa);
        boolean walled = hasWalls() && !cell(cells, WALL_CELSIUS).isEmpty();
        OptionalDouble wall =
                walled ? number(line, cells, WALL_CELSIUS, rules::brokenByCelsius) : OptionalDouble.empty();
        if (problems.size() == before) {
            double air = celsius.orElseThrow();
            double pressure = pressurePa.orElseThrow();
            rules.brokenByBoth(air, pressure)
                    .ifPresentOrElse(
                            rule -> problem(line, PRESSURE_PA, cell(cells, PRESSURE_PA), rule),
                            () -> rows.add(new AirRow(
                                    cells,
                                    rules.air(air, rhPercent.orElseThrow(), pressure),
                                    wall.orElse(Double.NaN))));
        }
    }

    /** Returns a number that keeps its rule, or reports it. */
    private OptionalDouble number(
            int line, List<String> cells, String column, DoubleFunction<Optional<String>> broken) {
        String text = cell(cells, column);
        try {
            // Not Double.parseDouble, which takes NaN, Infinity and a trailing d or f.
            double value = new BigDecimal(text).doubleValue();
            Optional<String> rule = broken.apply(value);
            rule.ifPresent(words -> problem(line, column, text, words));
            return rule.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(value);
        } catch (NumberFormatException e) {
            problem(
                    line,
                    column,
                    text.isEmpty() ? "blank" : "\"" + text + "\"",
                    "must be a number with a decimal point");
            return OptionalDouble.empty();
        }
    }

    private String cell(List<String> cells, String column) {
        return cells.get(header.indexOf(column)).strip();
    }

    private void problem(int line, String column, String found, String rule) {
        problems.add(new InputProblem(shown, line, column, rule, found));
    }
}
