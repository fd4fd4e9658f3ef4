package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.limedry.units.Check;

/**
 * The time a chart covers, and where its days begin.
 *
 * @param from start of the run
 * @param to end of the run; after {@code from}
 * @param zone time zone of the building
 */
public record Timeline(Instant from, Instant to, ZoneId zone) {
    private static final Duration HOURLY_AT_MOST = Duration.ofDays(21);

    public Timeline {
        Check.that(to.isAfter(from), "to", "after " + from, to);
    }

    /** Returns the local day of a moment. */
    LocalDate day(Instant moment) {
        return moment.atZone(zone).toLocalDate();
    }

    /** Returns the local day on which the run starts. */
    LocalDate firstDay() {
        return day(from);
    }

    /** Returns the last local day of which the run holds any part. */
    LocalDate lastDay() {
        return day(to.minusNanos(1));
    }

    /** Returns the first moment of a local day. */
    Instant startOf(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** Returns whether the run is too long to be drawn hour by hour. */
    boolean byDay() {
        return Duration.between(from, to).compareTo(HOURLY_AT_MOST) > 0;
    }

    boolean holds(Instant moment) {
        return !moment.isBefore(from) && !moment.isAfter(to);
    }

    /** Returns the moment itself, or the end of the run that is nearer to it. */
    Instant clamp(Instant moment) {
        if (moment.isBefore(from)) {
            return from;
        }
        return moment.isAfter(to) ? to : moment;
    }
}
