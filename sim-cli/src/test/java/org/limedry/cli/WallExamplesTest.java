package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables beside the example cases come from the formulas that their README names. */
final class WallExamplesTest {
    // EXACT: the formulas of the benchmark sheets, to the nine digits that are written; write with
    // -Dlimedry.write=true.
    @Test
    void tables_areThoseOfTheirFormulas() throws IOException {
        for (Map.Entry<String, String> table : ExampleTables.all().entrySet()) {
            Path file = WallCases.FOLDER.resolve(table.getKey());
            if (Boolean.getBoolean("limedry.write")) {
                Files.writeString(file, table.getValue());
            }
            assertSame(table.getValue(), Files.readString(file), table.getKey());
        }
    }

    @Test
    void tables_inTheFolder_areAllTold() throws IOException {
        try (Stream<Path> files = Files.list(WallCases.FOLDER)) {
            Set<String> found = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv"))
                    .collect(Collectors.toSet());

            assertEquals(ExampleTables.all().keySet(), found);
        }
    }

    private static void assertSame(String expected, String found, String name) {
        List<String> expectedCells = List.of(expected.split("[,\n]"));
        List<String> foundCells = List.of(found.split("[,\n]"));
        assertEquals(expectedCells.size(), foundCells.size(), name);
        for (int k = 0; k < expectedCells.size(); k++) {
            if (expectedCells.get(k).matches("[-+.0-9eE]+")) {
                double value = Double.parseDouble(expectedCells.get(k));
                // The ninth digit may round either way where Math.exp differs in its last.
                assertEquals(value, Double.parseDouble(foundCells.get(k)), 2.0e-8 * Math.abs(value), name);
            } else {
                assertEquals(expectedCells.get(k), foundCells.get(k), name);
            }
        }
    }
}
