package org.limedry.cli.delay;

import java.time.LocalDate;
import org.limedry.cli.page.Days;

/** What a date of the job as it went stands on. */
enum DateBasis {
    /** The file says it: a coat laid, a hand test passed. */
    RECORD,
    /** The model says it, of a day before the last one on record. */
    MODEL,
    /** The model says it, of a day from the last one on record on. */
    FORECAST;

    static DateBasis of(boolean onRecord, LocalDate day, LocalDate lastRecord) {
        if (onRecord) {
            return RECORD;
        }
        return day.isBefore(lastRecord) ? MODEL : FORECAST;
    }

    /** Returns a day in a table: "3 Nov 2026", "about 20 Nov 2026", "about 14 Dec 2026, forecast". */
    String full(LocalDate day) {
        return switch (this) {
            case RECORD -> Days.full(day);
            case MODEL -> "about " + Days.full(day);
            case FORECAST -> "about " + Days.full(day) + ", forecast";
        };
    }

    /** Returns what goes before a day in a line: "ready", "ready about", "forecast ready about". */
    String ready() {
        return switch (this) {
            case RECORD -> "ready";
            case MODEL -> "ready about";
            case FORECAST -> "forecast ready about";
        };
    }

    /** Returns what goes before a day at a mark of a chart. */
    String mark() {
        return switch (this) {
            case RECORD -> "ready";
            case MODEL -> "about";
            case FORECAST -> "forecast";
        };
    }
}
