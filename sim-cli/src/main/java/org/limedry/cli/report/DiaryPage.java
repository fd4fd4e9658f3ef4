package org.limedry.cli.report;

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
public final class DiaryPage {
    private static final int MOST_OWN_COLUMNS = 8;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_WITH_YEAR = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private DiaryPage() {}

    /** What the template sees. */
    private record View(String site, String span, List<Head> heads, List<Line> lines, String names) {}

    private record Head(String words, String hint, String width) {}

    private record Line(String day, boolean weekStarts, List<String> cells) {}

    /** Returns the page. */
    public static String of(DiaryPlaces places, LocalDate from) {
        List<Head> heads = heads(places);
        List<String> cells = heads.stream().map(head -> "").toList();
        List<Line> lines = IntStream.range(0, DiaryForm.DAYS)
                .mapToObj(from::plusDays)
                .map(day -> new Line(DAY.format(day), day.getDayOfWeek() == DayOfWeek.MONDAY, cells))
                .toList();
        String span = DAY_WITH_YEAR.format(from) + " to " + DAY_WITH_YEAR.format(from.plusDays(DiaryForm.DAYS - 1L));
        String names = fits(places)
                ? ""
                : "Doors and windows: " + String.join(", ", DiaryPlaces.shortest(places.openings())) + ". Walls: "
                        + String.join(", ", DiaryPlaces.shortest(places.walls())) + ".";
        StringWriter out = new StringWriter();
        new DefaultMustacheFactory("org/limedry/cli/report")
                .compile("diary.mustache")
                .execute(out, new View(places.site(), span, heads, lines, names));
        return out.toString();
    }

    private static boolean fits(DiaryPlaces places) {
        int own = places.openings().size() + places.walls().size();
        return own <= MOST_OWN_COLUMNS
                && !places.openings().isEmpty()
                && !places.walls().isEmpty();
    }

    private static List<Head> heads(DiaryPlaces places) {
        List<Head> heads = new ArrayList<>();
        if (fits(places)) {
            DiaryPlaces.shortest(places.openings())
                    .forEach(door -> heads.add(new Head(door, "open from-to, who shut", "auto")));
        } else {
            heads.add(new Head("doors, windows", "which, open from-to, who shut", "auto"));
        }
        heads.add(new Head("heater", "hours", "15mm"));
        heads.add(new Head("dry-er", "hours", "14mm"));
        heads.add(new Head("water", "litres", "14mm"));
        heads.add(new Head("gas", "kg", "12mm"));
        heads.add(new Head("mist", "times", "17mm"));
        if (fits(places)) {
            DiaryPlaces.shortest(places.walls()).forEach(wall -> heads.add(new Head(wall, "D / N / H", "19mm")));
        } else {
            heads.add(new Head("hand tests", "wall, coat, D / N / H", "60mm"));
        }
        heads.add(new Head("wet", "yes, no", "14mm"));
        heads.add(new Head("cover", "on, off", "14mm"));
        return heads;
    }
}
