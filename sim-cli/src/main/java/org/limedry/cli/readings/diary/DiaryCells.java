package org.limedry.cli.readings.diary;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.limedry.cli.readings.logger.DateCells;
import org.limedry.lime.HandTest;

/** Reads the cells of one day; remembers every one that says nothing. */
final class DiaryCells {
    private static final Pattern SPELL =
            Pattern.compile("(.*?)\\s*(\\d{1,2}):(\\d{2})\\s*[-\u2013]\\s*(\\d{1,2}):(\\d{2})\\s*(?:\\((.*)\\))?");
    private static final Pattern AMOUNT = Pattern.compile("(?:(\\S.*?)\\s+)?(\\d{1,5}(?:\\.\\d{1,3})?)");
    private static final Pattern COMMA = Pattern.compile("(\\d),(\\d)");
    private static final Pattern MARK =
            Pattern.compile("(.*?)\\s+(?:(\\d{1,2})\\s+)?(dents|nail not knuckle|hard|d|n|h)");
    private static final int DAY_MINUTES = 1440;
    private static final double DAY_HOURS = 24.0;
    private static final Set<String> NONE = Set.of("no", "none", "shut", "off", "0", "-");

    private final Map<Column, String> cells;
    private final DiaryPlaces places;
    private final DateCells dates;
    private final List<String> faults = new ArrayList<>();

    DiaryCells(Map<Column, String> cells, DiaryPlaces places, DateCells dates) {
        this.dates = dates;
        this.cells = new EnumMap<>(cells);
        this.places = places;
    }

    List<String> faults() {
        return faults;
    }

    DiaryDay day(int line) {
        LocalDate date = date();
        DiaryDay.Plant plant = new DiaryDay.Plant(
                hours(Column.HEATER), hours(Column.DEHUMIDIFIER), amounts(Column.LITRES), amounts(Column.GAS));
        DiaryDay.Care care = new DiaryDay.Care(
                items(Column.MISTED, this::time),
                items(Column.HAND_TESTS, this::mark),
                items(Column.WET, this::seen),
                items(Column.COVERS, Optional::of));
        Set<Column> written = EnumSet.noneOf(Column.class);
        Arrays.stream(Column.values()).filter(column -> !cell(column).isEmpty()).forEach(written::add);
        return new DiaryDay(line, date, written, doors(), plant, care, cell(Column.BY), cell(Column.NOTE));
    }

    private String cell(Column column) {
        return cells.getOrDefault(column, "").strip();
    }

    private void fault(Column column, String found, String rule) {
        faults.add(column.heading() + ": \"" + found + "\"; " + rule);
    }

    private LocalDate date() {
        Optional<LocalDate> date = dates.date(cell(Column.DATE));
        if (date.isEmpty()) {
            fault(Column.DATE, cell(Column.DATE), "must be a day such as 2026-11-09");
        }
        return date.orElse(LocalDate.EPOCH);
    }

    private <T> List<T> items(Column column, Function<String, Optional<T>> reader) {
        String cell = cell(column);
        if (cell.isEmpty() || NONE.contains(cell.toLowerCase(Locale.ROOT))) {
            return List.of();
        }
        return Arrays.stream(cell.split(",", -1))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .flatMap(item -> reader.apply(item).stream())
                .toList();
    }

    private List<DoorSpell> doors() {
        List<DoorSpell> spells = items(Column.DOORS, this::spell);
        for (int i = 0; i < spells.size(); i++) {
            for (DoorSpell later : spells.subList(i + 1, spells.size())) {
                if (spells.get(i).overlaps(later)) {
                    fault(Column.DOORS, spells.get(i).words() + ", " + later.words(), "must not overlap");
                }
            }
        }
        return spells;
    }

    private Optional<DoorSpell> spell(String item) {
        Matcher form = SPELL.matcher(item);
        if (!form.matches() || form.group(1).isEmpty()) {
            fault(Column.DOORS, item, "must be such as \"yard door 09:00-12:30 (Pat)\", or shut");
            return Optional.empty();
        }
        int from = minute(form.group(2), form.group(3));
        int until = minute(form.group(4), form.group(5));
        if (from < 0 || until < 0) {
            fault(Column.DOORS, item, "must have times from 00:00 to 24:00");
            return Optional.empty();
        }
        if (until <= from) {
            fault(Column.DOORS, item, "is shut before it is opened; past midnight goes on with 00:00 on the next day");
            return Optional.empty();
        }
        String by = form.group(6) == null ? "" : form.group(6).strip();
        return name(Column.DOORS, form.group(1), places.openings()).map(door -> new DoorSpell(door, from, until, by));
    }

