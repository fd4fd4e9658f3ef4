package org.limedry.climate;

import java.time.Instant;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.units.Check;

/**
 * What a logger on site read at one moment.
 *
 * @param at the moment
 * @param celsius air temperature, C, if it was read
 * @param relativeHumidity relative humidity over water, fraction, if it was read
 * @param surfaceCelsius temperature of the wall's face, C, if it was read
 * @param windMPerS wind speed, m/s, if it was read
 */
public record LoggedReading(
        Instant at,
        OptionalDouble celsius,
        OptionalDouble relativeHumidity,
        OptionalDouble surfaceCelsius,
        OptionalDouble windMPerS) {
    public LoggedReading {
        celsius.ifPresent(value -> Check.finite(value, "celsius", "C"));
        relativeHumidity.ifPresent(value -> Check.inClosed(value, 0.0, 1.0, "relativeHumidity", ""));
        surfaceCelsius.ifPresent(value -> Check.finite(value, "surfaceCelsius", "C"));
        windMPerS.ifPresent(value -> Check.nonNegative(value, "windMPerS", "m/s"));
    }

    /** Returns whether nothing was read. */
    public boolean isBlank() {
        return Stream.of(celsius, relativeHumidity, surfaceCelsius, windMPerS).allMatch(OptionalDouble::isEmpty);
    }
}
