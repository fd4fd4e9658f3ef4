package org.limedry.cli.readings.logger;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.cli.problem.InputProblem;

/** What the user said, turned into what it means; whatever means nothing becomes a problem. */
final class Questions {
    private static final String PLUS = " + ";
    private static final String BETWEEN_COLUMNS = Pattern.quote(PLUS);

    private final String shown;
    private final Asked asked;
    private final List<InputProblem> problems = new ArrayList<>();

    Questions(String shown, Asked asked) {
        this.shown = shown;
        this.asked = asked;
    }

    List<InputProblem> problems() {
        return problems;
    }

    boolean isAsked(PlanKey key) {
        return asked.word(key).isPresent();
    }

    /** Reports what only the user can answer. */
    void open(PlanKey key, String found, String rule) {
        problems.add(new InputProblem(shown, 0, key.word(), rule, found));
    }

    /** Reports that what was said for a key cannot be. */
    void refuse(PlanKey key, String rule) {
        asked.word(key).ifPresent(word -> wrong(key, word, rule));
    }

    private void wrong(PlanKey key, Asked.Word word, String rule) {
        problems.add(new InputProblem(word.file(), word.line(), key.word(), rule, "\"" + word.text() + "\""));
    }

    /** Returns the value that was named, if one was. */
    <T> Optional<T> oneOf(PlanKey key, T[] values, Function<T, String> wordOf) {
        Optional<Asked.Word> word = asked.word(key);
        Optional<T> value = word.flatMap(said -> Arrays.stream(values)
                .filter(candidate ->
                        wordOf.apply(candidate).equalsIgnoreCase(said.text().strip()))
                .findFirst());
        if (word.isPresent() && value.isEmpty()) {
            String all = Arrays.stream(values).map(wordOf).collect(Collectors.joining(", "));
            wrong(key, word.get(), "must be one of: " + all);
        }
        return value;
    }

    Optional<Integer> line(PlanKey key, int last) {
        Optional<Asked.Word> word = asked.word(key);
        Optional<Integer> line = word.map(Asked.Word::text)
                .filter(text -> text.matches("\\d{1,6}"))
                .map(Integer::parseInt)
                .filter(number -> number <= last);
        if (word.isPresent() && line.isEmpty()) {
            wrong(key, word.get(), "must be a line of the file, or 0 for no headings");
        }
        return line;
    }

    /** Returns what is to be added to each figure; 0 if nothing was said. */
    double offset(PlanKey key, double most) {
        Optional<Asked.Word> word = asked.word(key);
        Optional<Double> offset = word.flatMap(said -> Figure.of(said.text().strip()))
                .filter(figure -> figure.fits(DecimalMark.POINT) && Math.abs(figure.value()) <= most)
                .map(Figure::value);
        if (word.isPresent() && offset.isEmpty()) {
            wrong(key, word.get(), "must be a number of at most " + Math.round(most) + ", up or down");
        }
        return offset.orElse(0.0);
    }

    Optional<ZoneId> zone() {
        Optional<Asked.Word> word = asked.word(PlanKey.ZONE);
        try {
            return word.map(said -> ZoneId.of(said.text().strip()));
        } catch (DateTimeException e) {
            wrong(PlanKey.ZONE, word.orElseThrow(), "must be a time zone by its place, such as Europe/Dublin, or UTC");
            return Optional.empty();
        }
    }

    /** Returns the column that was named, by its number or its heading; of date and time perhaps several. */
    Optional<List<Integer>> columns(Role role, Sheet sheet) {
        return asked.word(role.key()).flatMap(word -> {
            String text = word.text().strip();
            Optional<List<Integer>> one = column(text, sheet).map(List::of);
            Optional<List<Integer>> columns = one.isEmpty() && role.mayTakeSeveral() ? several(text, sheet) : one;
            if (columns.isEmpty()) {
                wrong(role.key(), word, columnRule(sheet));
            }
            return columns;
        });
    }

    private static Optional<List<Integer>> several(String text, Sheet sheet) {
        List<Integer> columns = Arrays.stream(text.split(BETWEEN_COLUMNS, -1))
                .flatMap(name -> column(name.strip(), sheet).stream())
                .toList();
        return columns.size() == text.split(BETWEEN_COLUMNS, -1).length ? Optional.of(columns) : Optional.empty();
    }

    /** Returns which lines count. */
    ReadingPlan.Only only(Sheet sheet) {
        Optional<Asked.Word> word = asked.word(PlanKey.ONLY);
        if (word.isEmpty()) {
            return ReadingPlan.Only.all();
        }
        String text = word.get().text();
        int equals = text.indexOf('=');
        Optional<Integer> column =
                equals < 1 ? Optional.empty() : column(text.substring(0, equals).strip(), sheet);
        if (column.isEmpty()) {
            wrong(PlanKey.ONLY, word.get(), "must be COLUMN=TEXT; " + columnRule(sheet));
            return ReadingPlan.Only.all();
        }
        return new ReadingPlan.Only(
                column.get(),
                name(sheet, column.get()),
                text.substring(equals + 1).strip());
    }

    private static Optional<Integer> column(String word, Sheet sheet) {
        List<Integer> same = matching(sheet, heading -> heading.equalsIgnoreCase(word));
        if (same.size() == 1) {
            return Optional.of(same.get(0));
        }
        if (word.matches("\\d{1,4}")) {
            int number = Integer.parseInt(word);
            return number >= 1 && number <= sheet.columns() ? Optional.of(number - 1) : Optional.empty();
        }
        return Optional.empty();
    }

    private static List<Integer> matching(Sheet sheet, Function<String, Boolean> test) {
        return IntStream.range(0, sheet.headings().size())
                .boxed()
                .filter(i -> test.apply(sheet.headings().get(i)))
                .toList();
    }

    static String columnRule(Sheet sheet) {
        return "the columns are: "
                + sheet.allColumns().stream()
                        .map(column -> sheet.words(column).replace("column ", "")
                                + (sheet.heading(column).isEmpty() ? example(sheet, column) : ""))
                        .collect(Collectors.joining(", "));
    }

    private static String example(Sheet sheet, int column) {
        return " (such as " + sheet.readings().get(0).cell(column) + ")";
    }

    /** Returns what a plan can call columns: what each is called, with a plus between them. */
    static String name(Sheet sheet, List<Integer> columns) {
        return columns.stream().map(column -> name(sheet, column)).collect(Collectors.joining(PLUS));
    }

    /** Returns what a plan can call a column: its heading, or its number if that is not enough. */
    static String name(Sheet sheet, int column) {
        String heading = sheet.heading(column);
        boolean alone = matching(sheet, heading::equalsIgnoreCase).size() == 1;
        boolean clear = alone && !heading.isBlank() && !heading.matches("\\d+") && heading.indexOf('=') < 0;
        return clear ? heading : Integer.toString(column + 1);
    }
}
