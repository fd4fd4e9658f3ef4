package org.limedry.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * An hourly weather file: a first column of times, then columns of numbers, no quoted cells.
 *
 * <p>Read by hand because such a file has sixty thousand cells and a forecast waits for it; the tables go through the
 * CSV library, and a test holds both readers to the same numbers.
 */
final class HourlyFile {
    private static final int ROWS_IN_A_LEAP_YEAR = 366 * 24;

    private final String name;
    private final Provenance provenance;
    private final Map<String, double[]> columns;
    private final long[] epochSeconds;

    private HourlyFile(String name, Provenance provenance, Map<String, double[]> columns, long[] epochSeconds) {
        this.name = name;
        this.provenance = provenance;
        this.columns = columns;
        this.epochSeconds = epochSeconds;
    }

    static HourlyFile load(String name) {
        try (InputStream in = ReferenceTable.open(name)) {
            return new Reader(name, new String(in.readAllBytes(), StandardCharsets.UTF_8)).file();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Provenance provenance() {
        return provenance;
    }

    int size() {
        return epochSeconds.length;
    }

    long epochSecond(int row) {
        return epochSeconds[row];
    }

    OptionalDouble optional(String column, int row) {
        double[] values = columns.get(column);
        return values == null || Double.isNaN(values[row]) ? OptionalDouble.empty() : OptionalDouble.of(values[row]);
    }

    double required(String column, int row) {
        return optional(column, row)
                .orElseThrow(() -> new IllegalStateException(name + ".csv: " + column + ": missing in row " + row));
    }

    /** Walks once through the text of a file. */
    private static final class Reader {
        private final String name;
        private final String text;
        private int at;

        Reader(String name, String text) {
            this.name = name;
            this.text = text;
        }

        HourlyFile file() {
            List<String> head = new ArrayList<>();
            while (text.charAt(at) == '#') {
                head.add(nextCell('\n').substring(1));
            }
            List<String> header = Arrays.asList(nextCell('\n').split(",", -1));
            long[] times = new long[ROWS_IN_A_LEAP_YEAR];
            double[][] values = new double[header.size()][ROWS_IN_A_LEAP_YEAR];
            int rows = 0;
            while (at < text.length()) {
                times[rows] = epochSecond(nextCell(','));
                for (int column = 1; column < values.length; column++) {
                    values[column][rows] = number(nextCell(column == values.length - 1 ? '\n' : ','));
                }
                rows++;
            }
            Map<String, double[]> columns = new HashMap<>();
            for (int column = 1; column < values.length; column++) {
                columns.put(header.get(column), Arrays.copyOf(values[column], rows));
            }
            return new HourlyFile(name, Provenance.of(head), columns, Arrays.copyOf(times, rows));
        }

        private String nextCell(char end) {
            int stop = text.indexOf(end, at);
            String cell = text.substring(at, stop);
            at = stop + 1;
            return cell;
        }

        private double number(String cell) {
            return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
        }

        /** Reads {@code 2017-01-01T00:00:00}, with or without a Z: a full parser would take longer than all else. */
        private long epochSecond(String time) {
            return LocalDateTime.of(
                            Integer.parseInt(time, 0, 4, 10),
                            Integer.parseInt(time, 5, 7, 10),
                            Integer.parseInt(time, 8, 10, 10),
                            Integer.parseInt(time, 11, 13, 10),
                            Integer.parseInt(time, 14, 16, 10))
                    .toEpochSecond(ZoneOffset.UTC);
        }
    }
}
