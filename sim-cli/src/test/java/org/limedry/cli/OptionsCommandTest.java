package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code limedry options} as a user calls it, on an invented room of the shipped examples. */
final class OptionsCommandTest {
    private static final Path SHUT = Path.of("../docs/examples/winter-room/shut.yaml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    private static String measures(String... lines) {
        return "\nmeasures:\n" + String.join("\n", lines) + "\n";
    }

    // EXACT: cost is kWh at the rate plus hire, less the waiting saved; taken apart from the figures in the CSV.
    @Test
    void options_atTheFirmsRates_addUp(@TempDir Path folder) throws IOException {
        Path site = folder.resolve("shut.yaml");
        Files.writeString(
                site,
                Files.readString(SHUT)
                        + measures(
                                "  - {name: heater, room: room, once: 50, plant: [{kind: electric heater, kW: 2,"
                                        + " thermostatCelsius: 14, on: always}]}",
                                "  - {name: nothing, room: room}")
                        + "rates: {currency: EUR, electricityPerKWh: 0.25, waitingPerDay: 100}\n");

        int code = run("options", site.toString(), "--out", folder.resolve("o").toString());

        assertEquals(0, code, err.toString());
        JsonNode rows = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("o/options.json")))
                .get("measures");
        JsonNode heater = rows.get(0);
        assertEquals("heater", heater.get("measure").asText());
        double saved = heater.get("daysSaved").asDouble();
        assertTrue(saved > 10.0, "winter room, demo story: heat saves weeks, found " + saved);
        assertEquals(
                50.0 + 0.25 * heater.get("electricKWhMore").asDouble() - 100.0 * saved,
                heater.get("cost").asDouble(),
                1e-9); // rounding
        assertEquals(0.0, rows.get(1).get("daysSaved").asDouble(), "the job as it stands saves nothing");
        assertTrue(out.toString().contains("no difference"), out.toString());
    }

    // Two heaters of 2.0 and 2.1 kW under one thermostat: nobody can tell them apart.
    @Test
    void options_thatHardlyDiffer_areTooCloseToCall(@TempDir Path folder) throws IOException {
        Path site = folder.resolve("shut.yaml");
        String heater =
                "  - {name: heater %s, room: room, plant: [{kind: electric heater, kW: %s, thermostatCelsius: 14, on: always}]}";
        Files.writeString(
                site, Files.readString(SHUT) + measures(heater.formatted("A", "2.0"), heater.formatted("B", "2.1")));

        run("options", site.toString());

        assertTrue(out.toString().contains("too close to call"), out.toString());
        assertTrue(out.toString().contains("no rates given"), out.toString());
    }

    @Test
    void options_inARoomThatIsNotThere_areRefusedWithTheRoomsThatAre(@TempDir Path folder) throws IOException {
        Path site = folder.resolve("shut.yaml");
        Files.writeString(site, Files.readString(SHUT) + measures("  - {name: heater, room: attic}"));

        int code = run("options", site.toString());

        assertEquals(2, code);
        assertTrue(
                err.toString().contains("measures[0].room: \"attic\"; must be a room of this file: room"),
                err.toString());
    }

    @Test
    void options_waitingForYesterday_isRefused() {
        int code = run("options", SHUT.toString(), "--wait-until", "2026-11-01");

        assertEquals(2, code);
        assertTrue(err.toString().contains("--wait-until: must be within a year after 2026-11-02"), err.toString());
    }
}
