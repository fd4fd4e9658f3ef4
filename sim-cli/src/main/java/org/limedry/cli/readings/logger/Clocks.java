package org.limedry.cli.readings.logger;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds how dates and times are meant: as the user says, else as the file says, else by the usual clock. */
final class Clocks {
    private static final Pattern OFFSET_IN_HEADING = Pattern.compile(
            "((?:utc|gmt)(?:\\s*[-+\u2212]\\s?\\d{1,2}(?::?\\d{2})?)?)|(?<=[\\s(\\[])([-+]\\d{2}:?\\d{2}|z)[)\\]]?\\s*$",
            Pattern.CASE_INSENSITIVE);

    private final Questions questions;
    private final ZoneId fallback;
    private final Consumer<Said> said;

    Clocks(Questions questions, ZoneId fallback, Consumer<Said> said) {
        this.questions = questions;
        this.fallback = fallback;
        this.said = said;
    }

    /**
     * What came of it.
     *
     * @param plan order of dates, and zone
     * @param taken whether some times have no clock but the usual one here
     */
    record Clock(ReadingPlan.Clock plan, boolean taken) {}

    Clock of(Sheet sheet, Places places, Tally tally) {
        DateOrder order = questions
                .oneOf(PlanKey.DATE_ORDER, DateOrder.values(), DateOrder::word)
                .map(told -> {
                    say("dates", told.word() + " (told)");
                    return told;
                })
                .orElseGet(() -> guessed(OrderGuess.of(tally.dates())));
        return zone(order, sheet, places, tally);
    }

    private void say(String what, String words) {
        said.accept(new Said(what, words));
    }

    private DateOrder guessed(OrderGuess guess) {
        if (guess instanceof OrderGuess.Settled settled) {
            say("dates", settled.order().word() + ": " + settled.why());
            return settled.order();
        }
        OrderGuess.Open open = (OrderGuess.Open) guess;
        if (!questions.isAsked(PlanKey.DATE_ORDER)) {
            questions.open(PlanKey.DATE_ORDER, open.found(), open.rule());
        }
        return DateOrder.DAY_MONTH_YEAR;
    }

    private Clock zone(DateOrder order, Sheet sheet, Places places, Tally tally) {
        Optional<ZoneId> told = questions.zone();
        List<ZoneOffset> headed = headed(sheet, places);
        if (tally.hasOffsets()) {
            say("clock", "each time says how far it is from UTC");
            boolean taken = told.isEmpty() && !tally.allHaveOffsets();
            return new Clock(new ReadingPlan.Clock(order, told.orElse(fallback)), taken);
        } else if (told.isPresent()) {
            say("clock", told.get() + " (told)");
            return new Clock(new ReadingPlan.Clock(order, told.get()), false);
        } else if (headed.size() == 1) {
            ZoneId zone = ZoneId.ofOffset("UTC", headed.get(0));
            say("clock", zone + ", as the heading says");
            return new Clock(new ReadingPlan.Clock(order, zone), false);
        } else if (headed.size() > 1) {
            questions.open(
                    PlanKey.ZONE,
                    "the headings name more than one clock",
                    "say which is right with --zone, such as --zone UTC" + headed.get(0));
        }
        say("clock", fallback + " (the usual one here; --zone says another, summer time included)");
        return new Clock(new ReadingPlan.Clock(order, fallback), true);
    }

    /** Returns the offsets from UTC that the headings of date and time name, each once. */
    private static List<ZoneOffset> headed(Sheet sheet, Places places) {
        return Stream.of(Role.DATE, Role.TIME)
                .flatMap(role -> places.all(role).stream())
                .flatMap(column ->
                        OFFSET_IN_HEADING.matcher(sheet.heading(column)).results())
                .map(result -> result.group(1) == null ? result.group(2) : result.group(1))
                .flatMap(words -> Stamp.offset(words).stream())
                .distinct()
                .toList();
    }
}
