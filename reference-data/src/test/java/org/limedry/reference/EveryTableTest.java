package org.limedry.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Loads every table that is on the class path and holds it to what is expected of it. */
class EveryTableTest {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern STATUS = Pattern.compile("READ|COMPUTED|MEMORY");

    private static final Map<String, ReferenceTable.Row> EXPECTED =
            ReferenceTable.load("expected_tables").rows().stream()
                    .collect(Collectors.toMap(row -> row.text("table"), Function.identity()));

    private static final List<Range> RANGES = ReferenceTable.load("expected_ranges").rows().stream()
            .map(row -> new Range(Pattern.compile(row.text("column")), row.number("low"), row.number("high")))
            .toList();

    private record Range(Pattern column, double low, double high) {}

    /** Names of the tables that lie on the class path, whether anybody expects them or not. */
    static List<String> tables() throws IOException, URISyntaxException {
        URL known = Objects.requireNonNull(ReferenceTable.class.getResource("weather/stations.csv"));
        Path root = Objects.requireNonNull(Path.of(known.toURI()).getParent()).getParent();
        try (Stream<Path> files = Files.walk(Objects.requireNonNull(root))) {
            return files.filter(file -> file.toString().endsWith(".csv"))
                    .map(file ->
                            root.relativize(file).toString().replace('\\', '/').replace(".csv", ""))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void tables_onTheClassPath_areThoseExpected() throws IOException, URISyntaxException {
        // PINNED: 45 tables brought in and the list of stations.
        assertEquals(46, tables().size());
        assertEquals(EXPECTED.keySet(), new HashSet<>(tables()));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void table_isListedWithItsLicence(String name) throws IOException {
        String page = Files.readString(Path.of("..", "docs", "reference-data.md"));

        assertTrue(page.contains("\n| `" + name + "` |"));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void head_saysSourceReadingUnitsAndLicence(String name) {
        Provenance head = ReferenceTable.load(name).provenance();

        assertFalse(head.source().isBlank());
        assertTrue(STATUS.matcher(head.read()).find(), head.read());
        assertFalse(head.units().isBlank());
        assertFalse(head.licence().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void shape_isAsExpected(String name) {
        ReferenceTable table = ReferenceTable.load(name);

        ReferenceTable.Row expected = EXPECTED.get(name);
        assertEquals(expected.text("header"), String.join("|", table.header()));
        assertEquals(expected.text("rows"), Integer.toString(table.rows().size()));
        assertEquals(expected.text("numbers"), Long.toString(numbers(table)));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void numbers_lieWithinTheirRanges(String name) {
        ReferenceTable table = ReferenceTable.load(name);

        for (String column : table.header()) {
            for (ReferenceTable.Row row : table.rows()) {
                if (isNumber(row, column)) {
                    assertWithin(range(name + ":" + column), row, column);
                }
            }
        }
    }

    private static void assertWithin(Range range, ReferenceTable.Row row, String column) {
        double value = row.number(column);
        assertTrue(
                value >= range.low() && value <= range.high(),
                () -> column + " in line " + row.line() + " is " + value + ", outside " + range);
    }

    private static Range range(String column) {
        return RANGES.stream()
                .filter(range -> range.column().matcher(column).matches())
                .findFirst()
                .orElseGet(() -> fail("no range is expected of " + column));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void rows_standInOrder(String name) {
        String order = EXPECTED.get(name).text("order");
        List<String> keys = order.isEmpty() ? List.of() : List.of(order.split(" "));
        List<ReferenceTable.Row> rows = ReferenceTable.load(name).rows();
        Set<List<String>> closed = new HashSet<>();

        for (int i = 1; i < rows.size() && !keys.isEmpty(); i++) {
            int changed = firstDifference(rows.get(i - 1), rows.get(i), keys);
            assertTrue(changed < keys.size(), "the key of line " + rows.get(i).line() + " occurs twice");
            assertFollows(rows.get(i - 1), rows.get(i), keys.subList(0, changed + 1), closed);
        }
    }

    private static int firstDifference(ReferenceTable.Row one, ReferenceTable.Row other, List<String> keys) {
        int same = 0;
        while (same < keys.size() && one.text(keys.get(same)).equals(other.text(keys.get(same)))) {
            same++;
        }
        return same;
    }

    /** Checks two rows that differ in the last of the keys: a number must rise, a text must not have been left before. */
    private static void assertFollows(
            ReferenceTable.Row before, ReferenceTable.Row after, List<String> keys, Set<List<String>> closed) {
        String changed = keys.get(keys.size() - 1);
        if (isNumber(after, changed)) {
            assertTrue(after.number(changed) > before.number(changed), changed + " falls in line " + after.line());
            return;
        }
        closed.add(texts(before, keys));
        assertFalse(closed.contains(texts(after, keys)), "a group begins again in line " + after.line());
    }

    private static List<String> texts(ReferenceTable.Row row, List<String> keys) {
        List<String> texts = new ArrayList<>();
        keys.forEach(key -> texts.add(row.text(key)));
        return texts;
    }

    private static long numbers(ReferenceTable table) {
        return table.rows().stream()
                .mapToLong(row -> table.header().stream()
                        .filter(column -> isNumber(row, column))
                        .count())
                .sum();
    }

    private static boolean isNumber(ReferenceTable.Row row, String column) {
        return NUMBER.matcher(row.text(column)).matches();
    }
}
