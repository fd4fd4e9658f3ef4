package org.limedry.cli.readings.logger;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.limedry.cli.readings.logger.Figures.Values;
import org.limedry.units.Units;

/** Reads the lines one by one; a line that says nothing is listed and the next is read. */
final class RowReader {
    private static final Pattern WORD = Pattern.compile("\\p{L}{3}");
    private static final int SHOWN_CHARS = 60;
    private static final double FULL = 1.0;
    private static final double MOST_OVER_FULL = 1.05;

    private final ReadingPlan plan;
    private final Sheet sheet;
    private final Stamps stamps;
    private final List<Found> found;
    private final List<Figures> figures = new ArrayList<>();

    private RowReader(ReadingPlan plan, Sheet sheet, List<Found> found) {
        this.plan = plan;
        this.sheet = sheet;
        this.found = found;
        this.stamps = new Stamps(places(plan));
    }

    private static Map<Role, Integer> places(ReadingPlan plan) {
        Map<Role, Integer> places = new EnumMap<>(Role.class);
        plan.columns().forEach((role, column) -> places.put(role, column.index()));
        return places;
    }

    /** Returns the lines that say something, in the order of the file. */
    static List<Figures> read(ReadingPlan plan, Sheet sheet, List<Found> found) {
        RowReader reader = new RowReader(plan, sheet, found);
        sheet.readings().stream().filter(plan.only()::takes).forEach(reader::read);
        return reader.figures;
    }

    private void read(Row row) {
        Optional<Found.Kind> fault = fault(row);
        if (fault.isPresent()) {
            tell(row, fault.get(), row.text());
            return;
        }
        Stamp stamp = stamps.of(row).orElseThrow();
        Optional<LocalDateTime> time = stamp.in(plan.clock().order());
        if (time.isEmpty()) {
            tell(row, Found.Kind.NO_TIME, row.text());
            return;
        }
        Values values = new Values(
                value(row, Role.TEMPERATURE), humidity(row), value(row, Role.SURFACE), value(row, Role.WIND));
        if (values.isBlank()) {
            boolean mark = WORD.matcher(withoutTime(row)).find();
            tell(row, mark ? Found.Kind.NOT_A_READING : Found.Kind.BLANK, row.text());
            return;
        }
        Optional<ZoneOffset> offset = Stamp.offset(stamp.offset());
        LocalDateTime local =
                offset.map(at -> time.get().minusSeconds(at.getTotalSeconds())).orElse(time.get());
        figures.add(new Figures(row.line(), local, offset.isPresent(), values));
    }

    private Optional<Found.Kind> fault(Row row) {
        if (row.cells().isEmpty()) {
            return Optional.of(Found.Kind.CANNOT_BE_SPLIT);
        }
        if (row.cells().equals(headings())) {
            return Optional.of(Found.Kind.HEADINGS_AGAIN);
        }
        boolean timed = stamps.of(row).isPresent();
        boolean words = WORD.matcher(withoutTime(row)).find();
        if (!timed) {
            return Optional.of(words && row.numbers() < 2 ? Found.Kind.NOT_A_READING : Found.Kind.NO_TIME);
        }
        int usual = sheet.usualColumns();
        int cells = row.cells().size();
        if (cells < usual || cells > Math.max(usual, sheet.headings().size())) {
            return Optional.of(words ? Found.Kind.NOT_A_READING : Found.Kind.OTHER_CELLS);
        }
        return Optional.empty();
    }

    private List<String> headings() {
        return sheet.headingLine() == 0
                ? List.of()
                : sheet.rows().get(sheet.headingLine() - 1).cells();
    }

    /** A month or a weekday in a date is no mark of the logger. */
    private String withoutTime(Row row) {
        StringBuilder rest = new StringBuilder();
        for (String cell : row.cells()) {
            boolean when = Stamp.of(cell).isPresent() || Stamp.date(cell).isPresent();
            boolean figure = Figure.of(cell).isPresent();
            rest.append(when || figure ? "" : cell).append(' ');
        }
        return rest.toString();
    }

    private OptionalDouble value(Row row, Role role) {
        Optional<Integer> column = plan.column(role);
        String cell = column.map(row::cell).orElse("");
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Figure> figure =
                Figure.of(cell).filter(number -> number.fits(plan.cells().decimals()));
        if (figure.isEmpty()) {
            tell(row, Found.Kind.NO_NUMBER, role.words() + " \"" + cell + "\"");
            return OptionalDouble.empty();
        }
        double value = inOurUnit(role, figure.get().value());
        if (!inRange(role, value)) {
            tell(row, Found.Kind.OUT_OF_RANGE, role.words() + " " + cell);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private OptionalDouble humidity(Row row) {
        OptionalDouble value = value(row, Role.HUMIDITY);
        if (value.orElse(0.0) > FULL) {
            tell(row, Found.Kind.OVER_100, String.format(Locale.ROOT, "%.1f %%", value.getAsDouble() * 100));
            return OptionalDouble.of(FULL);
        }
        return value;
    }

    /** Only the air sensors were compared with another logger: what was found is not added to a wall surface. */
    private double inOurUnit(Role role, double value) {
        return switch (role) {
            case TEMPERATURE ->
                plan.units().temperature().convert(value) + plan.offsets().temperatureK();
            case SURFACE -> plan.units().temperature().convert(value);
            case HUMIDITY ->
                plan.units().humidity().convert(value)
                        + Units.fractionFromPercent(plan.offsets().humidityPercent());
            default -> value;
        };
    }

    private static boolean inRange(Role role, double value) {
        return switch (role) {
            case HUMIDITY -> value >= 0.0 && value <= MOST_OVER_FULL;
            case WIND -> value >= 0.0 && value <= 75.0;
            default -> value >= -40.0 && value <= 60.0;
        };
    }

    private void tell(Row row, Found.Kind kind, String words) {
        String one = words.strip();
        found.add(Found.on(row.line(), kind, one.length() > SHOWN_CHARS ? one.substring(0, SHOWN_CHARS) + "..." : one));
    }
}
