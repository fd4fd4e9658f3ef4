package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.limedry.cli.ask.ExitCode;

/** A wall case run by the command, and what it wrote. */
final class WallCases {
    static final Path FOLDER = Path.of("..", "docs", "examples", "wall");

    private final Path results;
    private final String printed;

    private WallCases(Path results, String printed) {
        this.results = results;
        this.printed = printed;
    }

    /** Runs a case that must succeed. */
    static WallCases run(Path file, Path results) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();

        int code = Main.run(
                new String[] {"wall", file.toString(), "--out", results.toString()},
                new PrintWriter(out),
                new PrintWriter(err));

        assertEquals("", err.toString());
        assertEquals(ExitCode.DONE.code(), code);
        return new WallCases(results, out.toString());
    }

    String printed() {
        return printed;
    }

    /** Returns the rows of a file, each by its column names. */
    List<Map<String, String>> rows(String file) {
        try {
            List<String> lines = Files.readAllLines(results.resolve(file));
            List<String> heading = List.of(lines.get(0).split(","));
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = List.of(line.split(","));
                Map<String, String> row = new HashMap<>();
                for (int k = 0; k < heading.size(); k++) {
                    row.put(heading.get(k), cells.get(k));
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double profile(double hour, double mm, String column) {
        return only(rows("profiles.csv").stream()
                .filter(row -> is(row, "hour", hour) && is(row, "xMm", mm))
                .map(row -> row.get(column))
                .toList());
    }

    double layer(double hour, String layer) {
        return only(rows("layers.csv").stream()
                .filter(row -> is(row, "hour", hour) && row.get("layer").equals(layer))
                .map(row -> row.get("waterKgPerM2"))
                .toList());
    }

    double face(double hour, String face, String column) {
        return only(rows("faces.csv").stream()
                .filter(row -> is(row, "hour", hour) && row.get("face").equals(face))
                .map(row -> row.get(column))
                .toList());
    }

    private static boolean is(Map<String, String> row, String column, double value) {
        return Math.abs(Double.parseDouble(row.get(column)) - value) < 1.0e-9;
    }

    private static double only(List<String> values) {
        assertEquals(1, values.size(), "rows found");
        return Double.parseDouble(values.get(0));
    }
}
