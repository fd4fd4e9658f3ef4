package org.limedry.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** A published or computed table, as its file on the class path holds it: digits unchanged, missing cells missing. */
public final class ReferenceTable {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();

    private final String name;
    private final Provenance provenance;
    private final List<String> header;
    private final List<Row> rows;

    private ReferenceTable(String name, CSVParser csv) {
        this.name = name;
        this.provenance = Provenance.of(commentLines(csv.getHeaderComment()));
        this.header = List.copyOf(csv.getHeaderNames());
        List<Row> read = new ArrayList<>();
        for (CSVRecord cells : csv) {
            read.add(new Row(cells, csv.getCurrentLineNumber()));
        }
        this.rows = List.copyOf(read);
    }

    /**
     * Reads a table.
     *
     * @param name area and file without its ending, such as {@code psychro/magnus_grid}
     * @throws IllegalArgumentException if there is no such table
     * @throws IllegalStateException if the file is not a table: a row with another number of cells than the heading, a
     *     head that is not {@code # key: value}
     */
    public static ReferenceTable load(String name) {
        try (InputStream in = open(name);
                CSVParser csv = FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return new ReferenceTable(name, csv);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens the file of a table. */
    static InputStream open(String name) {
        InputStream in = ReferenceTable.class.getResourceAsStream(name + ".csv");
        if (in == null) {
            throw new IllegalArgumentException("name: must be a table on the class path, was " + name);
        }
        return in;
    }

    private static List<String> commentLines(@Nullable String comment) {
        return comment == null ? List.of() : comment.lines().toList();
    }

    /** Area and file without its ending, such as {@code psychro/magnus_grid}. */
    public String name() {
        return name;
    }

    /** Where the figures come from. */
    public Provenance provenance() {
        return provenance;
    }

    /** Names of the columns, in order. */
    public List<String> header() {
        return header;
    }

    /** The rows in the order of the file. */
    public List<Row> rows() {
        return rows;
    }

    /** One row of a table. */
    public final class Row {
        private final CSVRecord cells;
        private final long line;

        private Row(CSVRecord cells, long line) {
            this.cells = cells;
            this.line = line;
            if (!cells.isConsistent()) {
                throw new IllegalStateException(
                        place() + ": must have " + header.size() + " cells, was " + cells.size());
            }
        }

        /** Line in the file, counted from 1, comment lines included. */
        public long line() {
            return line;
        }

        /**
         * Returns a cell as it is written; empty when it is missing.
         *
         * @throws IllegalArgumentException if the table has no such column
         */
        public String text(String column) {
            if (!cells.isMapped(column)) {
                throw new IllegalArgumentException("column: must be one of " + header + ", was " + column);
            }
            return cells.get(column);
        }

        /**
         * Returns a cell as a number.
         *
         * @throws IllegalArgumentException if the table has no such column
         * @throws IllegalStateException if the cell is missing or not a decimal number
         */
        public double number(String column) {
            String text = text(column);
            try {
                // Not Double.parseDouble, which takes NaN, hexadecimal digits and a trailing d or f.
                return new BigDecimal(text).doubleValue();
            } catch (NumberFormatException e) {
                throw new IllegalStateException(
                        place() + ": " + column + ": must be a number, was \"" + text + "\"", e);
            }
        }

        /**
         * Returns a cell as a number, empty when it is missing.
         *
         * @throws IllegalArgumentException if the table has no such column
         * @throws IllegalStateException if the cell is there but not a decimal number
         */
        public OptionalDouble optionalNumber(String column) {
            return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
        }

        /**
         * Returns a number with its range. A missing end of the range is the number itself.
         *
         * @throws IllegalArgumentException if the table has no such column, or the number lies outside its range
         * @throws IllegalStateException if a cell that is needed is not a decimal number
         */
        Estimate estimate(String likely, String low, String high) {
            double value = number(likely);
            return new Estimate(
                    value,
                    optionalNumber(low).orElse(value),
                    optionalNumber(high).orElse(value));
        }

        private String place() {
            return name + ".csv line " + line;
        }
    }
}
