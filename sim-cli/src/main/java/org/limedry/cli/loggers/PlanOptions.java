package org.limedry.cli.loggers;

import java.util.EnumMap;
import java.util.Map;
import org.limedry.cli.readings.logger.Asked;
import org.limedry.cli.readings.logger.PlanKey;
import picocli.CommandLine.Option;

/** The options that say how a logger file is to be read: each is a key of the reading plan too. */
final class PlanOptions {
    private static final String COLUMN = "COLUMN";

    private final Map<PlanKey, Asked.Word> words = new EnumMap<>(PlanKey.class);

    Asked asked() {
        return new Asked(words);
    }

    private void put(PlanKey key, String text) {
        words.put(key, new Asked.Word(text, key.option(), 0));
    }

    @Option(
            names = "--time",
            paramLabel = COLUMN,
            description = "Column with time, or date and time: number or heading.")
    void time(String column) {
        put(PlanKey.TIME, column);
    }

    @Option(names = "--date", paramLabel = COLUMN, description = "Column with the date, if it is apart.")
    void date(String column) {
        put(PlanKey.DATE, column);
    }

    @Option(names = "--temperature", paramLabel = COLUMN, description = "Column with the air temperature.")
    void temperature(String column) {
        put(PlanKey.TEMPERATURE, column);
    }

    @Option(names = "--humidity", paramLabel = COLUMN, description = "Column with the relative humidity.")
    void humidity(String column) {
        put(PlanKey.HUMIDITY, column);
    }

    @Option(names = "--surface", paramLabel = COLUMN, description = "Column with the temperature of a wall's face.")
    void surface(String column) {
        put(PlanKey.SURFACE, column);
    }

    @Option(names = "--wind", paramLabel = COLUMN, description = "Column with the wind speed in m/s.")
    void wind(String column) {
        put(PlanKey.WIND, column);
    }

    @Option(
            names = "--date-order",
            paramLabel = "ORDER",
            description = "day-month-year, month-day-year or year-month-day.")
    void dateOrder(String order) {
        put(PlanKey.DATE_ORDER, order);
    }

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            description = "Clock of the logger: Europe/Dublin (with summer time), UTC, +00:00.")
    void zone(String zone) {
        put(PlanKey.ZONE, zone);
    }

    @Option(names = "--temperature-unit", paramLabel = "UNIT", description = "C or F.")
    void temperatureUnit(String unit) {
        put(PlanKey.TEMPERATURE_UNIT, unit);
    }

    @Option(names = "--humidity-unit", paramLabel = "UNIT", description = "percent or fraction.")
    void humidityUnit(String unit) {
        put(PlanKey.HUMIDITY_UNIT, unit);
    }

    @Option(names = "--parted-by", paramLabel = "WORD", description = "comma, semicolon or tab.")
    void partedBy(String word) {
        put(PlanKey.PARTED_BY, word);
    }

    @Option(names = "--decimals", paramLabel = "WORD", description = "point or comma.")
    void decimals(String word) {
        put(PlanKey.DECIMALS, word);
    }

    @Option(names = "--headings", paramLabel = "LINE", description = "Line with the headings; 0 for none.")
    void headings(String line) {
        put(PlanKey.HEADINGS, line);
    }

    @Option(
            names = "--only",
            paramLabel = "COLUMN=TEXT",
            description = "Take only lines with this text in that column: one logger of several.")
    void only(String words) {
        put(PlanKey.ONLY, words);
    }

    @Option(names = "--temperature-offset-k", paramLabel = "K", description = "Added to each air temperature.")
    void temperatureOffset(String kelvin) {
        put(PlanKey.TEMPERATURE_OFFSET, kelvin);
    }

    @Option(names = "--humidity-offset-percent", paramLabel = "PERCENT", description = "Added to each humidity.")
    void humidityOffset(String percent) {
        put(PlanKey.HUMIDITY_OFFSET, percent);
    }
}
