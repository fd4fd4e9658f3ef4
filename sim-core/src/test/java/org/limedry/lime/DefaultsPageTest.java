package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.limedry.reference.DefaultValue;
import org.limedry.reference.DefaultsTable;
import org.limedry.reference.Estimate;
import org.limedry.reference.MaterialRow;
import org.limedry.reference.MaterialTable;

/** The tables of defaults in {@code docs/physics.md} are those that the program loads. */
final class DefaultsPageTest {
    private static final Path PAGE = Path.of("../docs/physics.md");
    private static final String BEGIN = "<!-- defaults:begin, written by DefaultsPageTest -->\n";
    private static final String END = "<!-- defaults:end -->";

    // EXACT: the page holds the tables themselves. Rewritten with -Dlimedry.write=true.
    @Test
    void page_holdsTheTablesThatAreLoaded() throws IOException {
        String page = Files.readString(PAGE);
        String expected = page.substring(0, page.indexOf(BEGIN) + BEGIN.length())
                + defaults()
                + materials()
                + page.substring(page.indexOf(END));
        if (Boolean.getBoolean("limedry.write")) {
            Files.writeString(PAGE, expected);
        }

        assertEquals(expected, Files.readString(PAGE), "stale: run the test with -Dlimedry.write=true");
        assertTrue(expected.contains("| sand loose bulk dry |"), "a default that every mix needs");
    }

    private static String defaults() {
        return "\n| default | unit | value | range | status | basis |\n|---|---|---|---|---|---|\n"
                + DefaultsTable.load().values().stream()
                        .filter(value -> !value.likelyText().isEmpty())
                        .map(DefaultsPageTest::row)
                        .collect(Collectors.joining());
    }

    private static String row(DefaultValue value) {
        return "| %s | %s | %s | %s | %s | %s |\n"
                .formatted(
                        value.parameter(),
                        value.unit(),
                        value.likelyText(),
                        range(value.low(), value.high()),
                        value.status(),
                        value.basis());
    }

    private static String range(OptionalDouble low, OptionalDouble high) {
        return low.isPresent() && high.isPresent()
                ? figure(low.getAsDouble()) + " to " + figure(high.getAsDouble())
                : "";
    }

    private static String materials() {
        return "\n| material | density | w80 | wf | A | mu dry | lambda dry | c | entry suction, kPa | status |\n"
                + "|---|---|---|---|---|---|---|---|---|---|\n"
                + MaterialTable.load().rows().stream()
                        .map(DefaultsPageTest::row)
                        .collect(Collectors.joining())
                + "\nkg/m3, kg/m3, kg/m3, kg/(m2 s^0.5), -, W/(m K), J/(kg K). Every entry suction is assumed, without a source.\n\n";
    }

    private static String row(MaterialRow row) {
        return "| %s | %s | %s | %s | %s | %s | %s | %s | %s | %s |\n"
                .formatted(
                        row.name(),
                        figure(row.densityKgPerM3()),
                        optional(row.waterAt80PercentKgPerM3()),
                        optional(row.freeSaturationKgPerM3()),
                        ranged(row.absorptionKgPerM2RootS()),
                        ranged(Optional.of(row.vapourResistanceDry())),
                        figure(row.dryConductivityWPerMK()),
                        figure(row.heatCapacityJPerKgK()),
                        ranged(row.entrySuctionKPa()),
                        row.status());
    }

    private static String optional(OptionalDouble value) {
        return value.isPresent() ? figure(value.getAsDouble()) : "";
    }

    private static String ranged(Optional<Estimate> estimate) {
        return estimate.map(e -> e.low() < e.high()
                        ? "%s (%s to %s)".formatted(figure(e.likely()), figure(e.low()), figure(e.high()))
                        : figure(e.likely()))
                .orElse("");
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
