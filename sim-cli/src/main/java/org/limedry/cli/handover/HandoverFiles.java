package org.limedry.cli.handover;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Page;
import org.limedry.study.care.CareRecord;
import org.limedry.study.care.CareRecord.Kind;

/** The files of {@code handover}. */
public final class HandoverFiles {
    private HandoverFiles() {}

    /**
     * Returns the files.
     *
     * @param foot what to put under both pages
     */
    public static Bundle of(Handover handover, Page.Foot foot) {
        return new Bundle()
                .page("aftercare", HandoverPages.aftercare(handover, foot))
                .page("care", HandoverPages.care(handover, foot))
                .chart("care", CareDrawing.of(handover))
                .csv("aftercare", ladders(handover))
                .csv("care", exceptions(handover))
                .json("handover", json(handover));
    }

    private static CsvSheet ladders(Handover handover) {
        List<List<?>> rows = new ArrayList<>();
        for (RoomLadder ladder : handover.ladders()) {
            for (Finish finish : Finish.values()) {
                Optional<RoomLadder.Span> span = ladder.span(finish);
                rows.add(List.of(
                        ladder.room(),
                        ladder.readyDay(),
                        finish.words(),
                        span.map(RoomLadder.Span::from),
                        span.map(RoomLadder.Span::until),
                        ladder.isPutOff(finish),
                        ladder.isOnCondition(finish),
                        finish.restsOn()));
            }
        }
        return new CsvSheet(
                List.of(
                        "room",
                        "lastCoatReady",
                        "finish",
                        "from",
                        "until",
                        "putOffByWetWall",
                        "onlyIfWallDry",
                        "restsOn"),
                rows);
    }

    private static CsvSheet exceptions(Handover handover) {
        List<List<?>> rows = new ArrayList<>();
        for (CareRecord.Room room : handover.care().rooms()) {
            for (CareRecord.Spell spell : room.spells()) {
                rows.add(List.of(
                        room.room(),
                        key(spell.kind()),
                        spell.from(),
                        spell.until(),
                        spell.worst().value(),
                        spell.worst().at(),
                        spell.heated()));
            }
        }
        return new CsvSheet(List.of("room", "what", "fromUtc", "untilUtc", "worst", "worstAtUtc", "heaterRan"), rows);
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
        node.put("lastCoatReady", text(ladder.readyDay()));
        node.put("walls", ladder.wetness().words());
        ArrayNode finishes = node.putArray("finishes");
        for (Finish finish : Finish.values()) {
            Optional<RoomLadder.Span> span = ladder.span(finish);
            finishes.addObject()
                    .put("finish", finish.words())
                    .put("from", text(span.map(RoomLadder.Span::from)))
                    .put("until", text(span.map(RoomLadder.Span::until)))
                    .put("putOffByWetWall", ladder.isPutOff(finish))
                    .put("onlyIfWallDry", ladder.isOnCondition(finish))
                    .put("restsOn", finish.restsOn());
        }
    }

    private static String text(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse("");
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
