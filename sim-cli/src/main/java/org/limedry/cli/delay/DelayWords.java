package org.limedry.cli.delay;

import java.time.LocalDate;
import org.limedry.cli.page.Figures;

/** Words that every part of a delay shares. */
final class DelayWords {
    private DelayWords() {}

    /** Returns "1 day", "119 days", with a true minus sign. */
    static String days(long days) {
        return Figures.whole(days) + (Math.abs(days) == 1 ? " day" : " days");
    }

    /** Returns "56 days later", "3 days earlier" or "the same day". */
    static String later(LocalDate planned, LocalDate actual) {
        long days = actual.toEpochDay() - planned.toEpochDay();
        return days == 0 ? "the same day" : days(Math.abs(days)) + (days > 0 ? " later" : " earlier");
    }

    /** Returns "119 days late", "12 days early" or "on the day planned". */
    static String late(long days) {
        return days == 0 ? "on the day planned" : days(Math.abs(days)) + (days > 0 ? " late" : " early");
    }

    /** Returns hours to the tenth: "2 h", "7.5 h". */
    static String hours(double hours) {
        return hoursFigure(hours) + " h";
    }

    static String hoursFigure(double hours) {
        return Figures.plain(Math.round(10 * hours) / 10.0);
    }
}
