package org.limedry.climate;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the words of a {@link Timetable}. */
final class TimetableWords {
    private static final Pattern TIMES = Pattern.compile("(\\d{1,2}):(\\d{2})-(\\d{1,2}):(\\d{2})");
    private static final Pattern AROUND_MARK = Pattern.compile("\\s*([-,;])\\s*");
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Pattern SEMICOLON = Pattern.compile(";");
    private static final Pattern COMMA = Pattern.compile(",");
    private static final String DAYS = "Mon Tue Wed Thu Fri Sat Sun";
    private static final String ALLOWED = "\"Mon-Fri 09:00-15:30\", \"daily 07:00-19:00\", \"Sat\", always or never";

    private final String text;

    private TimetableWords(String text) {
        this.text = text;
    }

    static List<Timetable.Line> lines(String text) {
        TimetableWords words = new TimetableWords(text);
        List<Timetable.Line> lines = new ArrayList<>();
        for (String part : SEMICOLON.split(words.tidy(), -1)) {
            lines.addAll(words.part(part.strip()));
        }
        return lines;
    }

    /** A dash is a dash whatever its length, and spaces around a mark mean nothing. */
    private String tidy() {
        String plain = text.replace('\u2013', '-').replace('\u2014', '-').strip();
        return AROUND_MARK.matcher(plain).replaceAll("$1");
    }

    private List<Timetable.Line> part(String part) {
        return switch (part.toLowerCase(Locale.ROOT)) {
            case "always" -> Timetable.always().lines();
            case "never" -> List.of();
            case "" -> throw wrong("found nothing, allowed is " + ALLOWED);
            default -> daysAndTimes(part);
        };
    }

    private List<Timetable.Line> daysAndTimes(String part) {
        String[] words = SPACE.split(part, -1);
        if (words.length > 2) {
            throw wrong("found \"" + words[2] + "\" after days and times, allowed is " + ALLOWED);
        }
        Set<DayOfWeek> days = days(words[0]);
        if (words.length == 1) {
            return List.of(new Timetable.Line(days, 0, Timetable.MINUTES_PER_DAY));
        }
        List<Timetable.Line> lines = new ArrayList<>();
        for (String times : COMMA.split(words[1], -1)) {
            lines.add(line(days, times));
        }
        return lines;
    }

    private Set<DayOfWeek> days(String list) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String item : COMMA.split(list, -1)) {
            if (item.equalsIgnoreCase("daily")) {
                days.addAll(EnumSet.allOf(DayOfWeek.class));
                continue;
            }
            int dash = item.indexOf('-');
            DayOfWeek first = day(dash < 0 ? item : item.substring(0, dash));
            DayOfWeek last = dash < 0 ? first : day(item.substring(dash + 1));
            for (DayOfWeek day = first; day != last; day = day.plus(1)) {
                days.add(day);
            }
            days.add(last);
        }
        return days;
    }

    private DayOfWeek day(String word) {
        String upper = word.toUpperCase(Locale.ROOT);
        for (DayOfWeek day : DayOfWeek.values()) {
            if (upper.equals(day.name()) || upper.equals(day.name().substring(0, 3))) {
                return day;
            }
        }
        throw wrong("found \"" + word + "\" for a day, allowed are " + DAYS + ", daily, always, never");
    }

    private Timetable.Line line(Set<DayOfWeek> days, String times) {
        Matcher matcher = TIMES.matcher(times);
        if (!matcher.matches()) {
            throw wrong("found \"" + times + "\" for the times, allowed is HH:MM-HH:MM such as 09:00-15:30");
        }
        int from = minute(matcher.group(1), matcher.group(2));
        int until = minute(matcher.group(3), matcher.group(4));
        if (from == Timetable.MINUTES_PER_DAY || from == until) {
            throw wrong("found \"" + times + "\", the end must differ from the beginning and 24:00 may only be an end");
        }
        return new Timetable.Line(days, from, until);
    }

    private int minute(String hours, String minutes) {
        int minute = Integer.parseInt(hours) * 60 + Integer.parseInt(minutes);
        if (Integer.parseInt(minutes) > 59 || minute > Timetable.MINUTES_PER_DAY) {
            throw wrong("found \"" + hours + ":" + minutes + "\", allowed are times from 00:00 to 24:00");
        }
        return minute;
    }

    private IllegalArgumentException wrong(String what) {
        return new IllegalArgumentException("timetable \"" + text + "\": " + what);
    }
}
