package org.limedry.cli.readings.logger;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as it is written.
 *
 * @param second seconds since midnight; 24:00 is a whole day
 * @param shown the hour as it stands, without what AM or PM do to it
 * @param half whether AM or PM is said
 */
record Hour(int second, int shown, boolean half) {
    private static final Pattern FORM = Pattern.compile(
            "(\\d{1,2})[:.h](\\d{2})(?:[:.](\\d{2})(?:[.,]\\d{1,9})?)?\\s*(?:([ap])\\.?\\s?m\\.?)?",
            Pattern.CASE_INSENSITIVE);
    private static final int NOON = 12;
    private static final int MINUTES = 60;
    private static final int DAY = 86_400;

    static Optional<Hour> of(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        int shown = Integer.parseInt(form.group(1));
        boolean half = form.group(4) != null;
        int hour = half ? shown % NOON + (form.group(4).equalsIgnoreCase("p") ? NOON : 0) : shown;
        int minute = Integer.parseInt(form.group(2));
        int second = form.group(3) == null ? 0 : Integer.parseInt(form.group(3));
        int since = (hour * MINUTES + minute) * MINUTES + second;
        boolean onDial = half ? shown >= 1 && shown <= NOON : since <= DAY;
        return onDial && minute < MINUTES && second < MINUTES
                ? Optional.of(new Hour(since, shown, half))
                : Optional.empty();
    }
}
