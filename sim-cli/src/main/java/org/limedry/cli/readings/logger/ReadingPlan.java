package org.limedry.cli.readings.logger;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How a file is read: everything that somebody would have to know to read it the same again.
 *
 * @param cells how a line is cut into cells
 * @param columns which column is what, counted from 0
 * @param clock how dates and times are meant
 * @param temperature unit of its temperatures
 * @param humidity unit of its humidities
 * @param only which lines count
 */
record ReadingPlan(Cells cells, Map<Role, Column> columns, Clock clock, Unit temperature, Unit humidity, Only only) {
    /** How a line is cut. */
    record Cells(Parting parting, DecimalMark decimals, int headingLine) {}

    /** A column, by its place and by the name that a plan can give it. */
    record Column(int index, String name) {}

    /** How dates and times are meant. */
    record Clock(DateOrder order, ZoneId zone) {}

    /**
     * Lines that count: those with a text in a column.
     *
     * @param column its place; -1 if all lines count
     * @param name what a plan calls it
     * @param text what must stand there
     */
    record Only(int column, String name, String text) {
        static Only all() {
            return new Only(-1, "", "");
        }

        boolean takes(Row row) {
            return column < 0 || row.cell(column).equals(text);
        }
    }

    ReadingPlan {
        columns = Map.copyOf(columns);
    }

    Optional<Integer> column(Role role) {
        return Optional.ofNullable(columns.get(role)).map(Column::index);
    }

    /** Returns the plan in the words of its file. */
    Map<PlanKey, String> words() {
        Map<PlanKey, String> words = new LinkedHashMap<>();
        words.put(PlanKey.PARTED_BY, cells.parting().word());
        words.put(PlanKey.DECIMALS, cells.decimals().word());
        words.put(PlanKey.HEADINGS, Integer.toString(cells.headingLine()));
        new EnumMap<>(columns).forEach((role, column) -> words.put(role.key(), column.name()));
        words.put(PlanKey.DATE_ORDER, clock.order().word());
        words.put(PlanKey.ZONE, clock.zone().getId());
        if (columns.containsKey(Role.TEMPERATURE) || columns.containsKey(Role.SURFACE)) {
            words.put(PlanKey.TEMPERATURE_UNIT, temperature.word());
        }
        if (columns.containsKey(Role.HUMIDITY)) {
            words.put(PlanKey.HUMIDITY_UNIT, humidity.word());
        }
        if (only.column() >= 0) {
            words.put(PlanKey.ONLY, only.name() + "=" + only.text());
        }
        return words;
    }
}
