package org.limedry.cli.readings.logger;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date as it is written: three numbers whose order may be open.
 *
 * @param first first number
 * @param second second number; the month when {@code settled}
 * @param third third number
 * @param settled whether it stands year, month, day beyond doubt: a year of four digits first, or a month by name
 */
record Day(int first, int second, int third, boolean settled) {
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,4})([-/.])(\\d{1,2})\\2(\\d{1,4})\\.?");
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?[-/. ]+(\\p{L}{3,9})\\.?[-/., ]+(\\d{2}|\\d{4})");
    private static final Pattern MONTH_FIRST =
            Pattern.compile("(\\p{L}{3,9})\\.?[- ]+(\\d{1,2})(?:st|nd|rd|th)?[-, ]+(\\d{2}|\\d{4})");
    private static final List<String> MONTHS = List.of(
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december");
    private static final int CENTURY = 2000;

    /** No reading is older or newer: a year such as 9999 is a spoilt one. */
    private static final int EARLIEST_YEAR = 1800;

    private static final int LATEST_YEAR = 2200;

    static Optional<Day> of(String text) {
        Matcher numbers = NUMBERS.matcher(text);
        if (numbers.matches()) {
            return ofNumbers(numbers);
        }
        Matcher dayFirst = DAY_FIRST.matcher(text);
        if (dayFirst.matches()) {
            return named(dayFirst.group(3), dayFirst.group(2), dayFirst.group(1));
        }
        Matcher monthFirst = MONTH_FIRST.matcher(text);
        return monthFirst.matches()
                ? named(monthFirst.group(3), monthFirst.group(1), monthFirst.group(2))
                : Optional.empty();
    }

    private static Optional<Day> ofNumbers(Matcher form) {
        int firstDigits = form.group(1).length();
        int lastDigits = form.group(4).length();
        boolean yearFirst = firstDigits == 4 && lastDigits <= 2;
        boolean yearLast = firstDigits <= 2 && lastDigits == 4;
        boolean shortYear = firstDigits <= 2 && lastDigits <= 2;
        if (!yearFirst && !yearLast && !shortYear) {
            return Optional.empty();
        }
        return Optional.of(new Day(number(form.group(1)), number(form.group(3)), number(form.group(4)), yearFirst));
    }

    private static Optional<Day> named(String year, String month, String day) {
        String word = month.toLowerCase(Locale.ROOT);
        String known = word.equals("sept") ? "september" : word;
        return MONTHS.stream()
                .filter(name -> name.startsWith(known))
                .findFirst()
                .map(name -> new Day(fullYear(number(year)), MONTHS.indexOf(name) + 1, number(day), true));
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    private static int fullYear(int year) {
        return year < 100 ? CENTURY + year : year;
    }

    /** Returns the number that is the year in this order, two digits filled up. */
    int year(DateOrder order) {
        return fullYear(order == DateOrder.YEAR_MONTH_DAY ? first : third);
    }

    /** Returns the date in this order, if there is such a day. */
    Optional<LocalDate> in(DateOrder order) {
        DateOrder taken = settled ? DateOrder.YEAR_MONTH_DAY : order;
        if (taken == DateOrder.YEAR_MONTH_DAY && third > 31) {
            return Optional.empty();
        }
        return switch (taken) {
            case DAY_MONTH_YEAR -> date(year(taken), second, first);
            case MONTH_DAY_YEAR -> date(year(taken), first, second);
            case YEAR_MONTH_DAY -> date(year(taken), second, third);
        };
    }

    private static Optional<LocalDate> date(int year, int month, int day) {
        if (year < EARLIEST_YEAR || year > LATEST_YEAR) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
