package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.WaterAccount;

final class SummaryJsonTest {
    // PINNED: the names that summary.json has; programs that read it go by them.
    private static final List<String> ACCOUNT = List.of(
            "laidKg",
            "wettingKg",
            "peopleKg",
            "groundKg",
            "plantAddedKg",
            "chemicalReleasedKg",
            "chemicalBoundKg",
            "outByAirKg",
            "throughWallsKg",
            "dehumidifierKg",
            "runOffKg",
            "changeInCoatsKg",
            "changeInWallsKg",
            "changeInAirKg",
            "changeInFilmKg",
            "residualKg",
            "condensedKg",
            "suckedBackKg");

    @Test
    void root_hasTheNamesThatReadersGoBy() throws IOException {
        JsonNode root = read(Invented.oneRoom());

        assertTrue(names(root)
                .containsAll(List.of(
                        "site",
                        "from",
                        "until",
                        "coats",
                        "waterAccount",
                        "dewHours",
                        "runningWetHours",
                        "dampFaceHours",
                        "warnings",
                        "statistics")));
        assertTrue(names(root.at("/coats/0"))
                .containsAll(List.of(
                        "room", "wall", "coat", "laid", "rule", "ready", "waterLaidKgPerM2", "waterLeftKgPerM2")));
        assertEquals(List.of("earliest", "likely", "latest"), names(root.at("/coats/0/ready")));
        assertEquals(ACCOUNT, names(root.at("/waterAccount")));
        assertTrue(names(root.at("/warnings/0")).containsAll(List.of("kind", "from", "until", "text")));
        assertTrue(names(root.at("/statistics"))
                .containsAll(List.of("steps", "rejectedSteps", "linearSolves", "computeSeconds")));
    }

    // EXACT: the figures of the invented site.
    @Test
    void coats_carryTheDatesOfTheSite() throws IOException {
        JsonNode coat = read(Invented.oneRoom()).at("/coats/0");

        assertEquals("store", coat.at("/room").asText());
        assertEquals("north", coat.at("/wall").asText());
        assertEquals(1, coat.at("/coat").asInt());
        assertEquals("2026-11-02", coat.at("/laid").asText());
        assertEquals("2026-12-17", coat.at("/ready/earliest").asText());
        assertEquals("2027-01-07", coat.at("/ready/likely").asText());
        assertEquals("2027-01-22", coat.at("/ready/latest").asText());
        assertEquals(3.3, coat.at("/waterLaidKgPerM2").asDouble(), 0.0); // the figure itself
    }

    @Test
    void dateThatIsMissing_isNull() throws IOException {
        JsonNode root = read(Invented.oneRoom());

        assertTrue(root.at("/coats/2/ready/latest").isNull());
    }

    @Test
    void quickRun_hasLikelyDatesOnly() throws IOException {
        JsonNode ready = read(Varied.quick(Invented.oneRoom())).at("/coats/0/ready");

        assertTrue(ready.at("/earliest").isNull());
        assertEquals("2027-01-07", ready.at("/likely").asText());
        assertTrue(ready.at("/latest").isNull());
    }

    @Test
    void account_isThatOfTheOutcomeAndCloses() throws IOException {
        WaterAccount expected = Invented.account();
        JsonNode account = read(Invented.oneRoom()).at("/waterAccount");

        assertEquals(expected.outByAirKg(), account.at("/outByAirKg").asDouble(), 0.0); // the figure itself
        assertEquals(expected.residualKg(), residual(account), 1e-12); // rounding of the sum
    }

    // EXACT: the figure of the invented site.
    @Test
    void rooms_haveTheirAccountsWithWhatPassedBetweenThem() throws IOException {
        JsonNode rooms = read(Varied.twoRooms()).at("/rooms");

        assertEquals(2, rooms.size());
        assertEquals("loft", rooms.at("/1/room").asText());
        assertEquals(-4.0, rooms.at("/1/waterAccount/betweenRoomsKg").asDouble(), 0.0); // the figure itself
    }

    // EXACT: the figures of the invented site.
    @Test
    void hoursOfFaces_areKeyedByWall() throws IOException {
        JsonNode root = read(Invented.oneRoom());

        assertEquals(672.0, root.at("/dewHours/store north").asDouble(), 0.0); // the figure itself
        assertEquals(803.0, root.at("/dampFaceHours/store north").asDouble(), 0.0); // the figure itself
        assertEquals(214.0, root.at("/runningWetHours/store window pane").asDouble(), 0.0); // the figure itself
    }

    @Test
    void warnings_haveTheirTimesWithOffset() throws IOException {
        JsonNode warning = read(Invented.oneRoom()).at("/warnings/0");

        assertEquals("GLASS_RUNNING", warning.at("/kind").asText());
        assertEquals("2026-11-03T06:00:00Z", warning.at("/from").asText());
        assertEquals(
                "Window pane: water ran for 214 hours.", warning.at("/text").asText());
    }

    private static double residual(JsonNode account) {
        double in = sum(account, ACCOUNT.subList(0, 6));
        double out = sum(account, ACCOUNT.subList(6, 11));
        double change = sum(account, ACCOUNT.subList(11, 15));
        return in - out - change;
    }

    private static double sum(JsonNode account, List<String> names) {
        return names.stream().mapToDouble(name -> account.get(name).asDouble()).sum();
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonNode read(Findings findings) throws IOException {
        return new ObjectMapper()
                .readTree(SummaryJson.of(findings, PageModels.of(findings).situation()));
    }
}
