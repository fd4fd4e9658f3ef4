package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import org.limedry.room.AirExchange;
import org.limedry.room.OpenState;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Scenario;

/**
 * How fresh air finds its way into a room: its cracks, its openings and its fans.
 *
 * @param room the room
 * @param air how air flows
 */
record AirWays(RoomPlan room, AirExchange air) {
    private static final Duration JUST_BEFORE = Duration.ofSeconds(1);

    static AirWays of(AiredRoom room, Scenario scenario) {
        return new AirWays(room.plan(scenario), scenario.physics().air());
    }

    /**
     * Returns the fresh air that would come in other ways under the same weather and with the same things open.
     *
     * <p>{@code Q' = sqrt((f'/f)^2 ((Q - F)^2 - L^2) + L'^2) + F'} with the factor on openings f, leakage L and fans F: the
     * inverse and then the forward form of {@link org.limedry.room.AirFlow#freshAirM3PerS}, at the same room air. In truth
     * another flow also gives another room air, whose part is small.
     *
     * @param flowM3PerS what came in these ways, m3/s
     * @param other the other ways
     * @param hour end of the hour for which it is asked
     * @return m3/s
     */
    double otherwiseM3PerS(double flowM3PerS, AirWays other, Instant hour) {
        OpenState here = at(hour);
        OpenState there = other.at(hour);
        double unaided = flowM3PerS - here.fansM3PerS();
        double factor = there.openingFactor() / here.openingFactor();
        double throughOpenings2 =
                here.anyOpen() ? Math.max(0.0, unaided * unaided - here.leakageM3PerS() * here.leakageM3PerS()) : 0.0;
        double leakage2 = there.leakageM3PerS() * there.leakageM3PerS();
        return Math.sqrt(factor * factor * throughOpenings2 + leakage2) + there.fansM3PerS();
    }

    /** What is switched on the hour counts from then on, and an hour of a history is written before. */
    private OpenState at(Instant hour) {
        return OpenState.of(room, hour.minus(JUST_BEFORE), air);
    }
}
