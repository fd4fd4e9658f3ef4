package org.limedry.cli.readings.logger;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date with its time as it is written.
 *
 * @param day the date
 * @param hour the time
 * @param offset how far its clock is from UTC as it says itself, such as Z or +01:00; empty text for nothing
 */
record Stamp(Day day, Hour hour, String offset) {
    private static final Pattern OFFSET = Pattern.compile(
            "(.*\\d(?:\\s*[apAP]\\.?[mM]\\.?)?)\\s*(Z|(?:UTC|GMT)(?:\\s?[-+]\\d{1,2}(?::?\\d{2})?)?|[-+]\\d{2}(?::?\\d{2})?)");
    private static final Pattern WEEKDAY = Pattern.compile("(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)[a-z]*[., ]+(.*)");
    // The time begins at the last blank or T before a colon form; a date by name has blanks of its own.
    private static final Pattern TWO = Pattern.compile("(.+?)(?:[T,\\s]+)(\\d{1,2}[:.h]\\d{2}.*)");

    private static final Pattern OFFSET_WORDS = Pattern.compile(
            "(?:Z|UTC|GMT)?\\s*(?:([-+\u2212])\\s?(\\d{1,2})(?::?(\\d{2}))?)?", Pattern.CASE_INSENSITIVE);
    private static final int MOST_AHEAD_HOURS = 18;
    private static final int MINUTES_AN_HOUR = 60;
    private static final int SECONDS_A_MINUTE = 60;
    private static final long SECONDS_A_DAY = 86_400;

    /** A date with its time, cut apart. */
    record Parts(String date, String time, String offset) {
        static Optional<Parts> of(String text) {
            Parts whole = of("", text);
            Matcher two = TWO.matcher(whole.time);
            return two.matches() ? Optional.of(new Parts(two.group(1), two.group(2), whole.offset)) : Optional.empty();
        }

        /** Takes the offset off a time. */
        static Parts of(String date, String text) {
            if (mayEndInOffset(text)) {
                Matcher said = OFFSET.matcher(text);
                if (said.matches()) {
                    return new Parts(date, said.group(1), said.group(2));
                }
            }
            return new Parts(date, text, "");
        }

        /** A look at single letters, much cheaper than the pattern that decides. */
        private static boolean mayEndInOffset(String text) {
            int colon = text.indexOf(':');
            return colon >= 0
                    && (Character.isLetter(text.charAt(text.length() - 1))
                            || text.indexOf('+', colon) >= 0
                            || text.indexOf('-', colon) >= 0);
        }

        private Optional<Stamp> stamp() {
            return Stamp.date(date).flatMap(day -> Hour.of(time).map(hour -> new Stamp(day, hour, offset)));
        }
    }

    static Optional<Stamp> of(String text) {
        return Parts.of(text).flatMap(Parts::stamp);
    }

    /** Returns a date, perhaps with its weekday before it. */
    static Optional<Day> date(String text) {
        Matcher weekday = WEEKDAY.matcher(text);
        return Day.of(weekday.matches() ? weekday.group(1) : text);
    }

    /** Returns the time by its own clock in seconds since 1970, if there is such a day in this order. */
    OptionalLong secondIn(DateOrder order) {
        Optional<LocalDate> date = day.in(order);
        return date.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(date.get().toEpochDay() * SECONDS_A_DAY + hour.second());
    }

    /** Returns the offset that words such as Z, UTC+2, GMT-05:00 or +0100 tell, if they tell one. */
    static Optional<ZoneOffset> offset(String text) {
        Matcher form = OFFSET_WORDS.matcher(text);
        if (text.isEmpty() || !form.matches()) {
            return Optional.empty();
        }
        if (form.group(1) == null) {
            return Optional.of(ZoneOffset.UTC);
        }
        int minutes = form.group(3) == null ? 0 : Integer.parseInt(form.group(3));
        int ahead = Integer.parseInt(form.group(2)) * MINUTES_AN_HOUR + minutes;
        return minutes < MINUTES_AN_HOUR && ahead <= MOST_AHEAD_HOURS * MINUTES_AN_HOUR
                ? Optional.of(ZoneOffset.ofTotalSeconds(
                        SECONDS_A_MINUTE * (form.group(1).equals("+") ? ahead : -ahead)))
                : Optional.empty();
    }
}
