package org.limedry.cli.readings.logger;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds the order of day, month and year that all dates of a file allow, or says that it cannot be told. */
sealed interface OrderGuess {
    /** There is one order. */
    record Settled(DateOrder order, String why) implements OrderGuess {}

    /** There is more than one, or none. */
    record Open(String found, String rule) implements OrderGuess {}

    /** A date, the first line it stands on, and on how many. */
    record Dated(int line, Day day, int lines) {
        Dated onceMore() {
            return new Dated(line, day, lines + 1);
        }
    }

    /** No logger runs longer without being emptied. */
    int MOST_YEARS = 10;

    /** Spoilt dates are listed; a file with more than one in twenty is two files in one. */
    int LEAST_GOOD_TO_SPOILT = 20;

    DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    static OrderGuess of(Collection<Dated> dates) {
        List<Dated> open =
                dates.stream().filter(dated -> !dated.day().settled()).toList();
        if (open.isEmpty()) {
            return new Settled(DateOrder.YEAR_MONTH_DAY, "each says its month by name, or its year first");
        }
        List<DateOrder> close = Arrays.stream(DateOrder.values())
                .filter(order -> yearsAreClose(open, order))
                .toList();
        Map<DateOrder, Long> days =
                close.stream().collect(Collectors.toMap(order -> order, order -> count(open, order)));
        long most = days.values().stream().mapToLong(Long::longValue).max().orElse(0);
        List<DateOrder> best = days.entrySet().stream()
                .filter(entry -> entry.getValue() == most)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        if (best.size() > 1 && most > 0) {
            return ambiguous(open, best);
        }
        long all = lines(open);
        if (best.isEmpty() || (all - most) * LEAST_GOOD_TO_SPOILT > all) {
            return new Open(
                    "no order of day, month and year fits the dates, such as \""
                            + text(open.get(0).day()) + "\" on line "
                            + open.get(0).line(),
                    "must be one file of one logger; or say which: " + options());
        }
        return new Settled(best.get(0), why(open, best.get(0), close));
    }

    private static String options() {
        return Arrays.stream(DateOrder.values())
                .map(order -> PlanKey.DATE_ORDER.option() + " " + order.word())
                .collect(Collectors.joining(" or "));
    }

    /** Two digits may be a year or a day; what runs over more than ten is no year. A few spoilt dates do not count. */
    private static boolean yearsAreClose(List<Dated> open, DateOrder order) {
        boolean fourDigits = open.stream().anyMatch(dated -> dated.day().third() > 99);
        if (order == DateOrder.YEAR_MONTH_DAY && fourDigits) {
            return false;
        }
        SortedMap<Integer, Integer> linesByYear = open.stream()
                .collect(Collectors.toMap(dated -> dated.day().year(order), Dated::lines, Integer::sum, TreeMap::new));
        long all = lines(open);
        long tenth = all / 10;
        return yearAt(linesByYear, all - 1 - tenth) - yearAt(linesByYear, tenth) <= MOST_YEARS;
    }

    /** Returns the year on which a line falls when they are sorted by year. */
    private static int yearAt(SortedMap<Integer, Integer> linesByYear, long place) {
        long passed = 0;
        for (Map.Entry<Integer, Integer> year : linesByYear.entrySet()) {
            passed += year.getValue();
            if (place < passed) {
                return year.getKey();
            }
        }
        return linesByYear.lastKey();
    }

    private static long lines(List<Dated> open) {
        return open.stream().mapToLong(Dated::lines).sum();
    }

    private static long count(List<Dated> open, DateOrder order) {
        return open.stream()
                .filter(dated -> dated.day().in(order).isPresent())
                .mapToLong(Dated::lines)
                .sum();
    }

    private static OrderGuess ambiguous(List<Dated> open, List<DateOrder> orders) {
        Dated first = open.get(0);
        String readings = orders.stream()
                .map(order -> PlanKey.DATE_ORDER.option() + " " + order.word() + " makes it " + span(open, order))
                .collect(Collectors.joining(", "));
        return new Open(
                "\"" + text(first.day()) + "\" on line " + first.line() + " can be read in more than one way",
                "say which: " + readings);
    }

    private static String span(List<Dated> open, DateOrder order) {
        List<LocalDate> days =
                open.stream().flatMap(dated -> dated.day().in(order).stream()).toList();
        LocalDate from = days.stream().min(Comparator.naturalOrder()).orElseThrow();
        LocalDate until = days.stream().max(Comparator.naturalOrder()).orElseThrow();
        return from.equals(until) ? SHORT.format(from) : SHORT.format(from) + " to " + SHORT.format(until);
    }

    private static String why(List<Dated> open, DateOrder order, List<DateOrder> close) {
        return open.stream()
                .filter(dated -> close.stream()
                        .noneMatch(
                                other -> other != order && dated.day().in(other).isPresent()))
                .filter(dated -> dated.day().in(order).isPresent())
                .findFirst()
                .map(dated -> "line " + dated.line() + " has " + text(dated.day()))
                .orElse("the only order in which all are days");
    }

    private static String text(Day day) {
        return String.format(Locale.ROOT, "%02d/%02d/%02d", day.first(), day.second(), day.third());
    }
}
