package org.limedry.cli.readings.logger;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.OptionalDouble;

/**
 * What one line says, in our units.
 *
 * @param line its number
 * @param localSecond its time by the clock of the logger, or by UTC if {@code utc}, in seconds of that clock since 1970
 * @param utc whether it says itself how far its clock is from UTC
 * @param values temperature C, humidity fraction, surface C, wind m/s
 */
record Figures(int line, long localSecond, boolean utc, Values values) {
    /** The figures of a line. */
    record Values(
            OptionalDouble celsius,
            OptionalDouble relativeHumidity,
            OptionalDouble surfaceCelsius,
            OptionalDouble windMPerS) {
        boolean isBlank() {
            return celsius.isEmpty() && relativeHumidity.isEmpty() && surfaceCelsius.isEmpty() && windMPerS.isEmpty();
        }
    }

    /** Returns its time by that clock. */
    LocalDateTime local() {
        return LocalDateTime.ofEpochSecond(localSecond, 0, ZoneOffset.UTC);
    }
}
