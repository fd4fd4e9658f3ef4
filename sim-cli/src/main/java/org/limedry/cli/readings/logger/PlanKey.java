package org.limedry.cli.readings.logger;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a reading plan can say about a file. */
public enum PlanKey {
    /** What stands between two cells of a line. */
    PARTED_BY("partedBy"),
    /** What stands before the decimals of a number. */
    DECIMALS("decimals"),
    /** The line with the headings, 0 for none. */
    HEADINGS("headings"),
    /** Column with the date, if it is apart from the time. */
    DATE("date"),
    /** Column with the time, or with date and time. */
    TIME("time"),
    /** Order of day, month and year. */
    DATE_ORDER("dateOrder"),
    /** Clock that the logger kept. */
    ZONE("zone"),
    /** Column with the air temperature. */
    TEMPERATURE("temperature"),
    /** C or F. */
    TEMPERATURE_UNIT("temperatureUnit"),
    /** Column with the relative humidity. */
    HUMIDITY("humidity"),
    /** Percent or fraction. */
    HUMIDITY_UNIT("humidityUnit"),
    /** Column with the temperature of a wall's face. */
    SURFACE("surface"),
    /** Column with the wind speed, m/s. */
    WIND("wind"),
    /** What is added to each temperature, K, since the logger was compared with another. */
    TEMPERATURE_OFFSET("temperatureOffsetK"),
    /** What is added to each humidity, percent, since the logger was compared with another. */
    HUMIDITY_OFFSET("humidityOffsetPercent"),
    /** Which lines to take, such as Sensor=3. */
    ONLY("only");

    private final String word;

    PlanKey(String word) {
        this.word = word;
    }

    /** Returns the key as it stands in a plan. */
    public String word() {
        return word;
    }

    /** Returns the option of the command line that says the same. */
    public String option() {
        return "--" + word.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    static Optional<PlanKey> of(String word) {
        return Arrays.stream(values()).filter(key -> key.word.equals(word)).findFirst();
    }
}
