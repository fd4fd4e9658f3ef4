package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.limedry.climate.Outdoors;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Electric heat with a thermostat, day and night.
 *
 * @param watts heat at full power, W; above 0
 * @param holdsCelsius air temperature that it holds as far as its power goes, C
 */
public record SteadyHeat(double watts, double holdsCelsius) {
    private static final double WATTS_PER_M3 = 30.0;
    private static final double LEAST_KW = 1.0;
    private static final double MOST_KW = 3.0;
    private static final double ABOVE_OUTDOORS_K = 4.0;
    private static final double COOLEST_CELSIUS = 10.0;
    private static final double WARMEST_CELSIUS = 20.0;

    public SteadyHeat {
        Check.positive(watts, "watts", "W");
        Check.finite(holdsCelsius, "holdsCelsius", "C");
    }

    /**
     * Returns the power of a heater that a small firm would bring into a room: 30 W for each m3, in whole kW, 1 at least and
     * 3 at most, which is what one ordinary socket gives. Judgement, no source.
     *
     * @param volumeM3 air volume, m3; above 0
     * @return W
     */
    public static double gentleWatts(double volumeM3) {
        Check.positive(volumeM3, "volumeM3", "m3");
        double kw = Math.ceil(volumeM3 * WATTS_PER_M3 / Units.wattsFromKw(1.0));
        return Units.wattsFromKw(Math.min(MOST_KW, Math.max(LEAST_KW, kw)));
    }

    /**
     * Returns an air temperature that is gentle: 4 K above the mean outdoors, in whole degrees, from 10 to 20 C. Air that is
     * 85 % full outside is about 65 % full so much warmer: it dries, and is no drier than a fresh coat stands in a draught
     * ({@link org.limedry.lime.TooFast#DRAUGHT_COUNTS_BELOW}). Judgement, no source.
     *
     * @param outdoorCelsius mean outdoors, C
     * @return C
     */
    public static double gentleCelsius(double outdoorCelsius) {
        Check.finite(outdoorCelsius, "outdoorCelsius", "C");
        double aimed = Math.rint(outdoorCelsius + ABOVE_OUTDOORS_K);
        return Math.min(WARMEST_CELSIUS, Math.max(COOLEST_CELSIUS, aimed));
    }

    /** Returns the mean outdoors over whole hours, C. */
    public static double meanCelsius(Outdoors outdoors, Instant from, Instant until) {
        double sum = 0.0;
        long hours = Math.max(1, Duration.between(from, until).toHours());
        for (long hour = 0; hour < hours; hour++) {
            Instant at = from.plus(hour, ChronoUnit.HOURS);
            Outdoors.Piece piece = outdoors.over(at, at.plus(1, ChronoUnit.HOURS));
            sum += 0.5 * (piece.startCelsius() + piece.endCelsius());
        }
        return sum / hours;
    }
}
