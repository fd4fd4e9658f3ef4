package org.limedry.study.airing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;
import org.limedry.room.AirExchange;
import org.limedry.room.AirFlow;
import org.limedry.room.OpenState;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.History;
import org.limedry.simulation.Series;

/** EXACT throughout: the flow turned back into its parts and put together otherwise. */
final class FreshAirTest {
    private static final Instant FROM = Instant.parse("2026-10-05T00:00:00Z");
    private static final Schedule DAY = Schedule.always(FROM.plus(Duration.ofHours(2)), FROM.plus(Duration.ofHours(4)));

    @Property(tries = 100)
    void otherwise_anyWeather_isTheFlowOfTheOtherWays(
            @ForAll @DoubleRange(min = -10.0, max = 25.0) double outdoorCelsius,
            @ForAll @DoubleRange(min = 0.0, max = 12.0) double windMPerS,
            @ForAll @DoubleRange(min = 0.2, max = 3.0) double factor) {
        AirWays here = ways(0.5, 1.0);
        AirWays there = ways(1.4, factor);
        Instant hour = FROM.plus(Duration.ofHours(3));
        double flow = flow(here, hour, outdoorCelsius, windMPerS);

        double found = here.otherwiseM3PerS(flow, there, hour);

        // The square of the leakage is taken from a square up to a hundred times as large.
        assertEquals(flow(there, hour, outdoorCelsius, windMPerS), found, 1e-10);
    }

    private static double flow(AirWays ways, Instant hour, double outdoorCelsius, double windMPerS) {
        OpenState open = OpenState.of(ways.room(), hour.minusSeconds(1), ways.air());
        return AirFlow.freshAirM3PerS(open, 12.0, outdoorCelsius, windMPerS);
    }

    // Hours 1 and 2 shut, 3 and 4 open: 45 m3 leaking 0.8 an hour give 0.01 m3/s, with half the leakage 0.005.
    @Test
    void over_twoHoursShutTwoOpen_isTheMeanOfFour() {
        History history = new History(
                IntStream.rangeClosed(0, 4)
                        .mapToObj(hour -> FROM.plus(Duration.ofHours(hour)))
                        .toList(),
                Series.of(),
                Series.of(),
                List.of(),
                List.of(),
                List.of());
        double open = Math.hypot(0.03, 0.01) + 0.002;
        Series flow = Series.of(0.5, 0.012, 0.012, open, open);
        HourSpan wait = HourSpan.of(history, FROM, FROM.plus(Duration.ofHours(4)));

        FreshAir found =
                FreshAir.over(history, flow, wait, new FreshAir.Ways(ways(0.4, 0.5), ways(0.8, 1.0), ways(1.6, 2.0)));

        double rounding = 1e-15; // sums of numbers of order 0.01
        assertEquals((0.012 + open) / 2.0, found.likelyM3PerS(), rounding);
        assertEquals((0.005 + Math.hypot(0.015, 0.005)) / 2.0 + 0.002, found.lowM3PerS(), rounding);
        assertEquals((0.02 + Math.hypot(0.06, 0.02)) / 2.0 + 0.002, found.highM3PerS(), rounding);
    }

    private static AirWays ways(double leakagePerHour, double factor) {
        Opening door = new Opening("door", 0.95, 2.0, 0.0, "N", Optional.empty(), DAY);
        Plant fan = new Plant.Fan("fan", 0.002, Schedule.always(FROM, FROM.plus(Duration.ofDays(1))));
        RoomPlan room = new RoomPlan(
                "store", 45.0, 18.0, 2.5, 0.0, leakagePerHour, 0.0, List.of(door), List.of(fan), 8.0, 0.85);
        return new AirWays(room, new AirExchange(AirExchange.Balance.DRY_AIR_MASS, 101_325.0, factor, 0.4, 0.60));
    }
}
