package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases that a stranger might bring: extreme tables, faces and states. Invented. */
final class WallCommandTest {
    @TempDir
    private Path folder;

    private Path file(String name, String... lines) throws IOException {
        return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
    }

    private void tables() throws IOException {
        file(
                "water.csv",
                "waterKgPerM3,vapourPermeabilityKgPerMSPa,conductivityWPerMK",
                "0,2e-11,0.5",
                "250,2e-12,1.5");
        file(
                "wide.csv",
                "suctionPa,waterKgPerM3,liquidConductivityS",
                "100,250,1e-8",
                "1e4,240,1e-9",
                "1e5,150,1e-13",
                "1e6,50,1e-17",
                "1e9,1,1e-25");
        file("none.csv", "liquidConductivityS,suctionPa,waterKgPerM3", "0,1e9,0", "0,1e3,200");
        file(
                "half.csv",
                "suctionPa,waterKgPerM3,liquidConductivityS",
                "1e3,200,1e-9",
                "1e5,150,1e-10",
                "1e6,60,0",
                "1e9,0,0");
    }

    private WallCases run(String layers, String outside, String inside, String rest) throws IOException {
        tables();
        Path file = file("case.yaml", "layers:", layers, "outside: " + outside, "inside: " + inside, rest);
        return WallCases.run(file, folder.resolve("out"));
    }

    private static String layer(String name, double mm, String table, String start) {
        return "  - {name: " + name + ", thicknessMm: " + mm
                + ", dryDensityKgPerM3: 1600, dryHeatCapacityJPerKgK: 850, " + "suctionTable: " + table
                + ".csv, waterTable: water.csv, start: {" + start + "}}";
    }

    // EXACT: a full layer holds what the wettest row of its table says, and 4e-4 of it in the solver's store; drying by
    // two
    // films it never gains. Tables of 17 decades, without liquid, and with a fall to 0; falling order, columns mixed.
    @ParameterizedTest
    @CsvSource({"wide, 250", "none, 200", "half, 200"})
    void fullLayer_thatDries_startsAtTheWettestRowAndCloses(String table, double full) throws IOException {
        WallCases found = run(
                layer("a", 100.0, table, "celsius: 15, rhPercent: 100"),
                "{celsius: 3, rhPercent: 85, heatTransferWPerM2K: 20, vapourTransferSPerM: 1.3e-7}",
                "{celsius: 18, rhPercent: 55, heatTransferWPerM2K: 8, vapourTransferSPerM: 5e-8}",
                "hours: 200\noutputHours: [0, 24]\nprofilePositionsMm: [50]");

        assertEquals(full, found.profile(0.0, 50.0, "waterKgPerM3"), 1.0e-9 * full); // rounding
        assertEquals(0.0, found.profile(0.0, 50.0, "suctionPa"), 1.0e-9); // rounding of exp and ln
        assertEquals(0.1 * full, found.layer(0.0, "a"), 4.1e-4 * 0.1 * full); // the store
        assertTrue(found.layer(200.0, "a") < found.layer(24.0, "a"));
        double through = found.face(200.0, "outside", "cumulativeWaterKgPerM2")
                + found.face(200.0, "inside", "cumulativeWaterKgPerM2");
        assertEquals(through, found.layer(200.0, "a") - found.layer(0.0, "a"), 1.0e-6); // inverse of the table
    }

    // EXACT: nothing passes a sealed wall, so what one layer loses the other gains.
    @Test
    void sealedWall_keepsItsWater() throws IOException {
        WallCases found = run(
                layer("wet", 20.0, "wide", "celsius: 25, suctionPa: 5e4") + "\n"
                        + layer("dry", 30.0, "half", "celsius: 5, rhPercent: 40"),
                "{sealed: true, celsius: 4}",
                "{sealed: true}",
                "hours: 100\noutputHours: [0]");

        double lost = found.layer(0.0, "wet") - found.layer(100.0, "wet");
        assertTrue(lost > 0.1, "lost " + lost);
        assertEquals(lost, found.layer(100.0, "dry") - found.layer(0.0, "dry"), 1.0e-6); // inverse of the table
        assertEquals(0.0, found.face(100.0, "inside", "waterFluxKgPerM2S"), 0.0);
        assertEquals(0.0, found.face(100.0, "outside", "heatFluxWPerM2"), 0.0);
        assertTrue(found.printed().contains("The outside is sealed: its celsius is not used."), found.printed());
    }

    @Test
    void saturation_byItsFormerName_isRefusedWithTheNewOne() throws IOException {
        tables();
        Path file = file(
                "former.yaml",
                "layers:",
                layer("wall", 300.0, "half", "celsius: 15, rhPercent: 80"),
                "outside: {celsius: 5, rhPercent: 80, fixed: true}",
                "inside: {celsius: 15, rhPercent: 60, fixed: true}",
                "constants: {saturation: MAKER_MTN}",
                "hours: 48");
        StringWriter err = new StringWriter();

        int code = Main.run(
                new String[] {
                    "wall", file.toString(), "--out", folder.resolve("out").toString()
                },
                new PrintWriter(Writer.nullWriter()),
                new PrintWriter(err, true));

        assertEquals(2, code);
        assertTrue(err.toString().contains("constants.saturation: \"MAKER_MTN\""), err::toString);
        assertTrue(err.toString().contains("(magnus_to_50c meant?)"), err::toString);
    }

