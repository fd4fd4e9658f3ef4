package org.limedry.cli.diary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.readings.diary.Amount;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.cli.readings.diary.DiaryGaps;
import org.limedry.cli.readings.diary.DoorSpell;
import org.limedry.cli.readings.diary.HandMark;

/** A checked diary told on the console: its gaps, then what it comes to. */
final class DiaryWords {
    private DiaryWords() {}

    static List<String> of(Diary diary) {
        List<String> lines = new ArrayList<>();
        List<DiaryDay> days = diary.days();
        if (days.isEmpty()) {
            return List.of("No day can be read.");
        }
        lines.add(say(
                "%d days, %s to %s",
                days.size(),
                DateWords.longDayWithYear(days.get(0).date()),
                DateWords.longDayWithYear(days.get(days.size() - 1).date())));
        List<String> gaps = DiaryGaps.of(diary);
        lines.add(gaps.isEmpty() ? "No gaps" : "Gaps");
        gaps.forEach(gap -> lines.add("  " + gap));
        lines.add("Together");
        doors(days).forEach((door, hours) -> lines.add(say("  %-28s %8.1f h open", door, hours)));
        lines.add(total("heaters", days, day -> day.plant().heaterHours(), "h"));
        lines.add(total("dehumidifiers", days, day -> day.plant().dehumidifierHours(), "h"));
        lines.add(total("water emptied", days, day -> day.plant().litres(), "litres"));
        lines.add(total("gas burnt", days, day -> day.plant().gasKg(), "kg"));
        lines.add(say(
                "  %-28s %8d times",
                "misted",
                days.stream().mapToInt(day -> day.care().misted().size()).sum()));
        lines.add(say(
                "  %-28s %8d days",
                "walls ran wet",
                days.stream().filter(day -> !day.care().runningWet().isEmpty()).count()));
        addHandTests(lines, days);
        return lines;
    }

    private static Map<String, Double> doors(List<DiaryDay> days) {
        return days.stream()
                .flatMap(day -> day.doors().stream())
                .collect(Collectors.groupingBy(
                        DoorSpell::opening, TreeMap::new, Collectors.summingDouble(DoorSpell::hours)));
    }

    private static String total(String name, List<DiaryDay> days, Function<DiaryDay, List<Amount>> of, String unit) {
        double sum = days.stream()
                .flatMap(day -> of.apply(day).stream())
                .mapToDouble(Amount::value)
                .sum();
        return say("  %-28s %8.1f %s", name, sum, unit);
    }

    private static void addHandTests(List<String> lines, List<DiaryDay> days) {
        for (DiaryDay day : days) {
            for (HandMark mark : day.care().handTests()) {
                lines.add(say(
                        "  hand test %s: %s, coat %d: %s",
                        DateWords.shortDay(day.date()),
                        mark.wall(),
                        mark.coat(),
                        mark.result().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
            }
        }
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
