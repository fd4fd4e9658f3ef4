package org.limedry.climate;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.limedry.reference.WeatherYear;
import org.limedry.units.Units;

/**
 * One row of a weather file, as it stands there: nothing is checked here, see {@link WeatherRecord#check}.
 *
 * @param time the hour
 * @param celsius air temperature, C, if reported
 * @param relativeHumidity relative humidity over water, fraction, if reported
 * @param windMPerS wind at the station, m/s, if reported
 */
public record WeatherReading(
        Instant time, OptionalDouble celsius, OptionalDouble relativeHumidity, OptionalDouble windMPerS) {
    /** Returns the rows of a year of the reference data. Its attribution must go with whatever is drawn from it. */
    public static List<WeatherReading> of(WeatherYear year) {
        return IntStream.range(0, year.size())
                .mapToObj(row -> new WeatherReading(
                        year.time(row),
                        OptionalDouble.of(year.celsius(row)),
                        OptionalDouble.of(Units.fractionFromPercent(year.rhPercent(row))),
                        year.windMPerS(row)))
                .toList();
    }
}
