package org.limedry.cli.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;

/**
 * The days that a run covers, by the clock of the place.
 *
 * @param zone clock of the place
 * @param first first day
 * @param last last day, not before the first
 */
record RunDays(ZoneId zone, LocalDate first, LocalDate last) {
    /** Hour at which a gang begins and a coat goes on. Common practice, no source. */
    static final LocalTime START_OF_WORK = LocalTime.of(8, 0);

    private static final int USUAL_DAYS = 90;
    static final int MOST_DAYS = 1100;

    /** Returns the days of a site, or reports what is wrong with them. */
    static Optional<RunDays> of(Entry site, ZoneId zone) {
        Optional<LocalDate> first = site.isGiven(SiteKeys.FROM) ? site.given(SiteKeys.FROM) : firstLaid(site);
        if (first.isEmpty()
                || (site.isGiven(SiteKeys.UNTIL) && site.given(SiteKeys.UNTIL).isEmpty())) {
            return Optional.empty();
        }
        LocalDate last = site.given(SiteKeys.UNTIL).orElse(first.get().plusDays(USUAL_DAYS));
        if (last.isBefore(first.get())) {
            site.at(SiteKeys.UNTIL).problem(last.toString(), "must not be before the first day, " + first.get());
            return Optional.empty();
        }
        if (ChronoUnit.DAYS.between(first.get(), last) > MOST_DAYS) {
            site.at(SiteKeys.UNTIL)
                    .problem(last.toString(), "must be within " + MOST_DAYS + " days of the first day, " + first.get());
            return Optional.empty();
        }
        return Optional.of(new RunDays(zone, first.get(), last));
    }

    private static Optional<LocalDate> firstLaid(Entry site) {
        return site.given(SiteKeys.COATS).orElse(List.of()).stream()
                .flatMap(coat -> coat.given(CoatKeys.LAID).flatMap(laid -> laid).stream())
                .min(LocalDate::compareTo);
    }

    /** Returns as many days from the first on. */
    RunDays lasting(int days) {
        return new RunDays(zone, first, first.plusDays(days - 1L));
    }

    /** Tells whether a day is in the run. */
    boolean contains(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    /** Returns the start of the first day. */
    Instant from() {
        return first.atStartOfDay(zone).toInstant();
    }

    /** Returns the end of the last day. */
    Instant until() {
        return last.plusDays(1).atStartOfDay(zone).toInstant();
    }

    /** Returns the hour at which work begins on a day. */
    Instant workBegins(LocalDate day) {
        return day.atTime(START_OF_WORK).atZone(zone).toInstant();
    }
}
