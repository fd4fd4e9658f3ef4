package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.util.Locale;

/** Lengths of time in words. */
public final class Spans {
    private Spans() {}

    /** Returns a length such as "5 min", "3 h 20 min" or "2 days 4 h". */
    public static String words(Duration length) {
        long seconds = length.toSeconds();
        if (seconds < 60) {
            return seconds + " s";
        }
        long minutes = length.toMinutes();
        if (minutes < 60) {
            return minutes + " min";
        }
        long hours = length.toHours();
        if (hours < 48) {
            return hours + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
        }
        return String.format(Locale.ROOT, "%d days", hours / 24) + (hours % 24 == 0 ? "" : " " + hours % 24 + " h");
    }
}
