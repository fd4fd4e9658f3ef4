package org.limedry.proof.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.limedry.climate.Outdoors;

/**
 * Air given as functions of the hours since a start, as straight pieces that keep mean and first moment.
 *
 * @param start hour 0
 * @param celsius temperature by hour, C
 * @param vapourPa vapour pressure by hour, Pa
 * @param windMPerS wind by hour, m/s
 */
public record Course(
        Instant start, DoubleUnaryOperator celsius, DoubleUnaryOperator vapourPa, DoubleUnaryOperator windMPerS)
        implements Outdoors {
    private static final double NANOS_PER_HOUR = 3.6e12;
    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(3, 0.0, 1.0);

    /** Returns air that never changes, without wind. */
    public static Course steady(Instant start, double celsius, double vapourPa) {
        return new Course(start, hour -> celsius, hour -> vapourPa, hour -> 0.0);
    }

    @Override
    public Piece over(Instant from, Instant until) {
        double first = hours(from);
        double last = hours(until);
        double[] t = line(celsius, first, last);
        double[] p = line(vapourPa, first, last);
        double[] u = line(windMPerS, first, last);
        return new Piece(t[0], t[1], p[0], p[1], u[0], u[1]);
    }

    private double hours(Instant instant) {
        return Duration.between(start, instant).toNanos() / NANOS_PER_HOUR;
    }

    private static double[] line(DoubleUnaryOperator f, double first, double last) {
        double mean = GAUSS.integrate(s -> f.applyAsDouble(first + s * (last - first)));
        double moment = GAUSS.integrate(s -> s * f.applyAsDouble(first + s * (last - first)));
        return new double[] {4.0 * mean - 6.0 * moment, 6.0 * moment - 2.0 * mean};
    }
}
