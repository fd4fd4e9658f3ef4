package org.limedry.cli.readings.logger;

import org.limedry.units.Units;

/** Units in which loggers write. */
enum Unit {
    CELSIUS("C", "degrees C"),
    FAHRENHEIT("F", "degrees F, turned into C"),
    PERCENT("percent", "percent"),
    FRACTION("fraction", "a fraction of 1");

    private final String word;
    private final String words;

    Unit(String word, String words) {
        this.word = word;
        this.words = words;
    }

    String word() {
        return word;
    }

    String words() {
        return words;
    }

    /** Returns a temperature in C, or a humidity as a fraction. */
    double convert(double value) {
        return switch (this) {
            case CELSIUS, FRACTION -> value;
            case FAHRENHEIT -> (value - 32.0) * 5.0 / 9.0;
            case PERCENT -> Units.fractionFromPercent(value);
        };
    }
}
