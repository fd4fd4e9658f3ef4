package org.limedry.cli.site;

import org.limedry.wall.Background;
import org.limedry.wall.WallPlan;

/**
 * A face of a room with everything settled but what nobody can know.
 *
 * @param name name that is unique on the site
 * @param room its room
 * @param kind what a report may say about it
 * @param areaM2 area, m2
 * @param build what it is made of
 * @param beyond what lies behind it
 * @param risingDampKgPerS water drawn from the ground, kg/s
 */
record WallSpec(
        String name,
        String room,
        WallPlan.Kind kind,
        double areaM2,
        Build build,
        WallKeys.Beyond beyond,
        double risingDampKgPerS) {
    /** What a face is made of. */
    sealed interface Build {}

    /**
     * A wall of a background.
     *
     * @param thicknessM thickness, m
     */
    record Wall(Background background, double thicknessM, Wetness wetness, WallKeys.Finish finish) implements Build {}

    /** A floor on a metre of soil. */
    record Ground(RoomKeys.Floor floor) implements Build {}

    /** A ceiling under a closed void. */
    record Overhead(RoomKeys.Ceiling ceiling) implements Build {}

    /**
     * A pane of glass.
     *
     * @param transmittanceWPerM2K U value, films included, W/(m2 K)
     */
    record Pane(double transmittanceWPerM2K) implements Build {}
}
