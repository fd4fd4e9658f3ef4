package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code limedry delay}, from the command line to the page read back, on a small invented site.
 *
 * <p>EXACT: exit codes are those the command promises, names and dates those put in by each test, sums are sums.
 */
final class DelayCommandTest {
    private static final String SITE = """
            site: Kiln house (invented)
            place: {weather: valentia-2017}
            until: 2026-12-31
            rooms:
              kiln:
                released: 2026-11-02
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                floor: boards
                openings:
                  - {name: door, widthM: 0.9, heightM: 2.0, open: "Mon-Fri 08:00-09:00"}
                walls:
                  north: {areaM2: 6.0, background: old brick, thicknessMm: 220, wetness: damp}
                plant:
                  - {kind: electric heater, kW: 2, thermostatCelsius: 14, on: always, from: 2026-11-09}
            mixes:
              base: {lime: putty, limeParts: 1, sandParts: 3}
            coats:
              - {wall: north, mix: base, thicknessMm: 11, laid: 2026-11-03}
            planned:
              weather: mullingar-2017
              rooms:
                kiln:
                  released: 2026-10-05
                  openings: [{name: door, open: "Mon-Fri 08:00-16:00"}]
                  plant: [{kind: electric heater, kW: 2, thermostatCelsius: 14, on: always, from: 2026-10-05}]
                  walls: {north: {wetness: dry}}
            steps: [{date: 2026-11-05, words: asked for the door to be left open}]
            records: [site diary]
            normals: {source: invented, months: [{month: 11, celsius: 9, rhPercent: 85, frostDays: 1, rainDays: 20}]}
            """;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path temp;

    private int delay(String site, String... more) throws IOException {
        Path file = Files.writeString(temp.resolve("kiln.yaml"), site);
        List<String> args = new ArrayList<>(List.of("delay", file.toString()));
        args.addAll(Arrays.asList(more));
        try (PrintWriter printed = writer(out);
                PrintWriter problems = writer(err)) {
            return Main.run(args.toArray(String[]::new), printed, problems);
        }
    }

