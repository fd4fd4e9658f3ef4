package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run says of an unflued heater, and of mould on bare boards, on the invented rooms of the examples. */
final class UnfluedHeaterTest {
    // EXACT: the box tells the litres of the account and the highest carbon dioxide of any hour, each to its printed
    // digit.
    @Test
    void report_ofAnUnfluedHeater_tellsWaterCarbonDioxideAndMonoxideInOneBox(@TempDir Path folder) throws IOException {
        Cli.run("run", "../docs/examples/winter-room/gas.yaml", "--quick", "--out", folder);

        String report = Files.readString(folder.resolve("report.html"));
        double litres = Cli.json(folder.resolve("summary.json"))
                .at("/waterAccount/plantAddedKg")
                .asDouble();
        String box = report.substring(report.indexOf("<b>Carbon monoxide</b>: not worked out"));
        assertEquals(box, report.substring(report.lastIndexOf("<b>Carbon monoxide</b>: not worked out")), "one box");
        assertTrue(report.contains(String.format(Locale.ROOT, "%,.0f", highest(folder, "room.carbonDioxidePpm"))), box);
        assertTrue(report.contains(String.format(Locale.ROOT, "%,.0f", litres)), box);
    }

    // EXACT: a warning of mould begins at an index of 1; the boards of the demo's unlisted ceiling begin damp and stay
    // so.
    @Test
    void summary_ofDampBareBoards_warnsOfMould(@TempDir Path folder) throws IOException {
        Cli.run("run", "../docs/examples/net-loft.yaml", "--quick", "--out", folder);

        int found = 0;
        for (JsonNode warning : Cli.json(folder.resolve("summary.json")).get("warnings")) {
            if (warning.get("kind").asText().equals("MOULD")) {
                found++;
                assertTrue(warning.get("value").asDouble() >= 1.0, warning.toString());
                assertTrue(!warning.get("subject").asText().contains("partition"), "laths in lime are not looked at");
            }
        }
        assertTrue(found > 0, "no warning of mould");
    }

    private static double highest(Path folder, String column) throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("hours.csv"));
        int at = Arrays.asList(lines.get(0).split(",", -1)).indexOf(column);
        return lines.stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[at]))
                .max()
                .orElseThrow();
    }
}
