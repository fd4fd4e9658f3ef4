package org.limedry.study.airing;

import java.time.Instant;
import org.limedry.simulation.History;
import org.limedry.simulation.Series;
import org.limedry.units.Check;

/**
 * Fresh air of a room, mean over day and night: a range, since nobody can know what doors and cracks let through.
 *
 * @param lowM3PerS low, m3/s; at least 0
 * @param likelyM3PerS likely, m3/s; at least 0
 * @param highM3PerS high, m3/s; at least 0
 */
public record FreshAir(double lowM3PerS, double likelyM3PerS, double highM3PerS) {
    public FreshAir {
        Check.nonNegative(lowM3PerS, "lowM3PerS", "m3/s");
        Check.nonNegative(likelyM3PerS, "likelyM3PerS", "m3/s");
        Check.nonNegative(highM3PerS, "highM3PerS", "m3/s");
    }

    /**
     * The ways of the likely run and two others.
     *
     * @param low with little air
     * @param likely of the run that is looked at
     * @param high with much air
     */
    record Ways(AirWays low, AirWays likely, AirWays high) {}

    /** Returns the mean over the hours of a wait. */
    static FreshAir over(History history, Series flowM3PerS, HourSpan wait, Ways ways) {
        return new FreshAir(
                wait.mean(hour -> otherwise(history, flowM3PerS, hour, ways, ways.low())),
                wait.mean(flowM3PerS::at),
                wait.mean(hour -> otherwise(history, flowM3PerS, hour, ways, ways.high())));
    }

    private static double otherwise(History history, Series flowM3PerS, int hour, Ways ways, AirWays other) {
        Instant at = history.times().get(hour);
        return ways.likely().otherwiseM3PerS(flowM3PerS.at(hour), other, at);
    }
}
