package org.limedry.cli.readings.logger;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.problem.InputProblem;

/** Works out how a file is to be read: what the user says counts, the rest is proposed in words, doubts are problems. */
final class Proposal {
    private static final Pattern FAHRENHEIT =
            Pattern.compile("\u00b0 ?f\\b|\\(.?f\\)|fahrenheit|deg\\.? ?f\\b|\\bf$", Pattern.CASE_INSENSITIVE);
    private static final Pattern UTC_HEADING =
            Pattern.compile("(?:utc|gmt)\\s*([-+]\\d{2}:?\\d{2})?", Pattern.CASE_INSENSITIVE);

    /** A logger that is further out than this is broken. */
    private static final double MOST_OFFSET_K = 5.0;

    private static final double MOST_OFFSET_PERCENT = 20.0;

    private final Questions questions;
    private final ZoneId fallback;
    private final List<Said> said = new ArrayList<>();
    private boolean clockTaken;

    private Proposal(Questions questions, ZoneId fallback) {
        this.questions = questions;
        this.fallback = fallback;
    }

    /** What came of it. */
    sealed interface Result {}

    /**
     * A way to read the file.
     *
     * @param unused columns with figures that are taken for nothing
     * @param clockTaken whether some of its times have no clock but the usual one here
     */
    record Clear(ReadingPlan plan, Sheet sheet, List<Said> said, List<Unused> unused, boolean clockTaken)
            implements Result {}

    /** Questions that only the user can answer. */
    record Unclear(List<InputProblem> problems) implements Result {}

    static Result of(List<String> lines, String shown, Asked asked, ZoneId fallback) {
        Questions questions = new Questions(shown, asked);
        return new Proposal(questions, fallback).propose(lines);
    }

    private Result propose(List<String> lines) {
        Parting parting = questions
                .oneOf(PlanKey.PARTED_BY, Parting.values(), Parting::word)
                .orElseGet(() -> Parting.likeliest(lines));
        say("cells parted by", parting.word());
        Sheet sheet = sheet(Sheet.rows(lines, parting));
        if (sheet.isEmpty()) {
            questions.open(
                    PlanKey.TIME,
                    "no line has a date and a number",
                    "must have lines with a date, a time and what was read, parted by comma, semicolon or tab");
            return unclear();
        }
        Map<Role, Integer> columns = ColumnFinder.find(sheet, questions);
        if (!questions.problems().isEmpty()) {
            return unclear();
        }
        return propose(parting, sheet, columns);
    }

    private Result propose(Parting parting, Sheet sheet, Map<Role, Integer> columns) {
        sayHeadings(sheet);
        ReadingPlan.Clock clock = clock(sheet, columns);
        DecimalMark decimals = decimals(sheet, columns);
        sayColumns(sheet, columns);
        ReadingPlan.Units units = new ReadingPlan.Units(temperature(sheet, columns), humidity(columns));
        new Doubts(sheet, columns, questions).raise(units);
        ReadingPlan.Offsets offsets = offsets();
        ReadingPlan.Only only = only(sheet);
        List<Unused> unused = unused(sheet, columns, only);
        if (!questions.problems().isEmpty()) {
            return unclear();
        }
        Map<Role, ReadingPlan.Column> named = new EnumMap<>(Role.class);
        columns.forEach(
                (role, column) -> named.put(role, new ReadingPlan.Column(column, Questions.name(sheet, column))));
        ReadingPlan.Cells cells = new ReadingPlan.Cells(parting, decimals, sheet.headingLine());
        ReadingPlan plan = new ReadingPlan(cells, named, clock, units, offsets, only);
        return new Clear(plan, sheet, said, unused, clockTaken);
    }

    private void sayColumns(Sheet sheet, Map<Role, Integer> columns) {
        boolean together = !columns.containsKey(Role.DATE);
        columns.forEach((role, column) ->
                say(role == Role.TIME && together ? "date and time" : role.words(), sheet.words(column)));
    }

    private ReadingPlan.Only only(Sheet sheet) {
        ReadingPlan.Only only = questions.only(sheet);
        if (only.column() >= 0) {
            say("only lines", "with " + only.name() + " " + only.text() + " (told)");
        }
        return only;
    }

    private List<Unused> unused(Sheet sheet, Map<Role, Integer> columns, ReadingPlan.Only only) {
        Set<Integer> used = new HashSet<>(columns.values());
        used.add(only.column());
        List<Unused> unused = Unused.of(sheet, used);
        unused.forEach(one -> say("not used", one.wordsOnItsOwn(columns.containsKey(Role.WIND))));
        return unused;
    }

    private Unclear unclear() {
        return new Unclear(List.copyOf(questions.problems()));
    }

    private void say(String what, String words) {
        said.add(new Said(what, words));
    }

    private Sheet sheet(List<Row> rows) {
        return questions
                .line(PlanKey.HEADINGS, rows.size())
                .map(line -> Sheet.laidOut(rows, line))
                .orElseGet(() -> Sheet.laidOut(rows));
    }

    private void sayHeadings(Sheet sheet) {
        say("headings", sheet.headingLine() == 0 ? "none" : "line " + sheet.headingLine());
        sheet.skipped()
                .forEach(row ->
                        say("skipped", "line " + row.line() + ": " + row.text().strip()));
    }

