package org.limedry.cli.readings.logger;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Moments in words, by a clock.
 *
 * @param zone the clock
 */
public record ClockWords(ZoneId zone) {
    private static final DateTimeFormatter FORM = DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter WITH_OFFSET =
            DateTimeFormatter.ofPattern("EEE d MMM uuuu HH:mm:ss xxx", Locale.ENGLISH);

    /** Returns a moment such as "9 Nov 2026 08:00". */
    public String words(Instant moment) {
        return FORM.format(moment.atZone(zone));
    }

    /** Returns a moment with all that could be misread: "Mon 9 Nov 2026 08:00:00 +00:00". */
    public String inFull(Instant moment) {
        return WITH_OFFSET.format(moment.atZone(zone));
    }
}
