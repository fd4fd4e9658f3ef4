package org.limedry.cli.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.safety.Situation;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.ReadyRange;

/**
 * {@code summary.json}: dates on the calendar of the site, times of warnings with their offset from UTC, a date past the
 * run null. Hours of a face are keyed by room and wall: "store north".
 */
final class SummaryJson {
    private final Findings findings;
    private final Situation situation;
    private final Days days;

    private SummaryJson(Findings findings, Situation situation) {
        this.findings = findings;
        this.situation = situation;
        this.days = findings.days();
    }

    /**
     * Returns the file's text.
     *
     * @param findings what was found
     * @param situation what decides which cautions are due
     */
    static String of(Findings findings, Situation situation) {
        return JsonText.of(new SummaryJson(findings, situation).root());
    }

    private ObjectNode root() {
        Outcome outcome = findings.outcome();
        ObjectNode root = JsonText.object();
        root.put("site", findings.scenario().site());
        root.put("from", days.date(findings.scenario().from()).toString());
        root.put("until", days.lastDay(findings.scenario().until()).toString());
        ArrayNode coats = root.putArray("coats");
        findings.coats().forEach(coat -> addCoat(coat, coats.addObject()));
        addAccount(outcome.account(), root.putObject("waterAccount"));
        addHours(root.putObject("dewHours"), Outcome.FaceResult::dewHours);
        addHours(root.putObject("runningWetHours"), Outcome.FaceResult::runningWetHours);
        addHours(root.putObject("dampFaceHours"), Outcome.FaceResult::dampFaceHours);
        JsonText.putCautions(root, situation);
        ArrayNode warnings = root.putArray("warnings");
        outcome.warnings().forEach(warning -> addWarning(warning, warnings.addObject()));
        ArrayNode rooms = root.putArray("rooms");
        for (Outcome.RoomAccount account : outcome.roomAccounts()) {
            ObjectNode room = rooms.addObject();
            room.put("room", account.room());
            ObjectNode terms = room.putObject("waterAccount");
            addAccount(account.account(), terms);
            terms.put("betweenRoomsKg", account.account().betweenRoomsKg());
        }
        addStatistics(root.putObject("statistics"));
        return root;
    }

    private void addCoat(Coat coat, ObjectNode node) {
        String room = Waiting.roomOf(findings.wall(coat.plan().wall()));
        String wall = coat.plan().wall();
        node.put("room", room);
        node.put("wall", wall.startsWith(room + " ") ? wall.substring(room.length() + 1) : wall);
        node.put("coat", coat.plan().number());
        putDate(node, "laid", coat.result().laid());
        node.put("rule", findings.scenario().rule().name());
        ObjectNode ready = node.putObject("ready");
        putDate(ready, "earliest", coat.range().flatMap(ReadyRange::earliest));
        putDate(ready, "likely", coat.result().ready());
        putDate(ready, "latest", coat.range().flatMap(ReadyRange::latest));
        node.put("byHand", coat.result().byHand());
        node.put("waterLaidKgPerM2", coat.result().waterLaidKgPerM2());
        node.put("waterLeftKgPerM2", coat.result().waterLeftKgPerM2());
    }

    private void putDate(ObjectNode node, String key, Optional<Instant> instant) {
        node.put(key, instant.map(days::date).map(Object::toString).orElse(null));
    }

    private static void addAccount(WaterAccount account, ObjectNode node) {
        node.put("laidKg", account.laidKg());
        node.put("wettingKg", account.wettingKg());
        node.put("peopleKg", account.peopleKg());
        node.put("groundKg", account.groundKg());
        node.put("plantAddedKg", account.plantAddedKg());
        node.put("chemicalReleasedKg", account.chemicalReleasedKg());
        node.put("chemicalBoundKg", account.chemicalBoundKg());
        node.put("outByAirKg", account.outByAirKg());
        node.put("throughWallsKg", account.throughWallsKg());
        node.put("dehumidifierKg", account.dehumidifierKg());
        node.put("runOffKg", account.runOffKg());
        node.put("changeInCoatsKg", account.changeInCoatsKg());
        node.put("changeInWallsKg", account.changeInWallsKg());
        node.put("changeInAirKg", account.changeInAirKg());
        node.put("changeInFilmKg", account.changeInFilmKg());
        node.put("residualKg", account.residualKg());
        node.put("condensedKg", account.condensedKg());
        node.put("suckedBackKg", account.suckedBackKg());
    }

    private void addHours(ObjectNode node, ToDoubleFunction<Outcome.FaceResult> hours) {
        FaceNames names = FaceNames.of(findings.outcome().faces());
        findings.outcome()
                .faces()
                .forEach(face -> node.put(names.name(face.wall(), face.room()), hours.applyAsDouble(face)));
    }

    private void addWarning(Warning warning, ObjectNode node) {
        DateTimeFormatter iso = DateTimeFormatter.ISO_OFFSET_DATE_TIME.withZone(days.zone());
        node.put("kind", warning.kind().name());
        node.put("subject", warning.subject());
        node.put("from", iso.format(warning.from()));
        node.put("until", iso.format(warning.until()));
        node.put("text", WarningText.of(warning, findings.words(warning.subject())));
        node.put("value", warning.value());
    }

    private void addStatistics(ObjectNode node) {
        Outcome.Statistics statistics = findings.outcome().statistics();
        node.put("steps", statistics.steps());
        node.put("rejectedSteps", statistics.rejectedSteps());
        node.put("linearSolves", statistics.linearSolves());
        node.put("computeSeconds", findings.effort().computeSeconds());
        node.put("rangeRuns", findings.effort().rangeRuns());
        node.put("reached", days.date(findings.outcome().reached()).toString());
    }
}
