package org.limedry.cli.handover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Table;
import org.limedry.study.care.CareRecord;
import org.limedry.study.care.CareRecord.Kind;

/** The two pages: one for the owner, one for the conservation officer. */
final class HandoverPages {
    private static final int MOST_EXCEPTIONS = 30;

    private HandoverPages() {}

    static Page aftercare(Handover handover, Page.Foot foot) {
        List<Block> blocks = new ArrayList<>();
        for (RoomLadder ladder : handover.ladders()) {
            blocks.add(new Block.Figures(ladder(handover, ladder)));
        }
        blocks.add(new Block.Words(
                "Between two dates: the first is the shortest wait, the last the longest. Where the wall is damp, have it"
                        + " tested before paint or paper that shuts vapour in; where it is wet, that is never put on.",
                Block.Weight.SMALL));
        blocks.add(new Block.Lines("Heating", false, AftercareText.heating(handover)));
        blocks.add(new Block.Lines("What not to do", false, AftercareText.NOT_TO_DO));
        blocks.add(new Block.Cautions(handover.situation()));
        blocks.add(new Block.Lines(
                "What the waits rest on",
                false,
                Arrays.stream(Finish.values())
                        .map(finish -> finish.words() + ": " + finish.restsOn() + ".")
                        .toList()));
        List<String> basis = new ArrayList<>(foot.basis());
        basis.add(Finish.SOURCES);
        return new Page(
                head(handover, "aftercare, for the owner", headline(handover)),
                blocks,
                new Page.Foot(basis, foot.limits(), foot.attribution(), foot.version()));
    }

    private static String headline(Handover handover) {
        Optional<RoomLadder.Span> first = handover.ladders().stream()
                .flatMap(ladder -> ladder.span(Finish.LIMEWASH).stream())
                .findFirst();
        boolean one = handover.ladders().size() == 1;
        return first.filter(span -> one)
                .map(span -> "Limewash from " + Days.full(span.from()) + "; other paint waits")
                .orElse("Limewash as soon as firm; other paint waits");
    }

    private static Table ladder(Handover handover, RoomLadder ladder) {
        List<List<String>> rows = Arrays.stream(Finish.values())
                .map(finish ->
                        List.of(finish.words(), Names.capital(AftercareText.when(ladder, finish, handover.lastDay()))))
                .toList();
        return new Table(
                AftercareText.room(ladder, handover.lastDay()),
                List.of(Table.Column.words("Finish"), Table.Column.words("When")),
                rows);
    }

    static Page care(Handover handover, Page.Foot foot) {
        CareRecord care = handover.care();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words("Limits: " + CareText.exceptions(care) + ".", Block.Weight.STRONG));
        blocks.add(
                new Block.Figure(
                        CareDrawing.of(handover),
                        "Hourly. Grey: outside the limit (six hours at least are drawn). The room with most such hours is shown."));
        blocks.add(new Block.Figures(held(handover)));
        boolean held = care.rooms().stream().allMatch(room -> room.spells().isEmpty());
        blocks.add(
                held
                        ? Block.words("Exceptions: none, every limit was held in every room.")
                        : new Block.Figures(exceptions(handover)));
        blocks.add(
                Block.words("Worked out from the site file and a weather year, not measured. A logger's readings come"
                        + " before it; have them beside it when you sign."));
        blocks.add(new Block.Cautions(handover.situation()));
        return new Page(head(handover, "record of care", CareText.headline(care)), blocks, foot);
    }

    private static Table held(Handover handover) {
        Days days = handover.days();
        List<List<String>> rows = handover.care().rooms().stream()
                .map(room -> List.of(
                        Names.capital(room.room()),
                        CareText.dated(Kind.WARMED, room.fastest(), days),
                        CareText.dated(Kind.DRY, Optional.of(room.driest()), days),
                        CareText.dated(Kind.COLD, Optional.of(room.coldest()), days)))
                .toList();
        return new Table(
                "What was held in each room",
                List.of(
                        Table.Column.words("Room"),
                        Table.Column.words("Fastest warming in 24 hours"),
                        Table.Column.words("Driest air"),
                        Table.Column.words("Coldest air")),
                rows);
    }

    private static Table exceptions(Handover handover) {
        List<List<String>> all = new ArrayList<>();
        for (CareRecord.Room room : handover.care().rooms()) {
            for (CareRecord.Spell spell : room.spells()) {
                all.add(List.of(
                        CareText.when(spell, handover.days()),
                        Names.capital(room.room()),
                        CareText.passed(spell.kind(), handover.care().limits()),
                        CareText.figure(spell.kind(), spell.worst().value()),
                        spell.heated() ? "yes" : "no"));
            }
        }
        String caption = all.size() > MOST_EXCEPTIONS
                ? "Exceptions, the first " + MOST_EXCEPTIONS + " of " + all.size() + "; all are in care.csv"
                : "Exceptions";
        return new Table(
                caption,
                List.of(
                        Table.Column.words("When"),
                        Table.Column.words("Room"),
                        Table.Column.words("What"),
                        Table.Column.words("Worst"),
                        Table.Column.words("Heater ran")),
                all.stream().limit(MOST_EXCEPTIONS).toList());
    }

    private static Page.Head head(Handover handover, String kind, String headline) {
        return new Page.Head(
                handover.site().name(),
                kind + ", " + Days.full(handover.days().date(handover.scenario().from())) + " to "
                        + Days.full(handover.days().lastDay(handover.likely().reached())),
                handover.site().isInvented(),
                headline);
    }
}
