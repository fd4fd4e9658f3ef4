package org.limedry.study;

import org.limedry.units.Check;

/**
 * How far two instruments of the trade may be off, one sigma, each by itself.
 *
 * @param kelvin error of a temperature, K; at least 0
 * @param relativeHumidity error of a relative humidity, fraction; at least 0
 */
public record SensorErrors(double kelvin, double relativeHumidity) {
    public SensorErrors {
        Check.nonNegative(kelvin, "kelvin", "K");
        Check.nonNegative(relativeHumidity, "relativeHumidity", "");
    }

    /** Returns what an ordinary logger promises: 0.5 K and 3 % relative humidity. Common practice, no source. */
    public static SensorErrors ordinary() {
        return new SensorErrors(0.5, 0.03);
    }
}
