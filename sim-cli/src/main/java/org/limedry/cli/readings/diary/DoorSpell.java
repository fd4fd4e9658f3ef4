package org.limedry.cli.readings.diary;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import org.limedry.units.Check;

/**
 * A stretch of one day for which a door or window stood open.
 *
 * @param opening its name
 * @param fromMinute when it was opened, minutes after midnight
 * @param untilMinute when it was shut, minutes after midnight; 1440 is midnight of the next day
 * @param shutBy who shut it; empty if not written
 */
public record DoorSpell(String opening, int fromMinute, int untilMinute, String shutBy) {
    private static final int DAY_MINUTES = 1440;
    private static final double MINUTES_PER_HOUR = 60.0;

    public DoorSpell {
        Check.notBlank(opening, "opening");
        Check.atLeast(fromMinute, 0, "fromMinute");
        Check.that(
                untilMinute > fromMinute && untilMinute <= DAY_MINUTES,
                "untilMinute",
                "after fromMinute, to 1440",
                untilMinute);
    }

    /** Returns for how long it stood open, hours. */
    public double hours() {
        return (untilMinute - fromMinute) / MINUTES_PER_HOUR;
    }

    /** Returns when it was opened. */
    public Instant from(LocalDate day, ZoneId zone) {
        return day.atStartOfDay().plusMinutes(fromMinute).atZone(zone).toInstant();
    }

    /** Returns when it was shut. */
    public Instant until(LocalDate day, ZoneId zone) {
        return day.atStartOfDay().plusMinutes(untilMinute).atZone(zone).toInstant();
    }

    boolean overlaps(DoorSpell other) {
        return opening.equals(other.opening) && fromMinute < other.untilMinute && other.fromMinute < untilMinute;
    }

    String words() {
        return opening + " " + clock(fromMinute) + "-" + clock(untilMinute);
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
}