    private static int minute(String hour, String minute) {
        int minutes = Integer.parseInt(hour) * 60 + Integer.parseInt(minute);
        return Integer.parseInt(minute) < 60 && minutes <= DAY_MINUTES ? minutes : -1;
    }

    private Optional<String> name(Column column, String words, List<DiaryPlaces.Name> names) {
        if (names.isEmpty()) {
            return Optional.of(words);
        }
        Optional<String> meant = DiaryPlaces.meant(names, words).map(DiaryPlaces.Name::full);
        if (meant.isEmpty()) {
            fault(column, words, "not on this site; there are: " + String.join(", ", DiaryPlaces.shortest(names)));
        }
        return meant;
    }

    private List<Amount> amounts(Column column) {
        String cell = cell(column);
        if (NONE.contains(cell.toLowerCase(Locale.ROOT))) {
            return List.of(new Amount("", 0.0));
        }
        List<Amount> amounts = items(column, item -> amount(column, item));
        List<String> names = amounts.stream().map(Amount::of).toList();
        if (names.size() > 1 && names.contains("")) {
            fault(column, cell, "must be one number, or name the room of each" + withPoints(cell));
        } else if (Set.copyOf(names).size() < names.size()) {
            fault(column, cell, "must name each room once");
        }
        return amounts;
    }

    /** A decimal comma parts a number in two. */
    private static String withPoints(String cell) {
        String meant = COMMA.matcher(cell).replaceAll("$1.$2");
        boolean numbers = Arrays.stream(meant.split(","))
                .allMatch(item -> AMOUNT.matcher(item.strip()).matches());
        return numbers && !meant.equals(cell) ? "; decimals with a point: " + meant : "";
    }

    private Optional<Amount> amount(Column column, String item) {
        Matcher form = AMOUNT.matcher(item);
        if (!form.matches()) {
            fault(column, item, "must be a number, or a room and a number");
            return Optional.empty();
        }
        String of = form.group(1) == null ? "" : form.group(1);
        boolean known =
                of.isEmpty() || places.rooms().isEmpty() || places.rooms().contains(of);
        if (!known) {
            fault(column, of, "no such room; there are: " + String.join(", ", places.rooms()));
        }
        return known ? Optional.of(new Amount(of, Double.parseDouble(form.group(2)))) : Optional.empty();
    }

    private List<Amount> hours(Column column) {
        List<Amount> hours = amounts(column);
        hours.stream()
                .filter(amount -> amount.value() > DAY_HOURS)
                .forEach(amount -> fault(column, Double.toString(amount.value()), "must be at most 24"));
        return hours;
    }

    private Optional<LocalTime> time(String item) {
        try {
            return Optional.of(LocalTime.parse(item.matches("\\d:\\d{2}") ? "0" + item : item));
        } catch (DateTimeException e) {
            fault(Column.MISTED, item, "must be a time such as 07:30");
            return Optional.empty();
        }
    }

    private Optional<HandMark> mark(String item) {
        Matcher form = MARK.matcher(item.toLowerCase(Locale.ROOT));
        if (!form.matches()) {
            fault(
                    Column.HAND_TESTS,
                    item,
                    "must be such as \"north 1 dents\": wall, coat, then dents, nail not knuckle or hard, or D, N, H");
            return Optional.empty();
        }
        int coat = form.group(2) == null ? 1 : Integer.parseInt(form.group(2));
        if (coat < 1) {
            fault(Column.HAND_TESTS, item, "coats are counted from 1");
            return Optional.empty();
        }
        String wall = item.substring(0, form.group(1).length());
        return name(Column.HAND_TESTS, wall, places.walls())
                .map(known -> new HandMark(known, coat, found(form.group(3))));
    }

    /** The letters are those of the printed form. */
    private static HandTest.Result found(String words) {
        return switch (words.charAt(0)) {
            case 'd' -> HandTest.Result.DENTS;
            case 'n' -> HandTest.Result.NAIL_NOT_KNUCKLE;
            default -> HandTest.Result.HARD;
        };
    }

    private Optional<String> seen(String item) {
        return item.equalsIgnoreCase("yes") ? Optional.of("yes") : name(Column.WET, item, places.walls());
    }
}
