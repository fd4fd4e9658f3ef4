package org.limedry.climate;

import java.time.Instant;

/**
 * Outdoor air as a run sees it, linear between hours.
 *
 * <p>Does not hold rain or sun.
 */
public interface Outdoors {
    /**
     * Returns the air over a time step as straight lines that keep the mean and the first moment of the true course.
     *
     * @param from start of the step
     * @param until end of the step, later than {@code from} by at most a few hours
     */
    Piece over(Instant from, Instant until);

    /**
     * A straight-line piece of weather: values at its start and its end.
     *
     * @param startCelsius air temperature at the start, C
     * @param endCelsius air temperature at the end, C
     * @param startVapourPressurePa vapour pressure at the start, Pa
     * @param endVapourPressurePa vapour pressure at the end, Pa
     * @param startWindMPerS wind at the building (shelter applied) at the start, m/s
     * @param endWindMPerS wind at the building at the end, m/s
     */
    record Piece(
            double startCelsius,
            double endCelsius,
            double startVapourPressurePa,
            double endVapourPressurePa,
            double startWindMPerS,
            double endWindMPerS) {}
}
