package org.limedry.cli.site;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.limedry.cli.site.schema.Nearest;
import org.limedry.cli.site.schema.OneOrMany;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.climate.Timetable;

/** Shapes of dates, days and times. */
final class Words {
    private static final String DATE = "\\d{4}-\\d{2}-\\d{2}";
    private static final LocalDate FIRST_DAY = LocalDate.of(1950, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2199, 12, 31);
    private static final Pattern DATED =
            Pattern.compile("(" + DATE + ")(?:\\s+to\\s+(" + DATE + "))?(?:\\s+(\\S.*))?", Pattern.DOTALL);
    private static final String WHEN = "when, such as \"Mon-Fri 09:00-15:30\"";

    private Words() {}

    /** Returns the word for a constant of an enumeration: {@code OLD_PAINT} is "old paint". */
    static String ofConstant(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Returns the shape of a date. */
    static Shape<LocalDate> date() {
        return new TextShape<>("date, YYYY-MM-DD", "^" + DATE + "$", Words::dateOf);
    }

    /** Reads a date. */
    static LocalDate dateOf(String text) {
        if (!text.matches(DATE)) {
            throw new IllegalArgumentException("must be a date, YYYY-MM-DD");
        }
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.isBefore(FIRST_DAY) || date.isAfter(LAST_DAY)) {
                throw new IllegalArgumentException("must be a date from " + FIRST_DAY + " to " + LAST_DAY);
            }
            return date;
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("must be a date, YYYY-MM-DD: there is no such day", e);
        }
    }

    /** Returns the shape of a time of day. */
    static Shape<LocalTime> time() {
        return new TextShape<>("time, HH:MM", "^([01]\\d|2[0-3]):[0-5]\\d$", text -> {
            try {
                return LocalTime.parse(text);
            } catch (DateTimeException e) {
                throw new IllegalArgumentException("must be a time, HH:MM", e);
            }
        });
    }

    /** Returns the shape of the days on which the gang works. */
    static Shape<Set<DayOfWeek>> days() {
        return new TextShape<>("days, such as Mon-Fri", "^[A-Za-z]", text -> {
            Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
            for (Timetable.Line line : timetable(text).lines()) {
                if (line.fromMinute() != 0 || line.untilMinute() != 24 * 60) {
                    throw new IllegalArgumentException("must be days without times");
                }
                days.addAll(line.days());
            }
            if (days.isEmpty()) {
                throw new IllegalArgumentException("must be at least one day");
            }
            return days;
        });
    }

    /** Returns the shape of the times at which something is open or on: a timetable, dated ones, or a list of them. */
    static Shape<List<Timetable>> times() {
        return new OneOrMany<>(new TextShape<>(WHEN, "\\S", Words::datedTimetable));
    }

    private static Timetable datedTimetable(String text) {
        Matcher matcher = DATED.matcher(text.strip());
        if (!matcher.matches()) {
            return timetable(text);
        }
        LocalDate first = dateOf(matcher.group(1));
        String until = matcher.group(2);
        LocalDate last = until == null ? first : dateOf(until);
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("must not end before it begins");
        }
        String rest = matcher.group(3);
        Timetable times = rest == null ? Timetable.always() : timetable(startsWithTime(rest) ? "daily " + rest : rest);
        return times.from(first).until(last);
    }

    private static boolean startsWithTime(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(0));
    }

    /** Reads a timetable; its message need not repeat the text, which the problem shows. */
    private static Timetable timetable(String text) {
        try {
            return Timetable.parse(text);
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            String prefix = "timetable \"" + text + "\": ";
            throw new IllegalArgumentException(
                    message.startsWith(prefix) ? message.substring(prefix.length()) : message, e);
        }
    }

    /** Returns the shape of a time zone. */
    static Shape<ZoneId> zone() {
        return new TextShape<>("time zone, such as Europe/Dublin", "^[A-Z][A-Za-z0-9_+/-]+$", text -> {
            if (!ZoneId.getAvailableZoneIds().contains(text)) {
                throw new IllegalArgumentException("must be a time zone by its place, such as Europe/Dublin"
                        + Nearest.hint(text, ZoneId.getAvailableZoneIds()));
            }
            return ZoneId.of(text);
        });
    }
}
