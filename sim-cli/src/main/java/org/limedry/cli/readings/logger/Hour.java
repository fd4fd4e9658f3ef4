package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as it is written.
 *
 * @param sinceMidnight how long after midnight; 24:00 is a whole day
 * @param shown the hour as it stands, without what AM or PM do to it
 * @param half whether AM or PM is said
 */
record Hour(Duration sinceMidnight, int shown, boolean half) {
    private static final Pattern FORM = Pattern.compile(
            "(\\d{1,2})[:.h](\\d{2})(?:[:.](\\d{2})(?:[.,]\\d{1,9})?)?\\s*(?:([ap])\\.?\\s?m\\.?)?",
            Pattern.CASE_INSENSITIVE);
    private static final int NOON = 12;

    static Optional<Hour> of(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        int shown = Integer.parseInt(form.group(1));
        int minute = Integer.parseInt(form.group(2));
        int second = form.group(3) == null ? 0 : Integer.parseInt(form.group(3));
        String half = form.group(4) == null ? "" : form.group(4).toLowerCase(Locale.ROOT);
        int hour = half.isEmpty() ? shown : shown % NOON + (half.equals("p") ? NOON : 0);
        boolean possible = minute < 60 && second < 60 && (half.isEmpty() ? shown <= 24 : shown >= 1 && shown <= NOON);
        Duration since = Duration.ofHours(hour).plusMinutes(minute).plusSeconds(second);
        return possible && since.compareTo(Duration.ofDays(1)) <= 0
                ? Optional.of(new Hour(since, shown, !half.isEmpty()))
                : Optional.empty();
    }
}
