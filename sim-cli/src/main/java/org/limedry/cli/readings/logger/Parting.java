package org.limedry.cli.readings.logger;

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
        List<String> few = lines.stream()
                .map(Lines.Line::text)
                .filter(line -> !line.isBlank())
                .limit(LINES_LOOKED_AT)
                .toList();
        return Arrays.stream(values())
                .max(Comparator.comparingLong((Parting parting) -> parting.linesAlike(few))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
    }

    private long linesAlike(List<String> lines) {
        Map<Integer, Long> byCells = lines.stream()
                .flatMap(line -> CsvCells.of(line, sign).stream())
                .map(List::size)
                .filter(cells -> cells > 1)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return byCells.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }
}
