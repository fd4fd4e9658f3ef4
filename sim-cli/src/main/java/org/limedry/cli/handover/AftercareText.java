package org.limedry.cli.handover;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;

/** The words of the aftercare sheet. */
final class AftercareText {
    static final List<String> NOT_TO_DO = List.of(
            "No vinyl, masonry or other plastic paint, no vinyl paper: they shut the water in, and paint and plaster come off.",
            "No gas or paraffin heater without a flue: carbon monoxide kills, and each litre of fuel burns to about a litre"
                    + " of water.",
            "No heating full on from cold, no hot air blown at a wall, no dehumidifier in a room kept shut.",
            "No furniture tight against outer walls in the first year: leave a hand's breadth.",
            "No gypsum filler or cement patch: mend with lime. Touch no wet wall with live wiring in it: call a competent"
                    + " person.");

    private AftercareText() {}

    /** Returns when a finish may go on in a room, as a piece of a sentence. */
    static String when(RoomLadder ladder, Finish finish, String lastDay) {
        if (ladder.isPutOff(finish)) {
            return "not while the wall is wet: stop its water first";
        }
        Optional<RoomLadder.Span> span = ladder.span(finish);
        if (span.isEmpty()) {
            return ladder.readyDay()
                    .map(day -> "from " + Days.full(finish.soonest(day)) + "; the late end lies past the run")
                    .orElse("no date: plaster not ready by " + lastDay + ", the end of the run");
        }
        String days = span.map(AftercareText::days).orElseThrow();
        return ladder.isOnCondition(finish) ? days + ", if the wall is dry" : days;
    }

    private static String days(RoomLadder.Span span) {
        return span.from().equals(span.until())
                ? "from " + Days.full(span.from())
                : "from " + Days.full(span.from()) + " to " + Days.full(span.until());
    }

    /** Returns a room with the day on which its last coat is ready. */
    static String room(RoomLadder ladder, String lastDay) {
        String ready = ladder.readyDay()
                .map(day -> "last coat ready " + Days.full(day))
                .orElse("last coat not ready by " + lastDay + ", the end of the run");
        return Names.capital(ladder.room()) + ": " + ready + "; "
                + ladder.wetness().words();
    }

    /** Returns how to heat in the first winter. */
    static List<String> heating(Handover handover) {
        return List.of(
                firstWinter(handover)
                        + " heat gently: raise the room by no more than 1 to 2 degrees a day until it is as warm as you"
                        + " want it, then hold it even (common practice, no source).",
                "Air each room for ten minutes twice a day, and whenever a window is wet (common practice, no source).",
                "Keep the rooms above 5 \u00b0C until the plaster is hard (read, S34 to S36); a white bloom is brushed off dry.");
    }

    private static String firstWinter(Handover handover) {
        return handover.ladders().stream()
                .flatMap(ladder -> ladder.readyDay().stream())
                .max(LocalDate::compareTo)
                .filter(last -> last.getMonthValue() >= Month.APRIL.getValue()
                        && last.getMonthValue() < Month.OCTOBER.getValue())
                .map(last -> "When heating begins, in October " + last.getYear() + ",")
                .orElse("In this heating season, the first,");
    }
}
