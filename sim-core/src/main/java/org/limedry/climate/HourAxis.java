package org.limedry.climate;

import java.time.Duration;
import java.time.Instant;

/**
 * Whole hours in a row.
 *
 * @param firstHour the first, in hours since 1970-01-01T00:00Z
 * @param count how many
 */
record HourAxis(long firstHour, int count) {
    static final long SECONDS_PER_HOUR = 3600L;

    /** Returns the hours from the last full one before {@code from} to the first full one at or after {@code until}. */
    static HourAxis spanning(Instant from, Instant until) {
        long first = hourOf(from);
        // An instant inside an hour needs the hour after it as its right neighbour.
        long last = hourOf(until.minusNanos(1)) + 1;
        return new HourAxis(first, Math.toIntExact(last - first + 1));
    }

    /** Returns the full hour at or before an instant, in hours since 1970-01-01T00:00Z. */
    static long hourOf(Instant instant) {
        return Math.floorDiv(instant.getEpochSecond(), SECONDS_PER_HOUR);
    }

    Instant instant(int index) {
        return Instant.ofEpochSecond((firstHour + index) * SECONDS_PER_HOUR);
    }

    HourAxis later(Duration whole) {
        return new HourAxis(firstHour + whole.toHours(), count);
    }

    boolean contains(HourAxis other) {
        return other.firstHour >= firstHour && other.firstHour + other.count <= firstHour + count;
    }

    /** Returns hours from the first one to an instant. */
    double hoursTo(Instant instant) {
        long wholeSeconds = instant.getEpochSecond() - firstHour * SECONDS_PER_HOUR;
        return (wholeSeconds + instant.getNano() * 1e-9) / SECONDS_PER_HOUR;
    }

    /** Returns words for a run of hours: one hour, or the first and the last. */
    String words(int from, int untilExclusive) {
        int length = untilExclusive - from;
        if (length == 1) {
            return instant(from) + " (1 hour)";
        }
        return instant(from) + " to " + instant(untilExclusive - 1) + " (" + length + " hours)";
    }
}
