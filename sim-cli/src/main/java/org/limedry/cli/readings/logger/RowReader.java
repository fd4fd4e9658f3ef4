package org.limedry.cli.readings.logger;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.limedry.cli.readings.logger.Figures.Values;
import org.limedry.units.Units;

/** Reads the figures of a line, or says why there are none. */
final class RowReader {
    private static final Pattern WORD = Pattern.compile("\\p{L}{3}");
    private static final double FULL = 1.0;
    private static final double MOST_OVER_FULL = 1.05;

    private final Sheet sheet;
    private final Places places;
    private final Way way;
    private final List<String> headings;

    RowReader(Sheet sheet, Places places, Way way) {
        this.sheet = sheet;
        this.places = places;
        this.way = way;
        this.headings = sheet.headingCells();
    }

    /**
     * How figures are meant.
     *
     * @param decimals what stands before their decimals
     * @param units their units
     * @param offsets what is added to them
     * @param only which lines count
     */
    record Way(DecimalMark decimals, ReadingPlan.Units units, ReadingPlan.Offsets offsets, ReadingPlan.Only only) {}

    /** Returns the figures of a line; lists those that cannot be. */
    Values values(Row row, List<Found> found) {
        return new Values(
                value(row, Role.TEMPERATURE, found),
                humidity(row, found),
                value(row, Role.SURFACE, found),
                value(row, Role.WIND, found));
    }

    /** Returns what a line is that has no figures. */
    Found.Kind blankness(Row row) {
        return hasWords(row) ? Found.Kind.NOT_A_READING : Found.Kind.BLANK;
    }

    /** Returns why a line is no reading, if it is none. */
    Optional<Found.Kind> fault(Row row, boolean timed) {
        if (row.cells().isEmpty()) {
            return Optional.of(Found.Kind.CANNOT_BE_SPLIT);
        }
        if (row.cells().equals(headings)) {
            return Optional.of(Found.Kind.HEADINGS_AGAIN);
        }
        if (!timed) {
            return Optional.of(hasWords(row) && row.numbers() < 2 ? Found.Kind.NOT_A_READING : Found.Kind.NO_TIME);
        }
        int usual = sheet.usualColumns();
        int cells = row.cells().size();
        if (cells < usual || cells > Math.max(usual, sheet.headings().size())) {
            return Optional.of(hasWords(row) ? Found.Kind.NOT_A_READING : Found.Kind.OTHER_CELLS);
        }
        return Optional.empty();
    }

    private boolean hasWords(Row row) {
        return WORD.matcher(withoutTime(row)).find();
    }

    /** A month or a weekday in a date is no mark of the logger. */
    private static String withoutTime(Row row) {
        StringBuilder rest = new StringBuilder();
        for (String cell : row.cells()) {
            boolean when = Stamp.of(cell).isPresent() || Stamp.date(cell).isPresent();
            boolean figure = Figure.of(cell).isPresent();
            rest.append(when || figure ? "" : cell).append(' ');
        }
        return rest.toString();
    }

    private OptionalDouble value(Row row, Role role, List<Found> found) {
        String cell = places.of(role).map(row::cell).orElse("");
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Figure> figure = Figure.of(cell).filter(number -> number.fits(way.decimals()));
        if (figure.isEmpty()) {
            found.add(Found.on(row.line(), Found.Kind.NO_NUMBER, role.words() + " \"" + cell + "\""));
            return OptionalDouble.empty();
        }
        double value = inOurUnit(role, figure.get().value());
        if (!inRange(role, value)) {
            found.add(Found.on(row.line(), Found.Kind.OUT_OF_RANGE, role.words() + " " + cell));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private OptionalDouble humidity(Row row, List<Found> found) {
        OptionalDouble value = value(row, Role.HUMIDITY, found);
        if (value.orElse(0.0) > FULL) {
            String percent = String.format(Locale.ROOT, "%.1f %%", value.getAsDouble() * 100);
            found.add(Found.on(row.line(), Found.Kind.OVER_100, percent));
            return OptionalDouble.of(FULL);
        }
        return value;
    }

    /** Only the air sensors were compared with another logger: what was found is not added to a wall surface. */
    private double inOurUnit(Role role, double value) {
        return switch (role) {
            case TEMPERATURE ->
                way.units().temperature().convert(value) + way.offsets().temperatureK();
            case SURFACE -> way.units().temperature().convert(value);
            case HUMIDITY ->
                way.units().humidity().convert(value)
                        + Units.fractionFromPercent(way.offsets().humidityPercent());
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
}
