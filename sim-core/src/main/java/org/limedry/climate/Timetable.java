package org.limedry.climate;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * When something is on, by the clock on the wall: days of the week and times of day, within two dates.
 *
 * <p>Written as {@code Mon-Fri 09:00-15:30}, {@code daily 07:00-19:00}, {@code Sat}, {@code always} or {@code never};
 * several days or times are set apart by commas, several lines by semicolons. A time that ends before it begins runs past
 * midnight and belongs to the day on which it begins.
 *
 * @param lines what is on, any of them
 * @param first first day on which it counts
 * @param last last day on which it counts, not before {@code first}
 */
public record Timetable(List<Line> lines, LocalDate first, LocalDate last) {
    static final int MINUTES_PER_DAY = 24 * 60;

    /**
     * One line: the same times on certain days.
     *
     * @param days the days; not empty
     * @param fromMinute minute of the day at which it begins; in [0, 1439]
     * @param untilMinute minute of the day at which it ends; in [0, 1440]; not after {@code fromMinute} means the next day
     */
    public record Line(Set<DayOfWeek> days, int fromMinute, int untilMinute) {
        public Line {
            days = Set.copyOf(days);
            if (days.isEmpty()) {
                throw new IllegalArgumentException("days: must be at least one, was none");
            }
            if (fromMinute < 0 || fromMinute >= MINUTES_PER_DAY || untilMinute < 0 || untilMinute > MINUTES_PER_DAY) {
                throw new IllegalArgumentException(
                        "time: must be from 0:00 to 24:00, was minutes " + fromMinute + " to " + untilMinute);
            }
        }

        private boolean pastMidnight() {
            return untilMinute <= fromMinute;
        }
    }

    public Timetable {
        lines = List.copyOf(lines);
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("until: must not be before " + first + ", was " + last);
        }
    }

    /**
     * Reads a timetable.
     *
     * @param text as a plasterer writes it
     * @throws IllegalArgumentException with one line that says what was found and what is allowed
     */
    public static Timetable parse(String text) {
        return new Timetable(TimetableWords.lines(text), LocalDate.MIN, LocalDate.MAX);
    }

    /** Returns the timetable of something that is always on. */
    public static Timetable always() {
        return new Timetable(
                List.of(new Line(EnumSet.allOf(DayOfWeek.class), 0, MINUTES_PER_DAY)), LocalDate.MIN, LocalDate.MAX);
    }

    /** Returns the same timetable from a day on. */
    public Timetable from(LocalDate day) {
        return new Timetable(lines, day, last);
    }

    /** Returns the same timetable up to and with a day. */
    public Timetable until(LocalDate day) {
        return new Timetable(lines, first, day);
    }

    /**
     * Returns the spans over a run.
     *
     * <p>A time that the clock skips in spring is the moment of the change; a time that comes twice in autumn is the
     * earlier one.
     *
     * @param zone time zone of the site
     * @param from start of the run
     * @param until end of the run, later than {@code from}
     */
    public Schedule over(ZoneId zone, Instant from, Instant until) {
        List<Schedule.Span> spans = new ArrayList<>();
        LocalDate day = latest(from.atZone(zone).toLocalDate().minusDays(1), first);
        LocalDate end = until.atZone(zone).toLocalDate();
        for (; !day.isAfter(end) && !day.isAfter(last); day = day.plusDays(1)) {
            for (Line line : lines) {
                if (line.days().contains(day.getDayOfWeek())) {
                    addClipped(spans, spanOf(line, day, zone), from, until);
                }
            }
        }
        return new Schedule(spans);
    }

    private record Ends(Instant from, Instant until) {}

    private static Ends spanOf(Line line, LocalDate day, ZoneId zone) {
        LocalDate endDay = line.pastMidnight() ? day.plusDays(1) : day;
        return new Ends(
                instant(day.atStartOfDay().plusMinutes(line.fromMinute()), zone),
                instant(endDay.atStartOfDay().plusMinutes(line.untilMinute()), zone));
    }

    private static void addClipped(List<Schedule.Span> spans, Ends ends, Instant from, Instant until) {
        Instant start = ends.from().isBefore(from) ? from : ends.from();
        Instant end = ends.until().isAfter(until) ? until : ends.until();
        if (start.isBefore(end)) {
            spans.add(new Schedule.Span(start, end));
        }
    }

    private static Instant instant(LocalDateTime clock, ZoneId zone) {
        ZoneOffsetTransition change = zone.getRules().getTransition(clock);
        if (change != null && change.isGap()) {
            return change.getInstant();
        }
        return clock.atZone(zone).toInstant();
    }

    private static LocalDate latest(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
