package org.limedry.study.airing;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** Findings after made-up laws in place of runs. */
final class AiringFixture {
    static final Optional<SteadyHeat> COLD = Optional.empty();
    static final Optional<SteadyHeat> HEATED = Optional.of(new SteadyHeat(2000.0, 12.0));
    private static final AiringFinding.Watch QUIET = new AiringFinding.Watch(false, false);

    private AiringFixture() {}

    /** A line over door hours; every hour gives 0.01 m3/s on top of 0.01 m3/s through cracks. */
    static AiringLine line(Optional<SteadyHeat> heat, DoubleUnaryOperator daysOfHours, double... hours) {
        return new AiringLine(
                heat,
                DoubleStream.of(hours)
                        .mapToObj(one -> finding(Airing.doors(one), heat, daysOfHours.applyAsDouble(one), QUIET))
                        .toList());
    }

    static AiringFinding finding(Airing airing, Optional<SteadyHeat> heat, double days, AiringFinding.Watch watch) {
        double air = 0.01 + 0.01 * airing.doorHours() + airing.fanM3PerS();
        return new AiringFinding(
                AiringLevel.daily(airing, heat),
                RoomWait.likely(days(days)),
                new FreshAir(0.5 * air, air, 2.0 * air),
                new Hardening(1.0, 0.02, 100.0, 350.0),
                watch,
                8.0 - 0.1 * airing.doorHours(),
                new AiringFinding.Water(20.0, 5.0, 0.0),
                0.0);
    }

    static AiringFinding quiet(Airing airing, Optional<SteadyHeat> heat, double days) {
        return finding(airing, heat, days, QUIET);
    }

    static RoomWait ranged(double likely, List<Double> members) {
        return new RoomWait(days(Collections.min(members)), days(likely), days(Collections.max(members)), members);
    }

    static OptionalDouble days(double days) {
        return Double.isFinite(days) ? OptionalDouble.of(days) : OptionalDouble.empty();
    }

    static AiringFinding with(AiringFinding one, RoomWait waiting) {
        return new AiringFinding(
                one.level(),
                waiting,
                one.freshAir(),
                one.hardening(),
                one.watch(),
                one.wallCelsius(),
                one.water(),
                one.heatKwh());
    }

    static AiringFinding with(AiringFinding one, AiringFinding.Water water) {
        return new AiringFinding(
                one.level(),
                one.waiting(),
                one.freshAir(),
                one.hardening(),
                one.watch(),
                one.wallCelsius(),
                water,
                one.heatKwh());
    }
}