    private static PrintWriter writer(ByteArrayOutputStream bytes) {
        return new PrintWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private Path results() {
        return temp.resolve("results");
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(results().resolve("delay.json").toFile());
    }

    private static double sum(JsonNode causes, String key) {
        return StreamSupport.stream(causes.spliterator(), false)
                .mapToDouble(cause -> cause.get(key).asDouble())
                .sum();
    }

    private static Instant ready(JsonNode run) {
        return Instant.parse(run.get("ready").asText());
    }

    @Test
    void delay_fiveCauses_addUpInEveryFileAndOnOnePage() throws IOException {
        int code = delay(SITE, "--out", results().toString());

        assertEquals(0, code, () -> text(err));
        JsonNode json = json();
        JsonNode runs = json.get("runs");
        double totalDays =
                Duration.between(ready(runs.get(0)), ready(runs.get(31))).toMillis() / 86_400_000.0;
        assertEquals(5, json.get("causes").size());
        assertEquals(32, runs.size());
        assertEquals(totalDays, json.get("totalDays").asDouble(), 1e-6); // days; a rounded millisecond
        assertEquals(totalDays, sum(json.get("causes"), "days"), 1e-6); // days; a rounded millisecond
        assertEquals(json.get("totalDaysShown").asDouble(), sum(json.get("causes"), "daysShown"));
        assertFalse(json.get("atLeast").asBoolean());
        assertEquals(9, json.get("reckonings").asInt());
        json.get("causes").forEach(DelayCommandTest::assertHoldsItsLikelyFigure);
        String days = json.get("totalDaysShown").asText() + " days";
        assertTrue(text(out).startsWith(days + " late, between "), () -> text(out));
        assertTrue(text(out).lines().allMatch(line -> line.length() <= 80), () -> text(out));
        assertTrue(text(out).lines().count() <= 32, () -> text(out));
        assertTrue(text(out).contains("north wall forecast ready about"), () -> text(out));
        assertTrue(text(out).contains("modelled plan"), () -> text(out));
        assertOnePage(days);
        String sheet = Files.readString(results().resolve("delay.csv"));
        assertTrue(sheet.contains("difference,low,high,unit") && sheet.contains("cause,total,,,"), sheet);
        String html = Files.readString(results().resolve("delay.html"));
        assertTrue(html.contains(days + " later than the modelled plan") && html.contains("288 runs"), html);
    }

    private static void assertHoldsItsLikelyFigure(JsonNode cause) {
        JsonNode range = cause.get("daysRange");
        double days = cause.get("days").asDouble();
        double shown = cause.get("daysShown").asDouble();
        assertAll(
                cause.toString(),
                () -> assertTrue(range.get("low").asDouble() <= days
                        && days <= range.get("high").asDouble()),
                () -> assertTrue(range.get("lowShown").asDouble() <= shown
                        && shown <= range.get("highShown").asDouble()));
    }

    private void assertOnePage(String days) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(results().resolve("delay.pdf").toFile())) {
            String words = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            List<PDFont> fonts = fonts(pdf.getPage(0).getResources());
            assertAll(
                    () -> assertEquals(1, pdf.getNumberOfPages()),
                    () -> assertTrue(words.contains(days + " later than the modelled plan, between "), words),
                    () -> assertTrue(words.contains("is forecast to be ready about"), words),
                    () -> assertTrue(words.contains("a range is the least and the most of 9 reckonings"), words),
                    () -> assertFalse(words.contains("30 %"), words),
                    () -> assertTrue(words.contains("= " + days), words),
                    () -> assertTrue(words.contains("Room released 2 Nov, not 5 Oct"), words),
                    () -> assertTrue(words.contains("asked for the door to be left open"), words),
                    () -> assertTrue(words.contains("288 runs"), words),
                    () -> assertTrue(words.contains("No claim is made"), words),
                    () -> assertTrue(words.contains("Creative Commons Attribution 4.0"), words),
                    () -> assertTrue(words.contains("Contract, clause:"), words),
                    () -> assertTrue(fonts.size() >= 2, fonts.toString()),
                    () -> fonts.forEach(font -> assertTrue(font.isEmbedded(), font.getName())));
        }
    }

    /** Returns the fonts of a page and of the drawings on it. */
    private static List<PDFont> fonts(PDResources resources) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
                fonts.addAll(fonts(form.getResources()));
            }
        }
        return fonts;
    }

    /** Returns the site with the release of the room as the only thing that went otherwise. */
    private static String releasedLate() {
        return withPlanned("planned: {rooms: {kiln: {released: 2026-10-05}}}\n");
    }

    private static String withPlanned(String planned) {
        return SITE.replace(SITE.substring(SITE.indexOf("planned:")), planned);
    }

    // EXACT: one cause, two runs: all of the delay is its own.
    @Test
    void delay_oneCause_hasAllOfIt() throws IOException {
        int code = delay(releasedLate(), "--out", results().toString());

        assertEquals(0, code, () -> text(err));
        JsonNode json = json();
        assertEquals(1, json.get("causes").size());
        assertEquals("room", json.get("causes").get(0).get("cause").asText());
        assertEquals(
                json.get("totalDays").asDouble(),
                json.get("causes").get(0).get("days").asDouble(),
                1e-9); // days; the same difference
        assertEquals(
                json.get("totalDaysRange").get("high").asDouble(),
                json.get("causes").get(0).get("daysRange").get("high").asDouble(),
                1e-9); // days; the same difference in every reckoning
        assertTrue(text(out).contains("one cause, so all of it is its own"), () -> text(out));
    }

    /** Causes as they come out where it is known what counts as ready must lie inside the ranges of the letter. */
    @Test
    void delay_suctionOfTheRuleKnown_staysInsideThePrintedRanges() throws IOException {
        String site = withPlanned("planned: {rooms: {kiln: {released: 2026-10-05, walls: {north: {wetness: damp}}}}}\n")
                .replace("thicknessMm: 220, wetness: damp", "thicknessMm: 220, wetness: wet");
        assertEquals(0, delay(site, "--out", results().toString()), () -> text(err));
        JsonNode printed = json().get("causes");

        List<Double> ofTheWall = new ArrayList<>();
        for (int kPa : List.of(100, 300, 1000)) {
            String known = site + "assume: {readySuctionKPa: " + kPa + "}\n";
            assertEquals(0, delay(known, "--out", results().toString()), () -> text(err));
            JsonNode causes = json().get("causes");
            causes.forEach(cause -> assertLiesInside(named(printed, cause.get("cause")), cause, kPa));
            ofTheWall.add(named(causes, TextNode.valueOf("wall")).get("days").asDouble());
        }

        double moved = ofTheWall.get(2) - ofTheWall.get(0);
        assertTrue(Math.abs(moved) > 3, ofTheWall::toString); // days; else the ranges would prove nothing
    }

    private static JsonNode named(JsonNode causes, JsonNode name) {
        return StreamSupport.stream(causes.spliterator(), false)
                .filter(cause -> cause.get("cause").equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void assertLiesInside(JsonNode printed, JsonNode known, int kPa) {
        double days = known.get("days").asDouble();
        JsonNode range = printed.get("daysRange");
        double halfADay = 0.5; // ranges are printed in whole days
        assertTrue(
                range.get("lowShown").asDouble() - halfADay <= days
                        && days <= range.get("highShown").asDouble() + halfADay,
                () -> kPa + " kPa: " + known + " in " + printed);
    }

    @Test
    void delay_machinesOnNeitherSide_haveNoRow() throws IOException {
        String plant = SITE.substring(SITE.indexOf("    plant:"), SITE.indexOf("mixes:"));

        int code = delay(releasedLate().replace(plant, ""), "--out", results().toString());

        assertEquals(0, code, () -> text(err));
        json().get("causes")
                .forEach(cause -> assertFalse("plant".equals(cause.get("cause").asText()), cause.toString()));
        String html = Files.readString(results().resolve("delay.html"));
        assertFalse(html.contains("Heat") || html.contains("heater"), html);
    }

    @Test
    void delay_plannedAsItHappened_saysThereIsNone() throws IOException {
        String planned = SITE.substring(SITE.indexOf("planned:"));

        int code = delay(SITE.replace(planned, "planned: {rooms: {kiln: {released: 2026-11-02}}}\n"));

        assertEquals(0, code, () -> text(err));
        assertEquals("No delay to tell: in the file what had been agreed is what happened.\n", text(out));
    }

    @Test
    void delay_notReadyByTheEnd_saysAtLeastAndIsUnfinished() throws IOException {
        int code = delay(
                SITE.replace("until: 2026-12-31", "until: 2026-11-04"),
                "--out",
                results().toString());

        assertEquals(1, code, () -> text(out));
        assertTrue(text(out).startsWith("At least "), () -> text(out));
        assertTrue(text(out).replaceAll("\\s+", " ").contains("not yet ready on 4 Nov 2026"), () -> text(out));
        assertTrue(text(out).contains("In 9 of the 9 reckonings plaster was not ready by 4 Nov 2026"), () -> text(out));
        assertTrue(text(err).contains("Set until later"), () -> text(err));
        assertTrue(json().get("atLeast").asBoolean());
        assertTrue(json().get("actual").get("coats").get(0).get("ready").isNull());
    }

    @Test
    void delay_passedHandTest_isToldBesideTheCauses() throws IOException {
        int code = delay(
                releasedLate() + "handTests: [{wall: north, coat: 1, date: 2026-12-20, result: hard}]\n",
                "--out",
                results().toString());

        assertEquals(0, code, () -> text(err));
        JsonNode causes = json().get("causes");
        assertTrue(text(out).contains("north wall ready 20 Dec 2026, modelled plan"), () -> text(out));
        assertEquals("record", json().get("readyBasis").asText());
        assertTrue(
                Files.readString(results().resolve("delay.html")).contains("was ready on 20 December 2026"),
                () -> text(out));
        assertEquals("record", causes.get(causes.size() - 1).get("cause").asText());
        assertEquals(json().get("totalDaysShown").asDouble(), sum(causes, "daysShown"));
        assertEquals(json().get("totalDays").asDouble(), sum(causes, "days"), 1e-9); // days; rounding of the sum
    }

    @Test
    void delay_moreStepsThanThePageHolds_leavesSomeOutAndSaysSo() throws IOException {
        String many = IntStream.rangeClosed(1, 25)
                .mapToObj(day -> "{date: 2026-11-" + (day < 10 ? "0" : "") + day
                        + ", words: asked again in writing for the door to be left open while we were on site}")
                .collect(Collectors.joining(", ", "steps: [", "]\n"));

        int code = delay(
                releasedLate() + many + SITE.substring(SITE.indexOf("records:")),
                "--out",
                results().toString());

        assertEquals(0, code, () -> text(err));
        try (PDDocument pdf = Loader.loadPDF(results().resolve("delay.pdf").toFile())) {
            String words = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertEquals(1, pdf.getNumberOfPages());
            assertTrue(words.contains("Left out for room:") && words.contains("steps after the third"), words);
        }
    }

    @Test
    void delay_rangesAskedFor_standOnAsManyMembersAsAsked() throws IOException {
        int code = delay(
                releasedLate(), "--ranges", "--members", "4", "--out", results().toString());

        assertEquals(0, code, () -> text(err));
        assertEquals(5, json().get("reckonings").asInt());
        assertTrue(
                text(out).contains("of 5 reckonings (10 runs)"), () -> text(out).replaceAll("\\s+", " "));
    }

    @Test
    void delay_badInput_isRefusedWithTwo() throws IOException {
        String planned = SITE.substring(SITE.indexOf("planned:"));

        assertEquals(2, delay(SITE.replace(planned, "")));
        assertEquals(2, delay(SITE, "--wall", "gable"));
        assertEquals(2, delay(SITE.replace("walls: {north: {wetness: dry}}", "walls: {gable: {wetness: dry}}")));

        assertTrue(text(err).contains("planned: missing; needed for a delay"), () -> text(err));
        assertTrue(text(err).contains("no plastered wall \"gable\"; there are: kiln north"), () -> text(err));
        assertTrue(text(err).contains("planned.rooms.kiln.walls.gable: no wall \"gable\""), () -> text(err));
        assertEquals("", text(out));
    }

    @Test
    void delay_wallByItsName_isToldOf() throws IOException {
        int code = delay(releasedLate(), "--wall", "north");

        assertEquals(0, code, () -> text(err));
        assertTrue(text(out).contains("north wall forecast ready about"), () -> text(out));
    }
}
