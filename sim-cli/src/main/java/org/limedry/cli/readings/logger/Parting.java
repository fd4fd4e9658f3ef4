package org.limedry.cli.readings.logger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.readings.CsvCells;

/** What stands between the cells of a line. Listed in the order in which they are believed when two would do. */
public enum Parting {
    TAB('\t'),
    SEMICOLON(';'),
    COMMA(',');

    /** From the first lines and from the last. */
    private static final int LINES_LOOKED_AT = 400;

    private final char sign;

    Parting(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns the one by which most lines have the same number of cells. */
    static Parting likeliest(List<Lines.Line> lines) {
        List<String> all = lines.stream()
                .map(Lines.Line::text)
                .filter(line -> !line.isBlank())
                .toList();
        List<String> few = new ArrayList<>(all.subList(0, Math.min(LINES_LOOKED_AT, all.size())));
        few.addAll(all.subList(Math.max(few.size(), all.size() - LINES_LOOKED_AT), all.size()));
        return Arrays.stream(values())
                .max(Comparator.comparingLong((Parting parting) -> parting.linesAlike(few))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
    }

    private long linesAlike(List<String> lines) {
        CsvCells cells = new CsvCells(sign);
        Map<Integer, Long> byCells = lines.stream()
                .flatMap(line -> cells.split(line).stream())
                .map(List::size)
                .filter(count -> count > 1)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return byCells.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }
}
