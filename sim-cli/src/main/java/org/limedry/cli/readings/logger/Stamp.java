package org.limedry.cli.readings.logger;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
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
    private static final Pattern OFFSET =
            Pattern.compile("(.*\\d(?:\\s*[apAP]\\.?[mM]\\.?)?)\\s*(Z|UTC|GMT|[-+]\\d{2}:?\\d{2})");
    private static final Pattern WEEKDAY = Pattern.compile("(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)[a-z]*[., ]+(.*)");
    // The time begins at the last blank or T before a colon form; a date by name has blanks of its own.
    private static final Pattern TWO = Pattern.compile("(.+?)(?:[T,\\s]+)(\\d{1,2}[:.h]\\d{2}.*)");

    private static final long SECONDS_A_DAY = 86_400;

    /** A date with its time, cut apart. */
    record Parts(String date, String time, String offset) {
        static Optional<Parts> of(String text) {
            String offset = "";
            String rest = text;
            Matcher said = OFFSET.matcher(text);
            if (text.indexOf(':') >= 0 && said.matches()) {
                rest = said.group(1);
                offset = said.group(2);
            }
            Matcher two = TWO.matcher(rest);
            return two.matches() ? Optional.of(new Parts(two.group(1), two.group(2), offset)) : Optional.empty();
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

    /** Returns the offset it tells, if it tells one. */
    static Optional<ZoneOffset> offset(String text) {
        String word = text.toUpperCase(Locale.ROOT);
        if (word.equals("Z") || word.equals("UTC") || word.equals("GMT")) {
            return Optional.of(ZoneOffset.UTC);
        }
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(ZoneOffset.of(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
