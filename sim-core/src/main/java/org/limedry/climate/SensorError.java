package org.limedry.climate;

import org.limedry.units.Check;

/**
 * By how much a reading of air is wrong, as one standard deviation of one sensor.
 *
 * @param temperatureK error of the temperature, K; at least 0
 * @param relativeHumidity error of the relative humidity, fraction; at least 0
 */
public record SensorError(double temperatureK, double relativeHumidity) {
    public SensorError {
        Check.nonNegative(temperatureK, "temperatureK", "K");
        Check.nonNegative(relativeHumidity, "relativeHumidity", "");
    }

    /** Returns what is taken for two small loggers that were never compared: 0.5 K and 3 %. COMMON PRACTICE, no source. */
    public static SensorError usual() {
        return new SensorError(0.5, 0.03);
    }
}
