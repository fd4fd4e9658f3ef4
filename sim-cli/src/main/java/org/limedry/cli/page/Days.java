package org.limedry.cli.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.limedry.cli.chart.DateWords;

/**
 * Dates in the words of the page, on the calendar of the site.
 *
 * @param zone time zone of the site
 * @param withYear whether a day needs its year to be told apart: the run is longer than some ten months
 */
public record Days(ZoneId zone, boolean withYear) {
    private static final Duration NEEDS_YEAR = Duration.ofDays(300);

    // The names of days and months are English words of the page. ROOT has none, and the British ones say "Sept".
    private static final DateTimeFormatter SHORT_YEAR = format("d MMM ''yy");
    private static final DateTimeFormatter WITH_YEAR = format("d MMM yyyy");
    private static final DateTimeFormatter WEEKDAY = format("EEE d MMM");
    private static final DateTimeFormatter WEEKDAY_YEAR = format("EEE d MMM yyyy");
    private static final DateTimeFormatter LONG = format("EEEE d MMMM");
    private static final DateTimeFormatter LONG_YEAR = format("EEEE d MMMM yyyy");

    /** Returns the wording for a run between two instants. */
    public static Days of(ZoneId zone, Instant from, Instant until) {
        return new Days(zone, Duration.between(from, until).compareTo(NEEDS_YEAR) > 0);
    }

    /** Returns the day in the calendar of the site. */
    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** Returns the last day of a run, which ends at the first instant that is no longer in it. */
    public LocalDate lastDay(Instant until) {
        return date(until.minusNanos(1));
    }

    /** Returns "7 Jan". */
    public String brief(LocalDate date) {
        return withYear ? SHORT_YEAR.format(date) : DateWords.shortDay(date);
    }

    /** Returns "Thu 7 Jan". */
    public String table(LocalDate date) {
        return (withYear ? WEEKDAY_YEAR : WEEKDAY).format(date);
    }

    /** Returns "Thursday 7 January". */
    public String text(LocalDate date) {
        return (withYear ? LONG_YEAR : LONG).format(date);
    }

    /** Returns "7 January". */
    public String textWithoutWeekday(LocalDate date) {
        return withYear ? DateWords.longDayWithYear(date) : DateWords.longDay(date);
    }

    /** Returns "7 Jan 2027". */
    public static String full(LocalDate date) {
        return WITH_YEAR.format(date);
    }

    private static DateTimeFormatter format(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
    }
}
