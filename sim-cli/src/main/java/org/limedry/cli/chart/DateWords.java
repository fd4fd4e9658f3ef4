package org.limedry.cli.chart;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates in the words that charts and pages share. */
public final class DateWords {
    // English by name: the root locale has no month names, and some English ones shorten September to four letters.
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG_WITH_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private DateWords() {}

    /** Returns the day as on an axis: "7 Jan". */
    public static String shortDay(LocalDate day) {
        return SHORT.format(day);
    }

    /** Returns the day as on an axis, its two words never parted. */
    static String unbroken(LocalDate day) {
        return shortDay(day).replace(' ', '\u00a0');
    }

    /** Returns the day as in a sentence: "7 January". */
    public static String longDay(LocalDate day) {
        return LONG.format(day);
    }

    /** Returns the day with its year: "7 January 2027". */
    public static String longDayWithYear(LocalDate day) {
        return LONG_WITH_YEAR.format(day);
    }
}
