package org.limedry.cli.handover;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Page;
import org.limedry.study.care.CareRecord;
import org.limedry.study.care.CareRecord.Kind;

/** The files of {@code handover}. */
final class HandoverFiles {
    private static final Columns<Step> LADDER = Columns.<Step>of()
            .key("room", step -> step.ladder().room())
            .key("lastCoatReady", step -> step.ladder().readyDay());

    private static final Columns<Step> STEPS = Columns.<Step>of()
            .key("finish", step -> step.finish().words())
            .key("from", step -> step.span().map(RoomLadder.Span::from))
            .key("until", step -> step.span().map(RoomLadder.Span::until))
            .key("putOffByWetWall", step -> step.ladder().isPutOff(step.finish()))
            .key("onlyIfWallDry", step -> step.ladder().isOnCondition(step.finish()))
            .key("restsOn", step -> step.finish().restsOn());

    private static final Columns<RoomSpell> SPELLS = Columns.<RoomSpell>of()
            .key("room", RoomSpell::room)
            .key("what", row -> key(row.spell().kind()))
            .key("fromUtc", row -> row.spell().from())
            .key("untilUtc", row -> row.spell().until())
            .key("worst", row -> row.spell().worst().value())
            .key("worstAtUtc", row -> row.spell().worst().at())
            .key("heaterRan", row -> row.spell().heated());

    private record Step(RoomLadder ladder, Finish finish) {
        Optional<RoomLadder.Span> span() {
            return ladder.span(finish);
        }
    }

    private HandoverFiles() {}

    /**
     * Returns the files.
     *
     * @param foot what to put under both pages
     */
    static Bundle of(Handover handover, Page.Foot foot) {
        return new Bundle()
                .page("aftercare", HandoverPages.aftercare(handover, foot))
                .page("care", HandoverPages.care(handover, foot))
                .chart("care", CareDrawing.of(handover))
                .csv("aftercare", ladders(handover))
                .csv("care", exceptions(handover))
                .json("handover", json(handover));
    }

    private static List<Step> steps(RoomLadder ladder) {
        return Stream.of(Finish.values())
                .map(finish -> new Step(ladder, finish))
                .toList();
    }

    private static CsvSheet ladders(Handover handover) {
        return LADDER.and(STEPS)
                .csv(handover.ladders().stream()
                        .flatMap(ladder -> steps(ladder).stream())
                        .toList());
    }

    private static CsvSheet exceptions(Handover handover) {
        return SPELLS.csv(RoomSpell.of(handover.care()));
    }

    private static String key(Kind kind) {
        return switch (kind) {
            case WARMED -> "warmingK";
            case DRY -> "relativeHumidity";
            case COLD -> "airCelsius";
        };
    }

    private static ObjectNode json(Handover handover) {
        ObjectNode root = JsonText.object();
        root.put("site", handover.site().name());
        root.put("members", handover.result().members().size());
        JsonText.putCautions(root, handover.situation());
        ArrayNode rooms = root.putArray("aftercare");
        handover.ladders().forEach(ladder -> addLadder(rooms.addObject(), ladder));
        CareRecord care = handover.care();
        ObjectNode limits = root.putObject("limits");
        limits.put("warmingK", care.limits().warmingK());
        limits.put("relativeHumidity", care.limits().driest());
        limits.put("airCelsius", care.limits().coldestCelsius());
        ArrayNode held = root.putArray("care");
        care.rooms().forEach(room -> addRoom(held.addObject(), room));
        return root;
    }

    private static void addLadder(ObjectNode node, RoomLadder ladder) {
        node.put("room", ladder.room());
        JsonText.put(node, "lastCoatReady", ladder.readyDay());
        node.put("walls", ladder.wetness().words());
        node.set("finishes", STEPS.json(steps(ladder)));
    }

    private static void addRoom(ObjectNode node, CareRecord.Room room) {
        node.put("room", room.room());
        room.fastest().ifPresent(worst -> addWorst(node, Kind.WARMED, worst));
        addWorst(node, Kind.DRY, room.driest());
        addWorst(node, Kind.COLD, room.coldest());
        node.put("exceptions", room.spells().size());
    }

    private static void addWorst(ObjectNode node, Kind kind, CareRecord.Extreme worst) {
        Instant at = worst.at();
        node.putObject(key(kind)).put("worst", worst.value()).put("at", at.toString());
    }
}
