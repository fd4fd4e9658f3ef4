package org.limedry.cli.seasons;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.page.Days;

/**
 * The days on which the job of a site is begun: always its own day of the week, so that doors, gangs and days off keep
 * theirs.
 */
final class Starts {
    /** Weather is moved by a year at most. */
    static final int MOST_MOVED_DAYS = 364;

    private static final double DAYS_PER_WEEK = 7.0;

    private final LocalDate first;

    /** Makes the starts for a job that the site file begins on a day. */
    Starts(LocalDate first) {
        this.first = first;
    }

    /** Returns the day on which the site file begins the job. */
    LocalDate first() {
        return first;
    }

    /** Tells whether the weather may be moved as far as a day. */
    boolean isWithinAYear(LocalDate day) {
        return Math.abs(movedDays(day)) <= MOST_MOVED_DAYS;
    }

    /** Returns the first day of each month that is a day of the job's, from its own month on, January first. */
    List<Start> months() {
        return IntStream.range(0, 12)
                .mapToObj(YearMonth.from(first)::plusMonths)
                .map(month -> month.atDay(1).with(TemporalAdjusters.firstInMonth(first.getDayOfWeek())))
                .sorted(Comparator.comparing(LocalDate::getMonthValue))
                .map(this::inMonth)
                .toList();
    }

    private Start inMonth(LocalDate day) {
        String name = day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        String full = day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        return new Start(day, movedDays(day), name, name.substring(0, 1), "in " + full);
    }

    /** Returns the start nearest to each day, in the order of the calendar, no start twice. */
    List<Start> near(List<LocalDate> days) {
        TreeMap<Integer, Start> starts = new TreeMap<>();
        days.forEach(day -> starts.put(movedDays(day), near(day)));
        return List.copyOf(starts.values());
    }

    /** Returns the start nearest to a day. */
    Start near(LocalDate day) {
        LocalDate taken = first.plusDays(movedDays(day));
        String name = DateWords.shortDay(taken);
        return new Start(taken, movedDays(day), name, name, "on " + Days.full(taken));
    }

    /**
     * Returns the starts to run: those asked for, or one in each month; a start to be compared takes the place of that of its
     * month.
     */
    List<Start> all(List<LocalDate> asked, List<LocalDate> compared) {
        if (!asked.isEmpty()) {
            List<LocalDate> days = new ArrayList<>(asked);
            days.addAll(compared);
            return near(days);
        }
        List<Start> starts = new ArrayList<>(months());
        Set<Integer> replaced = new HashSet<>();
        for (LocalDate day : compared) {
            Start start = near(day);
            int month = start.day().getMonthValue() - 1;
            if (starts.stream().anyMatch(other -> other.movedDays() == start.movedDays())) {
                continue;
            }
            if (replaced.add(month)) {
                starts.set(month, start);
            } else {
                starts.add(start);
            }
        }
        return starts;
    }

    private int movedDays(LocalDate day) {
        return (int) (Math.round(ChronoUnit.DAYS.between(first, day) / DAYS_PER_WEEK) * (long) DAYS_PER_WEEK);
    }
}
