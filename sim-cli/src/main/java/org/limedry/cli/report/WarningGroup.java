package org.limedry.cli.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.limedry.simulation.Warning;

/**
 * All warnings of one kind about one wall, room or thing, told as one.
 *
 * @param warning from the first hour to the last, with the worst or the summed figure
 * @param times how many warnings there were
 */
record WarningGroup(Warning warning, int times) {
    private record Key(Warning.Kind kind, String subject, int coat) {
        static Key of(Warning warning) {
            // Of these two the figure is the number of a coat: each coat is told by itself.
            boolean byCoat = warning.kind() == Warning.Kind.NOT_LAID || warning.kind() == Warning.Kind.NOT_READY;
            return new Key(warning.kind(), warning.subject(), byCoat ? (int) Math.round(warning.value()) : 0);
        }
    }

    /** Returns the groups, in the order in which each began. */
    static List<WarningGroup> of(List<Warning> warnings) {
        Map<Key, WarningGroup> groups = new LinkedHashMap<>();
        for (Warning warning : warnings) {
            groups.merge(Key.of(warning), new WarningGroup(warning, 1), WarningGroup::and);
        }
        return List.copyOf(groups.values());
    }

    private WarningGroup and(WarningGroup other) {
        Warning one = warning;
        Warning two = other.warning;
        double value = switch (one.kind()) {
            case FROST_AIR, FROST_WET_FACE, DRY_BUT_SOFT -> Math.min(one.value(), two.value());
            case TOO_COLD, GLASS_RUNNING, UNFLUED_HEATER, HEAT_WITHOUT_AIR, WALL_FULL -> one.value() + two.value();
            case TOO_FAST, CARBON_DIOXIDE, WET_LATH, MOULD, NOT_LAID, NOT_READY -> Math.max(one.value(), two.value());
        };
        return new WarningGroup(
                new Warning(
                        one.kind(),
                        one.subject(),
                        one.from().isBefore(two.from()) ? one.from() : two.from(),
                        one.until().isAfter(two.until()) ? one.until() : two.until(),
                        value),
                times + other.times);
    }
}
