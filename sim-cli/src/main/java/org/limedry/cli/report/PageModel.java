package org.limedry.cli.report;

import java.util.List;
import java.util.Optional;
import org.limedry.cli.safety.Situation;

/**
 * The page, worded: what the console, the HTML page and nobody else prints. Strings are plain text, not yet escaped.
 *
 * @param head site, period, mark and headline
 * @param coats one row for each coat, in reading order
 * @param notes what holds for all rows: chances, rule, what ended the run
 * @param moved what moved the dates since the issue before
 * @param why why the worst coat is slow, if any coat was laid
 * @param todo what to do
 * @param situation what decides which cautions are due
 * @param account the water account of the whole site
 * @param rooms one entry for each room
 * @param wetFaces the faces that were wet or damp for longest
 * @param warnings what the run warned of
 * @param assumptions what was assumed
 * @param attribution statements owed to sources of data
 * @param run about the run
 */
record PageModel(
        Head head,
        List<CoatRow> coats,
        List<String> notes,
        List<SiteNotes.Moved> moved,
        Optional<WhySlow.Sentence> why,
        List<DoLine> todo,
        Situation situation,
        Account account,
        List<RoomPart> rooms,
        List<FaceRow> wetFaces,
        List<WarningRow> warnings,
        List<SiteNotes.Assumption> assumptions,
        List<String> attribution,
        RunPart run) {
    /**
     * The head of the page.
     *
     * @param site what the user calls the job
     * @param period first and last day, with years
     * @param invented whether to mark the scenario as invented
     * @param headline the answer
     */
    record Head(String site, String period, boolean invented, String headline) {}

    /**
     * One coat.
     *
     * @param label which coat
     * @param detail area, thickness, background and day laid
     * @param dates when it is ready
     * @param oneDate whether one date stands for all three
     */
    record CoatRow(String label, String detail, ReadyText.Cells dates, boolean oneDate) {}

    /**
     * What is said room by room.
     *
     * @param name the room
     * @param coats its coats, worst first
     * @param why why its worst coat is slow, if it has a coat that was laid
     * @param account its water account
     */
    record RoomPart(String name, List<Coat> coats, Optional<WhySlow.Sentence> why, Account account) {}

    /**
     * Wet hours of a face.
     *
     * @param name the wall, or what else it is
     * @param atDewPoint hours with the dew point of the room air at or above it
     * @param damp hours above 98 %
     * @param running hours with a film
     */
    record FaceRow(String name, String atDewPoint, String damp, String running) {}

    /**
     * One warning.
     *
     * @param when its first and last day
     * @param text what it says
     */
    record WarningRow(String when, String text) {}

    /**
     * About the run.
     *
     * @param solver runs, steps and time
     * @param weather whose weather it is, and what was mended in it
     * @param closure what the account leaves unexplained
     * @param version version of limedry
     */
    record RunPart(String solver, String weather, String closure, String version) {}
}
