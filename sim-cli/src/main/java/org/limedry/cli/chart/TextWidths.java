package org.limedry.cli.chart;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/** How wide letters are, by a table: a drawing must not depend on the fonts of the machine that makes it. */
final class TextWidths {
    private static final String TABLE = "text-widths.csv";
    private static final double UNITS_PER_SIZE = 2048;
    private static final TextWidths SANS = read();

    private final Map<Integer, Integer> regular;
    private final Map<Integer, Integer> bold;

    private TextWidths(Map<Integer, Integer> regular, Map<Integer, Integer> bold) {
        this.regular = Map.copyOf(regular);
        this.bold = Map.copyOf(bold);
    }

    /** Returns the width of a text in type sizes. */
    static double inSizes(String words, boolean bold) {
        Map<Integer, Integer> table = bold ? SANS.bold : SANS.regular;
        return words.codePoints()
                .mapToDouble(c -> table.containsKey(c) ? table.get(c) / UNITS_PER_SIZE : 1)
                .sum();
    }

    private static TextWidths read() {
        try (InputStream in = Objects.requireNonNull(TextWidths.class.getResourceAsStream(TABLE), TABLE);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            Map<Integer, Integer> regular = new HashMap<>();
            Map<Integer, Integer> bold = new HashMap<>();
            reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", 3))
                    .forEach(cells -> {
                        int codePoint = Integer.parseInt(cells[0], 16);
                        regular.put(codePoint, Integer.valueOf(cells[1]));
                        bold.put(codePoint, Integer.valueOf(cells[2]));
                    });
            return new TextWidths(regular, bold);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
