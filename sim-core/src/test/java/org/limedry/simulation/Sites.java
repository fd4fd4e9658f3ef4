package org.limedry.simulation;

import java.util.List;
import java.util.OptionalDouble;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.RoomPlan;
import org.limedry.wall.WallPlan;

/** Scenarios with one part exchanged. */
final class Sites {
    private Sites() {}

    static Scenario with(Scenario site, List<RoomPlan> rooms, List<WallPlan> walls) {
        return of(site, rooms, walls, site.rule());
    }

    /** Returns the site with coats that count as ready at a suction, which a coat reaches within days. */
    static Scenario readyAt(Scenario site, double suctionPa) {
        OptionalDouble none = OptionalDouble.empty();
        ReadinessRule rule = new ReadinessRule("early", OptionalDouble.of(suctionPa), none, none, none);
        return of(site, site.rooms(), site.walls(), rule);
    }

    private static Scenario of(Scenario site, List<RoomPlan> rooms, List<WallPlan> walls, ReadinessRule rule) {
        return new Scenario(
                site.site(),
                site.from(),
                site.until(),
                site.outdoors(),
                site.courses(),
                rooms,
                walls,
                site.coats(),
                rule,
                site.handTests(),
                site.physics(),
                site.accuracy());
    }
}
