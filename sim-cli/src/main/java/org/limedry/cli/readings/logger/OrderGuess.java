package org.limedry.cli.readings.logger;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the order of day, month and year that all dates of a file allow, or says that it cannot be told. */
sealed interface OrderGuess {
    /** There is one order. */
    record Settled(DateOrder order, String why) implements OrderGuess {}

    /** There is more than one, or none. */
    record Open(String found, String rule) implements OrderGuess {}

    /** A date and the line it stands on. */
    record Dated(int line, Day day) {}

    /** No logger runs longer without being emptied. */
    int MOST_YEARS = 10;

    /** Spoilt dates are listed; a file with more than one in twenty is two files in one. */
    int LEAST_GOOD_TO_SPOILT = 20;

    DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    static OrderGuess of(List<Dated> dates) {
        List<Dated> open =
                dates.stream().filter(dated -> !dated.day().settled()).toList();
        if (open.isEmpty()) {
            return new Settled(DateOrder.YEAR_MONTH_DAY, "each says its month by name, or its year first");
        }
        Map<DateOrder, Long> days = Arrays.stream(DateOrder.values())
                .filter(order -> yearsAreClose(open, order))
                .collect(Collectors.toMap(order -> order, order -> count(open, order)));
        long most = days.values().stream().mapToLong(Long::longValue).max().orElse(0);
        List<DateOrder> best = days.entrySet().stream()
                .filter(entry -> entry.getValue() == most)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        if (best.size() > 1 && most > 0) {
            return ambiguous(open, best);
        }
        if (best.isEmpty() || (open.size() - most) * LEAST_GOOD_TO_SPOILT > open.size()) {
            return new Open(
                    "no order of day, month and year fits the dates, such as \""
                            + text(open.get(0).day()) + "\" on line "
                            + open.get(0).line(),
                    "must be one file of one logger; or say which: " + options());
        }
        return new Settled(best.get(0), why(open, best.get(0)));
    }

    private static String options() {
        return Arrays.stream(DateOrder.values())
                .map(order -> PlanKey.DATE_ORDER.option() + " " + order.word())
                .collect(Collectors.joining(" or "));
    }

    /** Two digits may be a year or a day; what runs over more than ten is no year. A few spoilt dates do not count. */
    private static boolean yearsAreClose(List<Dated> open, DateOrder order) {
        List<Integer> years =
                open.stream().map(dated -> dated.day().year(order)).sorted().toList();
        boolean fourDigits = open.stream().anyMatch(dated -> dated.day().third() > 99);
        if (order == DateOrder.YEAR_MONTH_DAY && fourDigits) {
            return false;
        }
        int tenth = years.size() / 10;
        return years.get(years.size() - 1 - tenth) - years.get(tenth) <= MOST_YEARS;
    }

    private static long count(List<Dated> open, DateOrder order) {
        return open.stream().filter(dated -> dated.day().in(order).isPresent()).count();
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

    private static String why(List<Dated> open, DateOrder order) {
        return open.stream()
                .filter(dated -> Arrays.stream(DateOrder.values())
                        .filter(other -> yearsAreClose(open, other))
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
