package org.limedry.cli.readings.logger;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the dates of a file that people or spreadsheets wrote, in the one order that all of them allow; years in full. */
public final class DateCells {
    private static final Pattern FULL_YEAR = Pattern.compile("(?<!\\d)\\d{4}(?!\\d)");

    private static final List<DateOrder> EITHER = List.of(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR);

    private final Optional<DateOrder> order;

    private DateCells(Optional<DateOrder> order) {
        this.order = order;
    }

    /** Finds the order from all cells of a file: that in which one is a day that it is not in the other, if all such agree. */
    public static DateCells of(List<String> cells) {
        List<Day> open = cells.stream()
                .flatMap(cell -> day(cell).stream())
                .filter(day -> !day.settled())
                .toList();
        boolean dayFirst = open.stream().anyMatch(day -> onlyIn(day, DateOrder.DAY_MONTH_YEAR));
        boolean monthFirst = open.stream().anyMatch(day -> onlyIn(day, DateOrder.MONTH_DAY_YEAR));
        return new DateCells(
                dayFirst == monthFirst
                        ? Optional.empty()
                        : Optional.of(dayFirst ? DateOrder.DAY_MONTH_YEAR : DateOrder.MONTH_DAY_YEAR));
    }

    /** Tells whether a date with its year last is a day in one order and none in the other. */
    private static boolean onlyIn(Day day, DateOrder order) {
        return EITHER.stream().allMatch(other -> day.in(other).isPresent() == (other == order));
    }

    /** Returns the date, if there is such a day and it can be told which of its numbers is the month. */
    public Optional<LocalDate> date(String cell) {
        try {
            return Optional.of(LocalDate.parse(cell));
        } catch (DateTimeException e) {
            return day(cell).flatMap(day -> day.settled() ? day.in(DateOrder.YEAR_MONTH_DAY) : order.flatMap(day::in));
        }
    }

    /** Returns what a date may mean where that cannot be told, the day first; empty if it can, or if it is none. */
    public Optional<LocalDate> perhaps(String cell) {
        if (order.isPresent() || date(cell).isPresent()) {
            return Optional.empty();
        }
        return day(cell)
                .flatMap(day -> EITHER.stream()
                        .flatMap(either -> day.in(either).stream())
                        .findFirst());
    }

    private static Optional<Day> day(String cell) {
        return Optional.of(cell).filter(text -> FULL_YEAR.matcher(text).find()).flatMap(Day::of);
    }
}
