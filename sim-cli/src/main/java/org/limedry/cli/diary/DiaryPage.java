package org.limedry.cli.diary;

import com.github.mustachejava.DefaultMustacheFactory;
import java.io.StringWriter;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.limedry.cli.readings.diary.DiaryForm;
import org.limedry.cli.readings.diary.DiaryPlaces;

/** The blank diary to print: four weeks on one A4 page, a column for each door and wall where they fit. */
final class DiaryPage {
    private static final int MOST_OWN_COLUMNS = 4;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_WITH_YEAR = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private DiaryPage() {}

    /** What the template sees. */
    private record View(String site, String span, List<Head> heads, List<Line> lines, String names) {}

    private record Head(String words, String hint, String width) {}

    private record Line(String day, boolean weekStarts, List<String> cells) {}

    /** Returns the page. */
    static String of(DiaryPlaces places, LocalDate from) {
        List<Head> heads = heads(places);
        List<String> cells = heads.stream().map(head -> "").toList();
        List<Line> lines = IntStream.range(0, DiaryForm.DAYS)
                .mapToObj(from::plusDays)
                .map(day -> new Line(DAY.format(day), day.getDayOfWeek() == DayOfWeek.MONDAY, cells))
                .toList();
        String span = DAY_WITH_YEAR.format(from) + " to " + DAY_WITH_YEAR.format(from.plusDays(DiaryForm.DAYS - 1L));
        String names = named("Doors and windows", places.openings()) + named("Walls", places.walls());
        StringWriter out = new StringWriter();
        new DefaultMustacheFactory("org/limedry/cli/diary")
                .compile("diary.mustache")
                .execute(out, new View(places.site(), span, heads, lines, names));
        return out.toString();
    }

    /** Few enough have a column each. */
    private static boolean fit(List<DiaryPlaces.Name> names) {
        return !names.isEmpty() && names.size() <= MOST_OWN_COLUMNS;
    }

    /** Names that have no column of their own stand over the table. */
    private static String named(String what, List<DiaryPlaces.Name> names) {
        return fit(names) || names.isEmpty()
                ? ""
                : " " + what + ": " + String.join(", ", DiaryPlaces.shortest(names)) + ".";
    }

    private static List<Head> heads(DiaryPlaces places) {
        List<Head> heads = new ArrayList<>();
        if (fit(places.openings())) {
            DiaryPlaces.shortest(places.openings()).forEach(door -> heads.add(new Head(door, "from-to, who", "auto")));
        } else {
            heads.add(new Head("doors, windows", "which, open from-to, who shut", "auto"));
        }
        heads.add(new Head("heater", "hours", "14mm"));
        heads.add(new Head("dryer", "hours", "12mm"));
        heads.add(new Head("water", "litres", "13mm"));
        heads.add(new Head("gas", "kg", "10mm"));
        heads.add(new Head("misted", "at", "17mm"));
        if (fit(places.walls())) {
            DiaryPlaces.shortest(places.walls()).forEach(wall -> heads.add(new Head(wall, "D N H", "17mm")));
        } else {
            heads.add(new Head("hand tests", "wall, coat, D N H", "50mm"));
        }
        heads.add(new Head("wet", "yes, no", "9mm"));
        heads.add(new Head("cover", "on, off", "12mm"));
        return heads;
    }
}
