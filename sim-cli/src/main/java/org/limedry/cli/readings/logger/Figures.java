package org.limedry.cli.readings.logger;

import java.time.LocalDateTime;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What one line says, in our units.
 *
 * @param line its number
 * @param local its time by the clock of the logger, or by UTC if {@code utc}
 * @param utc whether it says itself how far its clock is from UTC
 * @param values temperature C, humidity fraction, surface C, wind m/s
 */
record Figures(int line, LocalDateTime local, boolean utc, Values values) {
    /** The figures of a line. */
    record Values(
            OptionalDouble celsius,
            OptionalDouble relativeHumidity,
            OptionalDouble surfaceCelsius,
            OptionalDouble windMPerS) {
        boolean isBlank() {
            return Stream.of(celsius, relativeHumidity, surfaceCelsius, windMPerS)
                    .allMatch(OptionalDouble::isEmpty);
        }
    }
}
