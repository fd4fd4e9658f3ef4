package org.limedry.cli.doors;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.limedry.cli.page.Figures;
import org.limedry.study.doors.DoorBlock;
import org.limedry.study.doors.DoorDay;
import org.limedry.study.doors.DoorNight;
import org.limedry.study.doors.DoorReason;
import org.limedry.study.doors.DoorReason.Word;
import org.limedry.study.doors.DoorWindow;

/** One day of a plan in the words of the trade. */
final class DayWords {
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final String TOO_CLOSE = "too close to tell";

    /** Less than this onto the walls is not worth a figure, litres. */
    private static final double LEAST_LITRES = 0.5;

    private final DoorDay day;

    DayWords(DoorDay day) {
        this.day = day;
    }

    String weekday() {
        return WEEKDAY.format(day.date());
    }

    String date() {
        return DATE.format(day.date());
    }

    /** Returns "open 9 to 16, shut else", the day's hours in one breath. */
    String blocks() {
        if (day.blocks().size() == 1) {
            return word(day.blocks().get(0)) + " all day";
        }
        return day.blocks().stream()
                .map(block -> word(block) + " " + clock(block.firstHour()) + " to " + clock(block.endHour()))
                .collect(Collectors.joining(", "));
    }

    private static String word(DoorBlock block) {
        return switch (block.word()) {
            case OPEN -> "open";
            case SHUT -> "shut";
            case NO_DIFFERENCE -> "no difference";
        };
    }

    /** Returns what stands on the plan for a night. */
    static String night(DoorNight night) {
        String doors = night.open() ? "OPEN" : "SHUT";
        return doors + (night.frost() ? " + cover" : "") + (night.fumes() ? ", heater off" : "");
    }

    static int clock(int hourOfPlan) {
        return DoorWindow.FIRST_HOUR + hourOfPlan;
    }

    /** Returns why, in up to twelve words. */
    String why() {
        return danger().or(this::trap).orElseGet(this::air);
    }

    private Optional<String> danger() {
        if (day.hoursOf(DoorReason.FUMES) > 0) {
            return Optional.of("Unflued heater burns: keep air moving, carbon monoxide kills.");
        }
        boolean opens = day.hoursOf(Word.OPEN) > 0;
        if (day.hoursOf(DoorReason.FROST) > 0) {
            return Optional.of(
                    opens
                            ? "Drier out as shown; in the other hours frost would reach the coat."
                            : "Frost: open doors would freeze the wet coat.");
        }
        if (day.hoursOf(DoorReason.TOO_FAST) > 0) {
            return Optional.of(
                    opens
                            ? "Open as shown; longer would dry the young coat too fast."
                            : "Open doors would dry the young coat too fast: shut, mist.");
        }
        return Optional.empty();
    }

    /** Mild wet air on cold walls, if it decides any hour of the plan. */
    private Optional<String> trap() {
        if (day.hoursOf(DoorReason.WETS_WALLS) == 0 || day.hoursOf(Word.SHUT) == 0) {
            return Optional.empty();
        }
        double litres = day.ontoWallsKg();
        boolean opens = day.hoursOf(Word.OPEN) > 0;
        if (litres < LEAST_LITRES) {
            return Optional.of(
                    opens
                            ? "Open as shown; else mild wet air would wet cold walls."
                            : "Mild wet air, cold walls: open doors would wet them.");
        }
        String figure = Figures.count(litres, "litre");
        return Optional.of(
                opens
                        ? "Open as shown; else mild wet air puts " + figure + " on walls."
                        : "Mild wet air, cold walls: open doors put " + figure + " ON them.");
    }

    private String air() {
        List<DoorBlock> blocks = day.blocks();
        String first = state(blocks.get(0));
        if (blocks.size() == 1) {
            return alone(blocks.get(0).word());
        }
        if (blocks.size() == 2) {
            return first + " until " + clock(blocks.get(0).endHour()) + ", then " + lower(state(blocks.get(1))) + ".";
        }
        if (day.hoursOf(Word.OPEN) > 0) {
            boolean wets = day.hoursOf(Word.SHUT) > 0;
            return "Drier out than in as shown; else " + (wets ? "wetter" : TOO_CLOSE) + ".";
        }
        return "Wetter out than in as shown; else " + TOO_CLOSE + ".";
    }

    private String alone(Word word) {
        return switch (word) {
            case OPEN -> "Drier out than in all day.";
            case SHUT -> "Wetter out than in: open doors bring water in.";
            case NO_DIFFERENCE ->
                day.hoursOf(DoorReason.NO_GAIN) > day.hoursOf(DoorReason.WITHIN_ERROR)
                        ? "Dry but cold air: it chills the walls, takes no more."
                        : "Outside as wet as inside: closer than an instrument can tell.";
        };
    }

    private static String state(DoorBlock block) {
        return switch (block.word()) {
            case OPEN -> "Drier out than in";
            case SHUT -> "Wetter out than in";
            case NO_DIFFERENCE -> "Too close to tell";
        };
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