    // EXACT: a fixed face is in its given state; the summary tells what was printed.
    @Test
    void paintOnAHotWall_runs() throws IOException {
        WallCases found = run(
                layer("wall", 300.0, "half", "celsius: 15, rhPercent: 80") + "\n"
                        + layer("paint", 0.1, "none", "celsius: 15, rhPercent: 80"),
                "{celsius: 80, rhPercent: 5, fixed: true}",
                "{celsius: -20, rhPercent: 90, heatTransferWPerM2K: 8, vapourTransferSPerM: 5e-8}",
                "constants: {saturation: Sonntag, belowZero: ice, kelvinAt: 20}\nhours: 48\n"
                        + "profilePositionsMm: [0, 300, 300.05, 300.1]\naccuracy: {relative: 1e-3, cells: 60}");

        assertEquals(80.0, found.profile(48.0, 0.0, "celsius"), 1.0e-12);
        assertEquals(5.0, found.profile(48.0, 0.0, "rhPercent"), 1.0e-9);
        assertTrue(found.profile(48.0, 300.1, "celsius") < 0.0);
        JsonNode summary = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("out").resolve("summary.json")));
        assertTrue(summary.get("complete").asBoolean());
        assertEquals(60, summary.get("written").get("cells").asInt(), 6); // as near as the grading allows
        assertEquals(0.0, summary.get("balance").get("waterResidualKgPerM2").asDouble(), 1.0e-11);
        assertTrue(summary.get("balance").get("heatResidualJPerM2").asDouble()
                < 1.0e-3 * summary.get("balance").get("heatThroughFacesJPerM2").asDouble());
        assertEquals(
                found.layer(48.0, "paint"),
                summary.get("layers").get(1).get("waterKgPerM2").asDouble(),
                0.0);
    }

    // EXACT: more condenses behind a tight layer than the wool can hold; it stays there, is counted and told.
    @Test
    void condensation_withoutRoom_staysInTheAccount() throws IOException {
        file("wool.csv", "suctionPa,waterKgPerM3,liquidConductivityS", "1e3,2,0", "1e7,0.5,0", "1e9,0.01,0");
        file("foil.csv", "waterKgPerM3,vapourPermeabilityKgPerMSPa,conductivityWPerMK", "0,1e-16,0.2", "1,1e-16,0.2");
        file("dry.csv", "suctionPa,waterKgPerM3,liquidConductivityS", "1e3,0,0", "1e9,0,0");
        String foil = "  - {name: foil, thicknessMm: 1, dryDensityKgPerM3: 900, dryHeatCapacityJPerKgK: 1500, "
                + "suctionTable: dry.csv, waterTable: foil.csv, start: {celsius: 5, rhPercent: 50}}";

        WallCases found = run(
                layer("wool", 50.0, "wool", "celsius: 15, rhPercent: 50") + "\n" + foil,
                "{celsius: 22, rhPercent: 70, heatTransferWPerM2K: 8, vapourTransferSPerM: 5e-8}",
                "{celsius: -5, rhPercent: 80, heatTransferWPerM2K: 20, vapourTransferSPerM: 1.3e-7}",
                "hours: 24\noutputHours: [0]");

        double gained = found.layer(24.0, "wool") + found.layer(24.0, "foil") - found.layer(0.0, "wool");
        assertTrue(gained > 0.1, "gained " + gained);
        assertEquals(found.face(24.0, "outside", "cumulativeWaterKgPerM2"), gained, 1.0e-4);
        assertTrue(found.printed().contains("Water stood in full pores"), found.printed());
    }

    // EXACT: a face that follows a series has its state at the hour, also off the rows.
    @Test
    void fixedFace_withASeries_followsIt() throws IOException {
        file("series.csv", "hour,celsius,rhPercent", "-1,10,50", "1,14,60", "1.001,20,90", "30,20,61");

        WallCases found = run(
                layer("a", 50.0, "half", "celsius: 15, rhPercent: 50"),
                "{series: series.csv, fixed: true}",
                "{sealed: true}",
                "hours: 24\noutputHours: [0.5, 1]\nprofilePositionsMm: [0]");

        assertEquals(13.0, found.profile(0.5, 0.0, "celsius"), 1.0e-9); // rounding
        assertEquals(57.5, found.profile(0.5, 0.0, "rhPercent"), 1.0e-9); // rounding
        assertEquals(14.0, found.face(1.0, "outside", "celsius"), 1.0e-9); // rounding
        assertEquals(90.0 - 29.0 * 22.999 / 28.999, found.profile(24.0, 0.0, "rhPercent"), 1.0e-9); // rounding
        assertFalse(found.printed().contains("gave up"));
        assertEquals(
                List.of("0.5", "1.0", "24.0"),
                found.rows("profiles.csv").stream().map(row -> row.get("hour")).toList());
    }
}
