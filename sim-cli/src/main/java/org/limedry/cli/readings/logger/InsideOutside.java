package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.limedry.air.MoistAir;
import org.limedry.climate.DryingPower;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.SensorError;

/**
 * A logger in the room against one outdoors: what the air outdoors could carry out, and how often that can be told.
 *
 * @param pairs readings of both at the same time
 * @param meanKgPerM3 mean drying power, kg/m3
 * @param errorKgPerM3 error of it by the sensors, kg/m3; they are wrong in the same way at all times, so it does not
 *     shrink with the number of readings
 * @param drier times at which the air outdoors was drier by more than twice the error
 * @param wetter times at which it was wetter by more than that
 */
public record InsideOutside(int pairs, double meanKgPerM3, double errorKgPerM3, long drier, long wetter) {
    private static final double STANDARD_PRESSURE_PA = 101_325.0;
    private static final double COLDEST_CELSIUS = -40.0;
    private static final double HOTTEST_CELSIUS = 59.0;

    /**
     * Compares two loggers.
     *
     * @return nothing if no two readings with temperature and humidity are of the same time
     */
    public static Optional<InsideOutside> of(Readings inside, Readings outside, Duration tolerance, SensorError error) {
        List<DryingPower> powers = Pair.of(inside, outside, tolerance).stream()
                .filter(pair -> isAir(pair.one()) && isAir(pair.other()))
                .map(pair -> DryingPower.between(air(pair.one()), air(pair.other()), error))
                .toList();
        if (powers.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new InsideOutside(
                powers.size(),
                powers.stream().mapToDouble(DryingPower::kgPerM3).average().orElseThrow(),
                powers.stream().mapToDouble(DryingPower::errorKgPerM3).average().orElseThrow(),
                powers.stream()
                        .filter(power -> power.isTold() && power.kgPerM3() > 0.0)
                        .count(),
                powers.stream()
                        .filter(power -> power.isTold() && power.kgPerM3() < 0.0)
                        .count()));
    }

    /** Returns the drying power of 8 C and 85 % in a room against 5 C and 90 % outdoors, an ordinary winter day. */
    public static DryingPower ofAWinterDay(SensorError error) {
        return DryingPower.between(
                MoistAir.of(8.0, 0.85, STANDARD_PRESSURE_PA), MoistAir.of(5.0, 0.90, STANDARD_PRESSURE_PA), error);
    }

    private static boolean isAir(LoggedReading reading) {
        double celsius = reading.celsius().orElse(Double.NaN);
        return celsius >= COLDEST_CELSIUS
                && celsius <= HOTTEST_CELSIUS
                && reading.relativeHumidity().isPresent();
    }

    private static MoistAir air(LoggedReading reading) {
        return MoistAir.of(
                reading.celsius().orElseThrow(), reading.relativeHumidity().orElseThrow(), STANDARD_PRESSURE_PA);
    }
}
