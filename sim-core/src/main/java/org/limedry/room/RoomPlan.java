package org.limedry.room;

import java.util.List;
import org.limedry.units.Check;

/**
 * One room as the run begins.
 *
 * @param name what the user calls it, unique on the site
 * @param volumeM3 air volume, m3; above 0
 * @param floorAreaM2 floor area, m2; above 0
 * @param heightM mean height, m; above 0
 * @param fittingsJPerK heat capacity of what stands in the room and follows its air, J/K; at least 0
 * @param leakagePerHour air changes through cracks, 1/h; at least 0
 * @param earthFloorKgPerM2S water given by a bare earth floor at most, kg/(m2 s); 0 for other floors
 * @param openings doors and windows; a door between two rooms is listed once, under either
 * @param plant what has been brought in
 * @param startCelsius air temperature as the run begins, C
 * @param startRelativeHumidity relative humidity as the run begins, fraction
 */
public record RoomPlan(
        String name,
        double volumeM3,
        double floorAreaM2,
        double heightM,
        double fittingsJPerK,
        double leakagePerHour,
        double earthFloorKgPerM2S,
        List<Opening> openings,
        List<Plant> plant,
        double startCelsius,
        double startRelativeHumidity) {
    public RoomPlan {
        Check.notBlank(name, "name");
        Check.positive(volumeM3, "volumeM3", "m3");
        Check.positive(floorAreaM2, "floorAreaM2", "m2");
        Check.positive(heightM, "heightM", "m");
        Check.nonNegative(fittingsJPerK, "fittingsJPerK", "J/K");
        Check.nonNegative(leakagePerHour, "leakagePerHour", "1/h");
        Check.nonNegative(earthFloorKgPerM2S, "earthFloorKgPerM2S", "kg/(m2 s)");
        openings = List.copyOf(openings);
        plant = List.copyOf(plant);
        Check.finite(startCelsius, "startCelsius", "C");
        Check.inOpenClosed(startRelativeHumidity, 0.0, 1.0, "startRelativeHumidity", "");
    }

    /** Returns this room with other openings. */
    public RoomPlan withOpenings(List<Opening> others) {
        return with(leakagePerHour, others, plant);
    }

    /** Returns this room with other plant. */
    public RoomPlan withPlant(List<Plant> other) {
        return with(leakagePerHour, openings, other);
    }

    /** Returns this room with another leakage, 1/h. */
    public RoomPlan withLeakage(double perHour) {
        return with(perHour, openings, plant);
    }

    private RoomPlan with(double otherLeakagePerHour, List<Opening> otherOpenings, List<Plant> otherPlant) {
        return new RoomPlan(
                name,
                volumeM3,
                floorAreaM2,
                heightM,
                fittingsJPerK,
                otherLeakagePerHour,
                earthFloorKgPerM2S,
                otherOpenings,
                otherPlant,
                startCelsius,
                startRelativeHumidity);
    }
}
