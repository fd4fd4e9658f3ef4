package org.limedry.cli.readings.logger;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.problem.InputProblem;

/** Works out how a file is to be read: what the user says counts, the rest is proposed in words, doubts are problems. */
final class Proposal {
    private static final Pattern FAHRENHEIT =
            Pattern.compile("\u00b0 ?f\\b|\\(.?f\\)|fahrenheit|deg\\.? ?f\\b|\\bf$", Pattern.CASE_INSENSITIVE);
    private static final Unit[] TEMPERATURES = {Unit.CELSIUS, Unit.FAHRENHEIT};
    private static final Unit[] HUMIDITIES = {Unit.PERCENT, Unit.FRACTION};

    /** Of a long file this many lines are looked at first, and as many of those below; all lines are read. */
    private static final int LEAST_HEAD = 1_000;

    /** No preamble is longer than this. */
    private static final int MOST_HEAD = 50_000;

    private static final int HEAD_GROWTH = 4;

    /** A logger that is further out than this is broken. */
    private static final double MOST_OFFSET_K = 5.0;

    private static final double MOST_OFFSET_PERCENT = 20.0;

    private final Questions questions;
    private final ZoneId fallback;
    private final List<Said> said = new ArrayList<>();

    private Proposal(Questions questions, ZoneId fallback) {
        this.questions = questions;
        this.fallback = fallback;
    }

    /** What came of it. */
    sealed interface Result {}

    /**
     * A way to read the file.
     *
     * @param walk what its lines say
     * @param unused columns with figures that are taken for nothing
     * @param clockTaken whether some of its times have no clock but the usual one here
     */
    record Clear(ReadingPlan plan, Walk walk, List<Said> said, List<Unused> unused, boolean clockTaken)
            implements Result {}

    /** Questions that only the user can answer. */
    record Unclear(List<InputProblem> problems) implements Result {}

    static Result of(Lines lines, String shown, Asked asked, ZoneId fallback) {
        Questions questions = new Questions(shown, asked);
        return new Proposal(questions, fallback).propose(lines);
    }

    private Result propose(Lines lines) {
        Optional<Integer> headings = questions.line(PlanKey.HEADINGS, lines.count());
        int head = Math.max(LEAST_HEAD, headings.orElse(0));
        Opening opening = opening(lines, head, headings);
        while (!opening.beginsWithin(head) && head < Math.min(lines.count(), MOST_HEAD)) {
            head *= HEAD_GROWTH;
            opening = opening(lines, head, headings);
        }
        say("cells parted by", opening.parting().word());
        if (!opening.beginsWithin(head)) {
            questions.open(
                    PlanKey.TIME,
                    "no line has a date and a number",
                    "must have lines with a date, a time and what was read, parted by comma, semicolon or tab");
            return unclear();
        }
        Places places = ColumnFinder.find(opening.sheet(), questions);
        if (!questions.problems().isEmpty()) {
            return unclear();
        }
        return propose(lines, opening, places);
    }

    /** How a file begins: what its first lines and some of the others look like. */
    private record Opening(Parting parting, Cutter cutter, Sheet sheet) {
        boolean beginsWithin(int head) {
            return !sheet.isEmpty() && sheet.readings().get(0).line() <= head;
        }
    }

    private Opening opening(Lines lines, int head, Optional<Integer> headings) {
        List<Lines.Line> sample = lines.sample(head);
        Parting parting = questions
                .oneOf(PlanKey.PARTED_BY, Parting.values(), Parting::word)
                .orElseGet(() -> Parting.likeliest(sample));
        Cutter cutter = Cutter.at(parting);
        List<Row> rows = sample.stream()
                .map(line -> cutter.cut(line.number(), line.text()))
                .toList();
        Look look = Look.of(rows);
        Sheet sheet = headings.map(line -> Sheet.laidOut(rows, look, line)).orElseGet(() -> Sheet.laidOut(rows, look));
        return new Opening(parting, cutter, sheet);
    }

