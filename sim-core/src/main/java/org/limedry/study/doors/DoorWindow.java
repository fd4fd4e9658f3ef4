package org.limedry.study.doors;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.limedry.climate.Schedule;
import org.limedry.units.Check;

/**
 * The days of a plan for the doors. A day runs from 6 in the morning to 8 in the evening, its night from there to the
 * next morning.
 *
 * @param zone clock of the site
 * @param first first day
 * @param days how many; at least 1
 */
public record DoorWindow(ZoneId zone, LocalDate first, int days) {
    /** Hour of the day at which the plan begins. */
    public static final int FIRST_HOUR = 6;

    /** Hour of the day at which the night begins. */
    public static final int LAST_HOUR = 20;

    /** Hours of a day in the plan. */
    public static final int HOURS = LAST_HOUR - FIRST_HOUR;

    public DoorWindow {
        Check.atLeast(days, 1, "days");
    }

    /** Returns the days. */
    public List<LocalDate> dates() {
        return IntStream.range(0, days).mapToObj(first::plusDays).toList();
    }

    /** Returns when the plan begins: the first morning. */
    public Instant from() {
        return morning(first);
    }

    /** Returns when it ends: the morning after the last night. */
    public Instant until() {
        return morning(first.plusDays(days));
    }

    /** Returns 6 in the morning of a day. */
    public Instant morning(LocalDate date) {
        return date.atTime(LocalTime.of(FIRST_HOUR, 0)).atZone(zone).toInstant();
    }

    /** Returns 8 in the evening of a day. */
    public Instant evening(LocalDate date) {
        return morning(date).plus(Duration.ofHours(HOURS));
    }

    /** Returns doors that are open by day and shut at night. */
    Schedule daytime() {
        return new Schedule(dates().stream()
                .map(date -> new Schedule.Span(morning(date), evening(date)))
                .toList());
    }
}
