package org.limedry.room;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.climate.Schedule;

/** An invented room of 45 m3 for the tests here. */
final class RoomFixture {
    static final Instant NOON = Instant.parse("2026-11-10T12:00:00Z");
    static final Instant NIGHT = Instant.parse("2026-11-10T23:00:00Z");
    static final Schedule BY_DAY =
            Schedule.always(Instant.parse("2026-11-10T08:00:00Z"), Instant.parse("2026-11-10T16:00:00Z"));

    private RoomFixture() {}

    static RoomPlan with(List<Opening> openings, List<Plant> plant, double leakagePerHour) {
        return new RoomPlan("store", 45.0, 18.0, 2.5, 150e3, leakagePerHour, 0.0, openings, plant, 8.0, 0.85);
    }

    static Opening outdoors(double widthM, double heightM, double sillM, String facing) {
        return new Opening("opening", widthM, heightM, sillM, facing, Optional.empty(), BY_DAY);
    }

    static Opening door(double widthM, double heightM) {
        return new Opening("inner door", widthM, heightM, 0.0, "", Optional.of("hall"), BY_DAY);
    }

    static OpenState open(Opening... openings) {
        return OpenState.of(with(List.of(openings), List.of(), 0.0), NOON, AirExchange.ordinary());
    }
}
