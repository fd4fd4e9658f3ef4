package org.limedry.cli.handover;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.study.care.CareRecord;
import org.limedry.study.care.CareRecord.Extreme;
import org.limedry.study.care.CareRecord.Kind;
import org.limedry.study.care.CareRecord.Room;
import org.limedry.study.care.CareRecord.Spell;
import org.limedry.units.Units;

/** The words of the record of care. */
final class CareText {
    private CareText() {}

    /** Returns a figure with its unit. */
    static String figure(Kind kind, double value) {
        return switch (kind) {
            case WARMED -> Figures.oneDecimal(value) + " K";
            case DRY -> Figures.whole(Units.percentFromFraction(value)) + " %";
            case COLD -> Figures.oneDecimal(value) + " \u00b0C";
        };
    }

    /** Returns what passing a limit means. */
    static String passed(Kind kind, CareRecord.Limits limits) {
        return switch (kind) {
            case WARMED -> "warmed by more than " + Figures.plain(limits.warmingK()) + " K in 24 hours";
            case DRY -> "drier than " + Figures.plain(Units.percentFromFraction(limits.driest())) + " %";
            case COLD -> "colder than " + Figures.plain(limits.coldestCelsius()) + " \u00b0C";
        };
    }

    /** Returns the worst figures over all rooms as a sentence without a full stop. */
    static String headline(CareRecord care) {
        String warmed = care.rooms().stream()
                .flatMap(room -> room.fastest().stream())
                .max(Comparator.comparingDouble(Extreme::value))
                .map(worst ->
                        "Never warmed by more than " + figure(Kind.WARMED, Math.max(0.0, worst.value())) + " in a day")
                .orElse("Run too short to tell warming");
        double driest = care.rooms().stream()
                .mapToDouble(room -> room.driest().value())
                .min()
                .orElseThrow();
        double coldest = care.rooms().stream()
                .mapToDouble(room -> room.coldest().value())
                .min()
                .orElseThrow();
        return warmed + ", never drier than " + figure(Kind.DRY, driest) + ", never below "
                + figure(Kind.COLD, coldest);
    }

    /** Returns how many exceptions there are, each kind counted. */
    static String exceptions(CareRecord care) {
        List<String> parts = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            long count = care.rooms().stream()
                    .flatMap(room -> room.spells().stream())
                    .filter(spell -> spell.kind() == kind)
                    .count();
            parts.add(passed(kind, care.limits()) + ": "
                    + (count == 0 ? "never" : Figures.count((double) count, "time")));
        }
        return String.join("; ", parts);
    }

    /** Returns the room with most hours outside the limits; of equals the first. */
    static Room worst(CareRecord care) {
        return care.rooms().stream()
                .max(Comparator.comparingDouble(CareText::hoursOutside)
                        .thenComparing(room -> -care.rooms().indexOf(room)))
                .orElseThrow();
    }

    private static double hoursOutside(Room room) {
        return room.spells().stream()
                .mapToDouble(
                        spell -> Duration.between(spell.from(), spell.until()).toHours() + 1.0)
                .sum();
    }

    /** Returns the days of a spell. */
    static String when(Spell spell, Days days) {
        String from = days.table(days.date(spell.from()));
        String until = days.table(days.date(spell.until()));
        return from.equals(until) ? from : from + " to " + until;
    }

    /** Returns a worst figure with its day. */
    static String dated(Kind kind, Optional<Extreme> extreme, Days days) {
        return extreme.map(one -> figure(kind, one.value()) + ", " + days.table(days.date(one.at())))
                .orElse("run too short");
    }
}