    private DecimalMark decimals(Sheet sheet, Map<Role, Integer> columns) {
        Optional<DecimalMark> told = questions.oneOf(PlanKey.DECIMALS, DecimalMark.values(), DecimalMark::word);
        DecimalMark decimals = told.orElseGet(() -> {
            Map<Character, Long> marks = Role.MEASURED.stream()
                    .flatMap(role -> Stream.ofNullable(columns.get(role)))
                    .flatMap(column -> sheet.readings().stream().map(row -> row.cell(column)))
                    .flatMap(cell -> Figure.of(cell).stream())
                    .collect(Collectors.groupingBy(Figure::mark, Collectors.counting()));
            return marks.getOrDefault(',', 0L) > marks.getOrDefault('.', 0L) ? DecimalMark.COMMA : DecimalMark.POINT;
        });
        say("decimals", decimals.word());
        return decimals;
    }

    private ReadingPlan.Clock clock(Sheet sheet, Map<Role, Integer> columns) {
        Stamps stamps = new Stamps(columns);
        List<OrderGuess.Dated> dates = sheet.readings().stream()
                .flatMap(row -> stamps.of(row).stream().map(stamp -> new OrderGuess.Dated(row.line(), stamp.day())))
                .toList();
        DateOrder order = questions
                .oneOf(PlanKey.DATE_ORDER, DateOrder.values(), DateOrder::word)
                .map(told -> {
                    say("dates", told.word() + " (told)");
                    return told;
                })
                .orElseGet(() -> guessed(OrderGuess.of(dates)));
        return new ReadingPlan.Clock(order, zone(sheet, stamps, columns));
    }

    private DateOrder guessed(OrderGuess guess) {
        if (guess instanceof OrderGuess.Settled settled) {
            say("dates", settled.order().word() + ": " + settled.why());
            return settled.order();
        }
        OrderGuess.Open open = (OrderGuess.Open) guess;
        if (!questions.isAsked(PlanKey.DATE_ORDER)) {
            questions.open(PlanKey.DATE_ORDER, open.found(), open.rule());
        }
        return DateOrder.DAY_MONTH_YEAR;
    }

    private ZoneId zone(Sheet sheet, Stamps stamps, Map<Role, Integer> columns) {
        Optional<ZoneId> told = questions.zone();
        String heading = sheet.heading(columns.getOrDefault(Role.TIME, 0));
        Matcher utc = UTC_HEADING.matcher(heading);
        List<Stamp> all = sheet.readings().stream()
                .flatMap(row -> stamps.of(row).stream())
                .toList();
        if (all.stream().anyMatch(stamp -> !stamp.offset().isEmpty())) {
            clockTaken = told.isEmpty()
                    && all.stream().anyMatch(stamp -> stamp.offset().isEmpty());
            say("clock", "each time says how far it is from UTC");
            return told.orElse(fallback);
        } else if (told.isPresent()) {
            say("clock", told.get() + " (told)");
            return told.get();
        } else if (utc.find() || heading.equals("timeUtc")) {
            ZoneId zone = ZoneId.of(offset(utc));
            say("clock", zone + ", as the heading says");
            return zone;
        }
        clockTaken = true;
        say("clock", fallback + " (the usual one here; --zone says another, summer time included)");
        return fallback;
    }

    private static String offset(Matcher utc) {
        return utc.group(1) == null ? "UTC" : "UTC" + utc.group(1).replaceAll("(\\d{2})(\\d{2})$", "$1:$2");
    }

    private Unit temperature(Sheet sheet, Map<Role, Integer> columns) {
        Unit[] units = {Unit.CELSIUS, Unit.FAHRENHEIT};
        Optional<Unit> told = questions.oneOf(PlanKey.TEMPERATURE_UNIT, units, Unit::word);
        List<Integer> warm = Stream.of(Role.TEMPERATURE, Role.SURFACE)
                .flatMap(role -> Stream.ofNullable(columns.get(role)))
                .toList();
        if (warm.isEmpty()) {
            return Unit.CELSIUS;
        }
        Unit proposed = warm.stream().anyMatch(column -> isFahrenheit(sheet, column)) ? Unit.FAHRENHEIT : Unit.CELSIUS;
        String why = proposed == Unit.FAHRENHEIT ? ", as the file says (--temperature-unit C if not)" : "";
        Unit unit = told.orElse(proposed);
        say("temperatures in", unit.words() + (told.isPresent() ? " (told)" : why));
        return unit;
    }

    private static boolean isFahrenheit(Sheet sheet, int column) {
        return FAHRENHEIT.matcher(sheet.heading(column)).find()
                || sheet.isMostly(
                        column,
                        cell -> Figure.of(cell)
                                .filter(figure -> figure.unit().equals("F"))
                                .isPresent());
    }

    private ReadingPlan.Offsets offsets() {
        double kelvin = questions.offset(PlanKey.TEMPERATURE_OFFSET, MOST_OFFSET_K);
        double percent = questions.offset(PlanKey.HUMIDITY_OFFSET, MOST_OFFSET_PERCENT);
        if (kelvin != 0.0 || percent != 0.0) {
            say("added to each", kelvin + " C and " + percent + " % humidity (told)");
        }
        return new ReadingPlan.Offsets(kelvin, percent);
    }

    private Unit humidity(Map<Role, Integer> columns) {
        Unit[] units = {Unit.PERCENT, Unit.FRACTION};
        Unit unit = questions.oneOf(PlanKey.HUMIDITY_UNIT, units, Unit::word).orElse(Unit.PERCENT);
        if (columns.containsKey(Role.HUMIDITY)) {
            say("humidity in", unit.words());
        }
        return unit;
    }
}
