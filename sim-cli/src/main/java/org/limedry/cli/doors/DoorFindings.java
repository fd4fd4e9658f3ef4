package org.limedry.cli.doors;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.limedry.cli.safety.Situation;
import org.limedry.study.doors.DoorDay;
import org.limedry.study.doors.DoorNight;
import org.limedry.study.doors.DoorPlan;
import org.limedry.study.doors.DoorWay;

/**
 * A plan for the doors and what it is worth.
 *
 * @param site what the user calls the job
 * @param invented whether the scenario says that it is invented
 * @param zone clock of the site
 * @param doors names of the doors and windows that the plan is for
 * @param weather where the air outdoors comes from: "mullingar-2017, a weather year" or "forecast kiln.csv"
 * @param forecast whether that is a forecast
 * @param plan the plan
 * @param nights one entry for each day
 * @param waits the coat whose date the doors move, if one waits: "north wall, coat 1"
 * @param ways what came of each way
 * @param situation what decides which cautions are due
 */
record DoorFindings(
        String site,
        boolean invented,
        ZoneId zone,
        List<String> doors,
        String weather,
        boolean forecast,
        DoorPlan plan,
        List<DoorNight> nights,
        Optional<String> waits,
        Map<DoorWay, WayResult> ways,
        Situation situation) {
    DoorFindings {
        doors = List.copyOf(doors);
        nights = List.copyOf(nights);
        ways = new EnumMap<>(ways);
    }

    String room() {
        return plan.question().room();
    }

    /** Returns what came of a way. */
    WayResult of(DoorWay way) {
        return Objects.requireNonNull(ways.get(way));
    }

    List<DoorDay> days() {
        return plan.days();
    }
}
