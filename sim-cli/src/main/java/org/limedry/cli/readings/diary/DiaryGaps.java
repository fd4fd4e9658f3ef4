package org.limedry.cli.readings.diary;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What a diary does not say and should. */
public final class DiaryGaps {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final int MOST_DAYS = 10;

    private DiaryGaps() {}

    /** Returns each gap in a sentence. */
    public static List<String> of(Diary diary) {
        List<String> gaps = new ArrayList<>();
        List<DiaryDay> days = diary.days();
        for (int i = 1; i < days.size(); i++) {
            LocalDate first = days.get(i - 1).date().plusDays(1);
            LocalDate last = days.get(i).date().minusDays(1);
            if (!first.isAfter(last)) {
                gaps.add("no readable line for "
                        + (first.equals(last) ? DAY.format(first) : DAY.format(first) + " to " + DAY.format(last)));
            }
        }
        add(gaps, "doors not written", days, day -> !day.written().contains(Column.DOORS));
        add(
                gaps,
                "who shut the doors not written",
                days,
                day -> day.doors().stream().anyMatch(spell -> spell.shutBy().isEmpty()));
        add(
                gaps,
                "dehumidifier ran, litres not written",
                days,
                day -> ran(day.plant().dehumidifierHours()) && !day.written().contains(Column.LITRES));
        add(
                gaps,
                "litres emptied, dehumidifier hours not written",
                days,
                day -> ran(day.plant().litres()) && !day.written().contains(Column.DEHUMIDIFIER));
        add(
                gaps,
                "gas burnt, heater hours not written",
                days,
                day -> ran(day.plant().gasKg()) && !day.written().contains(Column.HEATER));
        return gaps;
    }

    private static boolean ran(List<Amount> amounts) {
        return amounts.stream().anyMatch(amount -> amount.value() > 0.0);
    }

    private static void add(List<String> gaps, String what, List<DiaryDay> days, Predicate<DiaryDay> test) {
        List<DiaryDay> found = days.stream().filter(test).toList();
        if (!found.isEmpty()) {
            String some = found.stream()
                    .limit(MOST_DAYS)
                    .map(day -> DAY.format(day.date()))
                    .collect(Collectors.joining(", "));
            String more = found.size() > MOST_DAYS ? " and " + (found.size() - MOST_DAYS) + " more" : "";
            gaps.add(what + ": " + some + more);
        }
    }
}
