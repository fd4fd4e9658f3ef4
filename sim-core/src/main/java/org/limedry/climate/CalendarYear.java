package org.limedry.climate;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneOffset;

/** A record laid out by month, day and hour UTC over a year of 366 days, to serve dates of any year. */
final class CalendarYear {
    /** Any leap year: it has a place for 29 February. */
    private static final int LEAP_YEAR = 2000;

    private static final int HOURS_PER_DAY = 24;
    private static final int SLOTS = 366 * HOURS_PER_DAY;

    private final Hours slots;

    private CalendarYear(Hours slots) {
        this.slots = slots;
    }

    /** Lays out a record; where it is longer than a year the first of two hours with the same date counts. */
    static CalendarYear of(HourAxis axis, Hours record) {
        // A second round lets the turn of the year be bridged like any other gap.
        Hours twice = Hours.missing(2 * SLOTS);
        int[] places = slots(axis);
        for (int i = 0; i < places.length; i++) {
            if (twice.isMissing(places[i])) {
                twice.copyHour(places[i], record, i);
            }
        }
        repeatTheDayBeforeLeapDay(twice);
        for (int slot = 0; slot < SLOTS; slot++) {
            twice.copyHour(SLOTS + slot, twice, slot);
        }
        twice.bridge();
        Hours slots = Hours.missing(SLOTS);
        for (int slot = 0; slot < SLOTS; slot++) {
            slots.copyHour(slot, twice, twice.isMissing(slot) ? SLOTS + slot : slot);
        }
        return new CalendarYear(slots);
    }

    /** Returns the hours that belong to dates of any year; missing where the record has none. */
    Hours along(HourAxis wanted) {
        Hours course = Hours.missing(wanted.count());
        int[] places = slots(wanted);
        for (int i = 0; i < places.length; i++) {
            course.copyHour(i, slots, places[i]);
        }
        return course;
    }

    private static void repeatTheDayBeforeLeapDay(Hours hours) {
        int leapDay = (LocalDateTime.of(LEAP_YEAR, Month.FEBRUARY, 29, 0, 0).getDayOfYear() - 1) * HOURS_PER_DAY;
        for (int slot = leapDay; slot < leapDay + HOURS_PER_DAY; slot++) {
            if (hours.isMissing(slot)) {
                hours.copyHour(slot, hours, slot - HOURS_PER_DAY);
            }
        }
    }

    /** Returns the place of each hour; the calendar is asked once a day. */
    private static int[] slots(HourAxis axis) {
        int[] slots = new int[axis.count()];
        for (int i = 0; i < slots.length; i++) {
            boolean newDay = (axis.firstHour() + i) % HOURS_PER_DAY == 0;
            slots[i] = i == 0 || newDay ? slot(axis.instant(i)) : slots[i - 1] + 1;
        }
        return slots;
    }

    private static int slot(Instant instant) {
        LocalDateTime time = LocalDateTime.ofInstant(instant, ZoneOffset.UTC);
        int day = time.withYear(LEAP_YEAR).getDayOfYear();
        return (day - 1) * HOURS_PER_DAY + time.getHour();
    }
}
