package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.SensorError;

/**
 * Two loggers that lay beside each other: how far apart they read, and what is left when that is taken off.
 *
 * @param pairs readings of both at the same time
 * @param span from the first pair to the last
 * @param temperatureK by how much the second reads warmer than the first, K; its spread beside it
 * @param relativeHumidity by how much the second reads damper than the first, fraction; its spread beside it
 */
public record SideBySide(int pairs, Duration span, Offset temperatureK, Offset relativeHumidity) {
    /** Fewer pairs say nothing about a spread. */
    public static final int LEAST_PAIRS = 24;

    /** Wild readings: a twentieth at each end is set aside. */
    private static final int CUT_EACH_END = 20;

    /**
     * Standard deviation of a normal distribution without its outer twentieths: {@code sqrt(1 - 2 z f(z) / 0.9)} with z =
     * 1.644854, its 95 % quantile, and f its density there, 0.103136.
     */
    private static final double SPREAD_KEPT = 0.789313;

    /**
     * A difference of two loggers.
     *
     * @param median difference, second less first: the median, so that a few wild readings do not move it
     * @param spread standard deviation of what is left, of all but the outer twentieths
     */
    public record Offset(double median, double spread) {
        /** Returns the error of one of the two sensors when the offset is taken off: both have it, so it is 1/sqrt 2. */
        public double sensorError() {
            return spread / Math.sqrt(2.0);
        }

        private static Offset of(List<Double> differences) {
            double[] all = differences.stream()
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            int cut = all.length / CUT_EACH_END;
            double[] kept = Arrays.copyOfRange(all, cut, all.length - cut);
            double spread = new StandardDeviation().evaluate(kept);
            return new Offset(new Median().evaluate(all), cut == 0 ? spread : spread / SPREAD_KEPT);
        }
    }

    /**
     * Compares two loggers.
     *
     * @param tolerance how far apart two readings may lie to be of the same time
     * @return nothing if fewer than {@link #LEAST_PAIRS} readings of both are of the same time
     */
    public static Optional<SideBySide> of(Readings first, Readings second, Duration tolerance) {
        List<Pair> pairs = Pair.of(first, second, tolerance);
        List<Double> kelvin = differences(pairs, LoggedReading::celsius);
        List<Double> humidity = differences(pairs, LoggedReading::relativeHumidity);
        if (Math.min(kelvin.size(), humidity.size()) < LEAST_PAIRS) {
            return Optional.empty();
        }
        Duration span = Duration.between(
                pairs.get(0).one().at(), pairs.get(pairs.size() - 1).one().at());
        return Optional.of(new SideBySide(pairs.size(), span, Offset.of(kelvin), Offset.of(humidity)));
    }

    private static List<Double> differences(List<Pair> pairs, Function<LoggedReading, OptionalDouble> of) {
        return pairs.stream()
                .filter(pair -> of.apply(pair.one()).isPresent()
                        && of.apply(pair.other()).isPresent())
                .map(pair -> of.apply(pair.other()).getAsDouble()
                        - of.apply(pair.one()).getAsDouble())
                .toList();
    }

    /** Returns the error of one sensor once the difference is taken off. */
    public SensorError sensorError() {
        return new SensorError(temperatureK.sensorError(), relativeHumidity.sensorError());
    }
}
