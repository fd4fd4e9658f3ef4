package org.limedry.wall;

import org.limedry.material.Material;
import org.limedry.material.SuctionTable;
import org.limedry.units.Check;

/**
 * One layer of a wall as the run begins.
 *
 * @param name what the report calls it; not blank
 * @param material what it is made of
 * @param thicknessM thickness, m; above 0
 * @param startCelsius starting temperature, C
 * @param startSuctionPa starting suction, Pa; above 0, or at least 0 for a tabulated material
 */
public record LayerPlan(String name, Material material, double thicknessM, double startCelsius, double startSuctionPa) {
    public LayerPlan {
        Check.notBlank(name, "name");
        Check.positive(thicknessM, "thicknessM", "m");
        Check.finite(startCelsius, "startCelsius", "C");
        if (material.retention() instanceof SuctionTable) {
            Check.nonNegative(startSuctionPa, "startSuctionPa", "Pa");
        } else {
            Check.positive(startSuctionPa, "startSuctionPa", "Pa");
        }
    }

    /** Tells whether the functions of its material are tables, met to the letter. */
    boolean isTabulated() {
        return material.retention() instanceof SuctionTable;
    }
}