    private Result propose(Lines lines, Opening opening, Places places) {
        Sheet sheet = opening.sheet();
        DecimalMark decimals = questions
                .oneOf(PlanKey.DECIMALS, DecimalMark.values(), DecimalMark::word)
                .orElseGet(() -> decimals(sheet, places));
        Optional<Unit> toldTemperature = questions.oneOf(PlanKey.TEMPERATURE_UNIT, TEMPERATURES, Unit::word);
        Unit temperature = toldTemperature.orElseGet(() -> temperature(sheet, places));
        Unit humidity =
                questions.oneOf(PlanKey.HUMIDITY_UNIT, HUMIDITIES, Unit::word).orElse(Unit.PERCENT);
        ReadingPlan.Units units = new ReadingPlan.Units(temperature, humidity);
        RowReader.Way way = new RowReader.Way(decimals, units, offsets(), questions.only(sheet));
        Walk walk = Walk.over(lines, opening.cutter(), sheet, places, way);
        sayHeadings(sheet);
        Clocks.Clock clock = new Clocks(questions, fallback, said::add).of(sheet, places, walk.tally());
        say("decimals", decimals.word());
        sayColumns(sheet, places);
        sayUnits(places, units, toldTemperature.isPresent());
        sayRest(way);
        new Doubts(sheet, places, walk.tally(), questions).raise(units);
        List<Unused> unused = unused(sheet, places, walk.tally(), way.only());
        if (!questions.problems().isEmpty()) {
            return unclear();
        }
        Map<Role, ReadingPlan.Column> named = new EnumMap<>(Role.class);
        places.forEach(
                (role, columns) -> named.put(role, new ReadingPlan.Column(columns, Questions.name(sheet, columns))));
        ReadingPlan.Cells cells = new ReadingPlan.Cells(opening.parting(), decimals, sheet.headingLine());
        ReadingPlan plan = new ReadingPlan(cells, named, clock.plan(), units, way.offsets(), way.only());
        return new Clear(plan, walk, said, unused, clock.taken());
    }

    private void sayColumns(Sheet sheet, Places places) {
        places.forEach((role, columns) -> say(
                role == Role.TIME && !places.has(Role.DATE) ? "date and time" : role.words(),
                columns.stream().map(sheet::words).collect(Collectors.joining(" and "))));
    }

    private void sayUnits(Places places, ReadingPlan.Units units, boolean told) {
        if (places.has(Role.TEMPERATURE) || places.has(Role.SURFACE)) {
            String why =
                    units.temperature() == Unit.FAHRENHEIT ? ", as the file says (--temperature-unit C if not)" : "";
            say("temperatures in", units.temperature().words() + (told ? " (told)" : why));
        }
        if (places.has(Role.HUMIDITY)) {
            say("humidity in", units.humidity().words());
        }
    }

    private void sayRest(RowReader.Way way) {
        ReadingPlan.Offsets offsets = way.offsets();
        if (offsets.temperatureK() != 0.0 || offsets.humidityPercent() != 0.0) {
            say("added to each", offsets.temperatureK() + " C and " + offsets.humidityPercent() + " % humidity (told)");
        }
        if (way.only().column() >= 0) {
            say("only lines", "with " + way.only().name() + " " + way.only().text() + " (told)");
        }
    }

    private List<Unused> unused(Sheet sheet, Places places, Tally tally, ReadingPlan.Only only) {
        Set<Integer> used = new HashSet<>(places.used());
        used.add(only.column());
        List<Unused> unused = Unused.of(sheet, tally, used);
        unused.forEach(one -> say("not used", one.wordsOnItsOwn(places.has(Role.WIND))));
        return unused;
    }

    private Unclear unclear() {
        return new Unclear(List.copyOf(questions.problems()));
    }

    private void say(String what, String words) {
        said.add(new Said(what, words));
    }

    private void sayHeadings(Sheet sheet) {
        say("headings", sheet.headingLine() == 0 ? "none" : "line " + sheet.headingLine());
        sheet.skipped()
                .forEach(row ->
                        say("skipped", "line " + row.line() + ": " + row.text().strip()));
    }

    private static DecimalMark decimals(Sheet sheet, Places places) {
        Map<Character, Long> marks = Role.MEASURED.stream()
                .flatMap(role -> places.of(role).stream())
                .flatMap(column -> sheet.readings().stream().map(row -> row.cell(column)))
                .flatMap(cell -> Figure.of(cell).stream())
                .collect(Collectors.groupingBy(Figure::mark, Collectors.counting()));
        return marks.getOrDefault(',', 0L) > marks.getOrDefault('.', 0L) ? DecimalMark.COMMA : DecimalMark.POINT;
    }

    private static Unit temperature(Sheet sheet, Places places) {
        return Stream.of(Role.TEMPERATURE, Role.SURFACE)
                        .flatMap(role -> places.of(role).stream())
                        .anyMatch(column -> isFahrenheit(sheet, column))
                ? Unit.FAHRENHEIT
                : Unit.CELSIUS;
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
        return new ReadingPlan.Offsets(
                questions.offset(PlanKey.TEMPERATURE_OFFSET, MOST_OFFSET_K),
                questions.offset(PlanKey.HUMIDITY_OFFSET, MOST_OFFSET_PERCENT));
    }
}
