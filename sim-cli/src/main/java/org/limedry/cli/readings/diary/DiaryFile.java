package org.limedry.cli.readings.diary;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.CsvCells;
import org.limedry.cli.readings.TextFile;
import org.limedry.cli.readings.logger.DateCells;

/**
 * A diary file: lines that begin with # are remarks, the first other line is the heading, each line below is a day.
 *
 * @param diary the days that can be read
 * @param problems one for each line that cannot; they are left out of the diary
 */
public record DiaryFile(Diary diary, List<InputProblem> problems) {
    private static final long MOST_BYTES = 5_000_000;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    public DiaryFile {
        problems = List.copyOf(problems);
    }

    /** Reads a diary and checks its names against those of a site. */
    public static DiaryFile read(Path file, DiaryPlaces places) {
        return read(file, file.toString(), places);
    }

    /**
     * Reads a diary.
     *
     * @param shown the file as the user named it
     * @param places names that it may use
     */
    public static DiaryFile read(Path file, String shown, DiaryPlaces places) {
        TextFile.Content content = TextFile.readOfAnyEncoding(file, shown, MOST_BYTES);
        if (content instanceof TextFile.Unreadable unreadable) {
            return new DiaryFile(new Diary(List.of()), List.of(unreadable.problem()));
        }
        return parse(((TextFile.Text) content).text(), shown, places);
    }

    static DiaryFile parse(String text, String shown, DiaryPlaces places) {
        return new Reader(shown, places).read(Arrays.asList(text.split("\r\n|\n|\r", -1)));
    }

    /** A line cut into its cells. */
    private record Row(int line, Map<Column, String> cells) {
        String date() {
            return cells.getOrDefault(Column.DATE, "");
        }
    }

    /** The work in progress. */
    private static final class Reader {
        private final String shown;
        private final DiaryPlaces places;
        private final List<InputProblem> problems = new ArrayList<>();
        private final Map<LocalDate, DiaryDay> days = new TreeMap<>();
        private final List<Row> rows = new ArrayList<>();
        private Map<Column, Integer> columns = Map.of();
        private char separator = ';';

        Reader(String shown, DiaryPlaces places) {
            this.shown = shown;
            this.places = places;
        }

        DiaryFile read(List<String> lines) {
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (!columns.isEmpty()) {
                    readCells(i + 1, line);
                } else if (!readHeading(i + 1, line)) {
                    break;
                }
            }
            if (columns.isEmpty() && problems.isEmpty()) {
                problem(0, "there is nothing in it", headingRule());
            }
            readDays();
            problems.sort(Comparator.comparing(InputProblem::line));
            return new DiaryFile(new Diary(List.copyOf(days.values())), problems);
        }

        private boolean readHeading(int number, String line) {
            separator = Stream.of(';', '\t', ',')
                    .filter(sign -> line.indexOf(sign) >= 0)
                    .findFirst()
                    .orElse(';');
            List<String> headings = CsvCells.of(line, separator).orElse(List.of());
            List<String> strangers = headings.stream()
                    .filter(heading -> Column.of(heading).isEmpty())
                    .toList();
            Map<Column, Integer> found = new EnumMap<>(Column.class);
            IntStream.range(0, headings.size())
                    .forEach(i -> Column.of(headings.get(i)).ifPresent(column -> found.put(column, i)));
            if (!strangers.isEmpty() || !found.containsKey(Column.DATE) || found.size() != headings.size()) {
                problem(number, "heading \"" + line + "\"", headingRule());
                return false;
            }
            columns = found;
            return true;
        }

        private static String headingRule() {
            return "must have a heading with date and any of: "
                    + Arrays.stream(Column.values())
                            .skip(1)
                            .map(Column::heading)
                            .collect(Collectors.joining(", "));
        }

        private void readCells(int number, String line) {
            Optional<List<String>> cells = CsvCells.of(line, separator);
            if (cells.isEmpty() || cells.get().size() > columns.size()) {
                problem(
                        number,
                        cells.map(all -> all.size() + " cells").orElse("quotation marks that do not pair"),
                        "must have " + columns.size() + " cells");
                return;
            }
            Map<Column, String> byColumn = new EnumMap<>(Column.class);
            columns.forEach((column, index) -> byColumn.put(
                    column, index < cells.get().size() ? cells.get().get(index).strip() : ""));
            rows.add(new Row(number, byColumn));
        }

        /** The order of day and month is that of the whole file. */
        private void readDays() {
            DateCells dates = DateCells.of(rows.stream().map(Row::date).toList());
            List<Row> open = rows.stream()
                    .filter(row -> dates.perhaps(row.date()).isPresent())
                    .toList();
            rows.stream().filter(row -> !open.contains(row)).forEach(row -> readDay(row, dates));
            open.stream().findFirst().ifPresent(first -> {
                LocalDate perhaps = dates.perhaps(first.date()).orElseThrow();
                problem(
                        first.line(),
                        "date: \"" + first.date() + "\", and this file does not say which number is the month",
                        "must have the year first, such as " + perhaps + " if " + DAY.format(perhaps) + " is meant; "
                                + (open.size() == 1 ? "the day is" : open.size() + " such days are") + " left out");
            });
        }

        private void readDay(Row row, DateCells dates) {
            DiaryCells reader = new DiaryCells(row.cells(), places, dates);
            DiaryDay day = reader.day(row.line());
            if (!reader.faults().isEmpty()) {
                problem(row.line(), String.join("; ", reader.faults()), "the day is left out");
            } else if (days.containsKey(day.date())) {
                problem(row.line(), day.date() + " again", "must be there once; the first is kept");
            } else {
                days.put(day.date(), day);
            }
        }

        private void problem(int line, String found, String rule) {
            problems.add(new InputProblem(shown, line, "", rule, found));
        }
    }
}
