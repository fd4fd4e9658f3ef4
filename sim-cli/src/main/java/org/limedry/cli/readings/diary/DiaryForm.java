package org.limedry.cli.readings.diary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The blank form as a text file: save it and fill it in. */
public final class DiaryForm {
    /** Four weeks go on a page. */
    public static final int DAYS = 28;

    private DiaryForm() {}

    /** Returns its lines. */
    public static List<String> lines(DiaryPlaces places, LocalDate from) {
        List<String> lines = new ArrayList<>();
        lines.add("# Site diary" + (places.site().isEmpty() ? "" : ": " + places.site()));
        lines.add("# One line a day, on the day. Blank means not written down; write 0, no or shut for none.");
        lines.add("# Several in one cell with commas between them; decimals with a point. For example:");
        lines.add("#   doors open: " + door(places) + " 09:00-12:30 (who shut it)");
        lines.add("#   heater and dehumidifier hours, litres, gas: " + amounts(places));
        lines.add("#   misted at: 07:30, 19:00    covers: on    running wet: no, yes, or the walls");
        lines.add("#   hand tests: " + wall(places)
                + " 1 dents (wall, coat; dents, nail not knuckle or hard, or D, N, H)");
        addNames(lines, "doors and windows", DiaryPlaces.shortest(places.openings()));
        addNames(lines, "walls", DiaryPlaces.shortest(places.walls()));
        addNames(lines, "rooms", places.rooms());
        lines.add(Arrays.stream(Column.values()).map(Column::heading).collect(Collectors.joining(";")));
        for (int day = 0; day < DAYS; day++) {
            lines.add(from.plusDays(day) + ";".repeat(Column.values().length - 1));
        }
        return lines;
    }

    private static void addNames(List<String> lines, String what, List<String> names) {
        if (!names.isEmpty()) {
            lines.add("# " + what + ": " + String.join(", ", names));
        }
    }

    private static String door(DiaryPlaces places) {
        List<String> names = DiaryPlaces.shortest(places.openings());
        return names.isEmpty() ? "yard door" : names.get(0);
    }

    private static String wall(DiaryPlaces places) {
        List<String> names = DiaryPlaces.shortest(places.walls());
        return names.isEmpty() ? "north" : names.get(0);
    }

    private static String amounts(DiaryPlaces places) {
        return places.rooms().size() < 2
                ? "4.5"
                : places.rooms().get(0) + " 4.5, " + places.rooms().get(1) + " 0";
    }
}
