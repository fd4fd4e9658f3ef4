package org.limedry.cli.readings;

import org.limedry.climate.WeatherReading;

/**
 * One row of a weather file.
 *
 * @param line its line, counted from 1
 * @param reading what it says
 */
record WeatherRow(int line, WeatherReading reading) {
    /** Tells whether it has what a run cannot do without. */
    boolean isComplete() {
        return reading.celsius().isPresent() && reading.relativeHumidity().isPresent();
    }
}
