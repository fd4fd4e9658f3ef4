package org.limedry.cli.readings.logger;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a file is read: everything that somebody would have to know to read it the same again.
 *
 * @param cells how a line is cut into cells
 * @param columns which column is what, counted from 0
 * @param clock how dates and times are meant
 * @param units in which units its figures are
 * @param offsets what is added to them
 * @param only which lines count
 */
record ReadingPlan(Cells cells, Map<Role, Column> columns, Clock clock, Units units, Offsets offsets, Only only) {
    /** How a line is cut. */
    record Cells(Parting parting, DecimalMark decimals, int headingLine) {}

    /** A column or several, by their places and by the name that a plan can give them. */
    record Column(List<Integer> indexes, String name) {
        Column {
            indexes = List.copyOf(indexes);
        }
    }

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

    /** Units of temperatures and humidities. */
    record Units(Unit temperature, Unit humidity) {}

    /** What is added to each figure, K and percent: what a comparison with another logger found. */
    record Offsets(double temperatureK, double humidityPercent) {}

    ReadingPlan {
        columns = Map.copyOf(columns);
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
            words.put(PlanKey.TEMPERATURE_UNIT, units.temperature().word());
        }
        if (columns.containsKey(Role.HUMIDITY)) {
            words.put(PlanKey.HUMIDITY_UNIT, units.humidity().word());
        }
        if (offsets.temperatureK() != 0.0) {
            words.put(PlanKey.TEMPERATURE_OFFSET, Double.toString(offsets.temperatureK()));
        }
        if (offsets.humidityPercent() != 0.0) {
            words.put(PlanKey.HUMIDITY_OFFSET, Double.toString(offsets.humidityPercent()));
        }
        if (only.column() >= 0) {
            words.put(PlanKey.ONLY, only.name() + "=" + only.text());
        }
        return words;
    }
}
