package org.limedry.cli.handover;

import java.util.ArrayList;
import java.util.List;

/** The answer of {@code handover} on the console. */
final class HandoverAnswer {
    private static final int MOST_ROOMS = 2;

    private HandoverAnswer() {}

    /** Returns the lines. */
    static List<String> lines(Handover handover) {
        List<String> lines = new ArrayList<>();
        lines.add(handover.site().name() + ": what to hand over");
        handover.ladders().stream().limit(MOST_ROOMS).forEach(ladder -> addRoom(ladder, handover, lines));
        int more = handover.ladders().size() - MOST_ROOMS;
        if (more > 0) {
            lines.add("... and " + more + " more in the page: give --out.");
        }
        lines.add(CareText.headline(handover.care()) + ".");
        lines.add("Limits: " + CareText.exceptions(handover.care()) + ".");
        lines.add("  Worked out, not measured: a logger's record comes before it.");
        if (!handover.hasRanges()) {
            lines.add("  Likely dates only; --ranges for ranges. A hand test overrules.");
        }
        return handover.situation().around(lines);
    }

    private static void addRoom(RoomLadder ladder, Handover handover, List<String> lines) {
        lines.add(AftercareText.room(ladder, handover.lastDay()) + ".");
        for (Finish finish : Finish.values()) {
            lines.add("  " + finish.words() + ": " + AftercareText.when(ladder, finish, handover.lastDay()));
        }
    }
}
