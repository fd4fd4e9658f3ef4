package org.limedry.cli.readings.logger;

import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What only all lines of a file together can tell, gathered line by line. */
final class Tally {
    private static final int NOON = 12;

    private final Sheet sheet;
    private final Places places;
    private final Map<Day, OrderGuess.Dated> dates = new LinkedHashMap<>();
    private final BitSet withFigures = new BitSet();
    /** Columns of which it is known, or need not be known, whether they have figures. */
    private final BitSet settled = new BitSet();

    private Optional<Stamp> before = Optional.empty();
    private long stamps;
    private long offsets;
    private boolean pastNoon;
    private boolean noonPassed;
    private boolean cellsBeyondHeadings;
    private long humidities;
    private double highestHumidity = Double.NEGATIVE_INFINITY;

    Tally(Sheet sheet, Places places) {
        this.sheet = sheet;
        this.places = places;
        places.used().forEach(settled::set);
    }

    void see(Row row, Optional<Stamp> stamp) {
        stamp.ifPresent(at -> see(row.line(), at));
        places.of(Role.HUMIDITY).flatMap(column -> Figure.of(row.cell(column))).ifPresent(figure -> {
            humidities++;
            highestHumidity = Math.max(highestHumidity, figure.value());
        });
        boolean usual = row.cells().size() == sheet.usualColumns();
        for (int column = 0; column < row.cells().size(); column++) {
            String cell = row.cell(column);
            cellsBeyondHeadings |= usual && column >= sheet.headings().size() && !cell.isEmpty();
            if (!settled.get(column) && Figure.of(cell).isPresent()) {
                withFigures.set(column);
                settled.set(column);
            }
        }
    }

    private void see(int line, Stamp stamp) {
        dates.merge(stamp.day(), new OrderGuess.Dated(line, stamp.day(), 1), (there, again) -> there.onceMore());
        stamps++;
        offsets += stamp.offset().isEmpty() ? 0 : 1;
        int shown = stamp.hour().shown();
        pastNoon |= stamp.hour().half() || shown < 1 || shown > NOON;
        noonPassed |= before.filter(last -> last.day().equals(stamp.day()))
                        .filter(last -> last.hour().shown() == NOON)
                        .isPresent()
                && shown < NOON;
        before = Optional.of(stamp);
    }

    /** Returns each date with its first line. */
    Collection<OrderGuess.Dated> dates() {
        return dates.values();
    }

    /** Returns whether any time says how far it is from UTC. */
    boolean hasOffsets() {
        return offsets > 0;
    }

    boolean allHaveOffsets() {
        return offsets == stamps;
    }

    /** Returns whether the hours go from 12 to 1 on one day and never past 12, without AM or PM. */
    boolean isClockOfHalfDays() {
        return stamps > 0 && !pastNoon && noonPassed;
    }

    boolean hasCellsBeyondHeadings() {
        return cellsBeyondHeadings;
    }

    /** Returns the highest humidity as it stands, if there are as many as that. */
    OptionalDouble highestHumidity(int least) {
        return humidities >= least ? OptionalDouble.of(highestHumidity) : OptionalDouble.empty();
    }

    /** Returns whether a column that is nothing else has a figure on any line. */
    boolean hasFigure(int column) {
        return withFigures.get(column);
    }
}
