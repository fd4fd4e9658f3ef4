package org.limedry.cli.readings.logger;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Finds which column is what: as the user says, else by its heading, else by what stands in it. */
final class ColumnFinder {
    /** Among numbers without headings, humidities are those above the warmest air. */
    private static final double WARMEST_CELSIUS = 35.0;

    /** From here on a column may as well be humidities in percent, or Fahrenheit. Judgement, no source. */
    private static final double SURELY_CELSIUS = 28.0;

    private final Sheet sheet;
    private final Questions questions;
    private final Map<Role, List<Integer>> columns = new EnumMap<>(Role.class);

    private ColumnFinder(Sheet sheet, Questions questions) {
        this.sheet = sheet;
        this.questions = questions;
    }

    static Places find(Sheet sheet, Questions questions) {
        ColumnFinder finder = new ColumnFinder(sheet, questions);
        for (Role role : Role.values()) {
            questions.columns(role, sheet).ifPresent(taken -> finder.take(role, taken));
        }
        finder.findTime();
        finder.findMeasured();
        Role.MEASURED.forEach(finder::checkHeading);
        return new Places(finder.columns);
    }

    private void take(Role role, List<Integer> taken) {
        Optional<Role> before = columns.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(taken::contains))
                .map(Map.Entry::getKey)
                .findFirst();
        if (before.isPresent()) {
            String words = before.get().words();
            questions.refuse(role.key(), "must be a column of its own, not that of the " + words + " too");
        } else {
            columns.put(role, taken);
        }
    }

    /** Returns the column of a role that is there, or the first of several. */
    private int only(Role role) {
        return columns.getOrDefault(role, List.of(0)).get(0);
    }

    private boolean isTaken(int column) {
        return columns.values().stream().anyMatch(taken -> taken.contains(column));
    }

    /** What was told is not believed where its heading says another thing, and nobody told which column that is. */
    private void checkHeading(Role role) {
        if (!questions.isAsked(role.key()) || !columns.containsKey(role)) {
            return;
        }
        String heading = sheet.heading(only(role));
        Role.MEASURED.stream()
                .filter(other -> !other.isLike(role) && other.isNamedBy(heading) && !role.isNamedBy(heading))
                .filter(other -> !columns.containsKey(other) && !questions.isAsked(other.key()))
                .findFirst()
                .ifPresent(other -> questions.refuse(
                        role.key(),
                        "is by its heading the " + other.words() + "; if not, say which that is with "
                                + other.key().option() + " COLUMN; " + Questions.columnRule(sheet)));
    }

    private void findTime() {
        if (columns.containsKey(Role.TIME)) {
            if (!isStamp(only(Role.TIME))) {
                findDate();
            }
            return;
        }
        if (questions.isAsked(PlanKey.TIME)) {
            return;
        }
        List<Integer> stamps = having(this::isStamp);
        if (stamps.isEmpty() && takeDateParts()) {
            return;
        }
        if (stamps.size() == 1 && !columns.containsKey(Role.DATE)) {
            columns.put(Role.TIME, List.of(stamps.get(0)));
            return;
        }
        List<Integer> hours = having(column -> sheet.isMostly(
                column,
                cell -> cell.indexOf(':') > 0
                        && Hour.of(Stamp.Parts.of("", cell).time()).isPresent()));
        pick(Role.TIME, stamps.isEmpty() ? hours : stamps, "no column with times");
        findDate();
    }

    private boolean takeDateParts() {
        Optional<DateParts> parts = DateParts.of(sheet.headings())
                .filter(found -> !columns.containsKey(Role.DATE) && !questions.isAsked(PlanKey.DATE))
                .filter(found -> !found.time().isEmpty());
        parts.ifPresent(found -> {
            columns.put(Role.DATE, found.date());
            columns.put(Role.TIME, found.time());
        });
        return parts.isPresent();
    }

    private void findDate() {
        boolean needed = columns.containsKey(Role.TIME) && !isStamp(only(Role.TIME));
        if (needed && !columns.containsKey(Role.DATE) && !questions.isAsked(PlanKey.DATE)) {
            pick(
                    Role.DATE,
                    having(column ->
                            sheet.isMostly(column, cell -> Stamp.date(cell).isPresent())),
                    "no column with dates");
        }
    }

    private boolean isStamp(int column) {
        return sheet.isMostly(column, cell -> Stamp.of(cell).isPresent());
    }

    private List<Integer> having(Predicate<Integer> test) {
        return sheet.allColumns().stream()
                .filter(column -> !isTaken(column))
                .filter(test)
                .toList();
    }

    private void pick(Role role, List<Integer> candidates, String none) {
        if (candidates.size() == 1) {
            columns.put(role, List.of(candidates.get(0)));
        } else if (candidates.isEmpty()) {
            ask(role, none);
        } else {
            String found = candidates.stream().map(sheet::words).collect(Collectors.joining(" and "));
            ask(role, found + " could each be the " + role.words());
        }
    }

    private void ask(Role role, String found) {
        questions.open(
                role.key(), found, "say which with " + role.key().option() + " COLUMN; " + Questions.columnRule(sheet));
    }

    private void findMeasured() {
        List<Integer> numbers =
                having(column -> sheet.isMostly(column, cell -> Figure.of(cell).isPresent()));
        for (Role role : Role.MEASURED) {
            if (!columns.containsKey(role) && !questions.isAsked(role.key())) {
                findNamed(role, numbers);
            }
        }
        boolean none =
                Role.MEASURED.stream().noneMatch(role -> questions.isAsked(role.key()) || columns.containsKey(role));
        if (none && questions.problems().isEmpty()) {
            findByFigures(numbers);
        }
    }

    private void findNamed(Role role, List<Integer> numbers) {
        List<Integer> named = numbers.stream()
                .filter(column -> !isTaken(column))
                .filter(column -> role.isNamedBy(sheet.heading(column)))
                .toList();
        if (!named.isEmpty()) {
            pick(role, named, "");
        }
    }

    private boolean isSurelyCelsius(int column) {
        boolean fractions = sheet.readings().stream()
                .flatMap(row -> Figure.of(row.cell(column)).stream())
                .allMatch(figure -> figure.value() >= 0.0 && figure.value() <= Doubts.HIGHEST_FRACTION);
        return !fractions && sheet.median(column) < SURELY_CELSIUS;
    }

    /** Without headings two columns of numbers can be told apart when one cannot be a temperature. */
    private void findByFigures(List<Integer> numbers) {
        List<Integer> figures =
                numbers.stream().filter(column -> !sheet.isCount(column)).toList();
        List<Integer> humid = figures.stream()
                .filter(column -> sheet.median(column) > WARMEST_CELSIUS)
                .toList();
        Optional<Integer> other =
                figures.stream().filter(column -> !humid.contains(column)).findFirst();
        boolean apart = figures.size() == 2 && humid.size() == 1 && other.isPresent();
        if (apart && !isSurelyCelsius(other.get())) {
            questions.open(
                    PlanKey.TEMPERATURE,
                    sheet.words(humid.get(0)) + " could be the humidity in percent or the temperature in Fahrenheit",
                    "say which with --temperature COLUMN and --humidity COLUMN, and the units if they are F or a fraction; "
                            + Questions.columnRule(sheet));
        } else if (apart) {
            columns.put(Role.HUMIDITY, List.of(humid.get(0)));
            columns.put(Role.TEMPERATURE, List.of(other.get()));
        } else {
            questions.open(
                    PlanKey.TEMPERATURE,
                    "it is not clear which column is the temperature and which the humidity",
                    "say which with --temperature COLUMN and --humidity COLUMN; " + Questions.columnRule(sheet));
        }
    }
}
