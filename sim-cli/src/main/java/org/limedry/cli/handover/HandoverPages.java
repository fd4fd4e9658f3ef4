package org.limedry.cli.handover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Columns;
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
        return Columns.<Finish>of()
                .words("Finish", Finish::words)
                .words("When", finish -> Names.capital(AftercareText.when(ladder, finish, handover.lastDay())))
                .table(AftercareText.room(ladder, handover.lastDay()), List.of(Finish.values()));
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
        return Columns.<CareRecord.Room>of()
                .words("Room", room -> Names.capital(room.room()))
                .words("Fastest warming in 24 hours", room -> CareText.dated(Kind.WARMED, room.fastest(), days))
                .words("Driest air", room -> CareText.dated(Kind.DRY, Optional.of(room.driest()), days))
                .words("Coldest air", room -> CareText.dated(Kind.COLD, Optional.of(room.coldest()), days))
                .table("What was held in each room", handover.care().rooms());
    }

    private static Table exceptions(Handover handover) {
        List<RoomSpell> all = RoomSpell.of(handover.care());
        String caption = all.size() > MOST_EXCEPTIONS
                ? "Exceptions, the first " + MOST_EXCEPTIONS + " of " + all.size() + "; all are in care.csv"
                : "Exceptions";
        return Columns.<RoomSpell>of()
                .words("When", one -> CareText.when(one.spell(), handover.days()))
                .words("Room", one -> Names.capital(one.room()))
                .words(
                        "What",
                        one -> CareText.passed(
                                one.spell().kind(), handover.care().limits()))
                .words(
                        "Worst",
                        one -> CareText.figure(
                                one.spell().kind(), one.spell().worst().value()))
                .words("Heater ran", one -> one.spell().heated() ? "yes" : "no")
                .table(caption, all.stream().limit(MOST_EXCEPTIONS).toList());
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
