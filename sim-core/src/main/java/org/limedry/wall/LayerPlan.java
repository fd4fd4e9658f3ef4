package org.limedry.wall;

import java.time.Instant;
import java.util.List;
import org.limedry.material.Material;
import org.limedry.material.SuctionTable;
import org.limedry.units.Check;

/**
 * One layer of a wall, without lime: it neither sets nor carbonates.
 *
 * @param name what the report calls it; not blank
 * @param material what it is made of
 * @param thicknessM thickness, m; above 0
 * @param startCelsius temperature at the start, or as laid, C
 * @param startSuctionPa suction at the start, or as laid, Pa; above 0, or at least 0 for a tabulated material
 * @param laid when it is laid on the inside of those before it; {@link Instant#MIN} if it is there from the start
 * @param nodesM places from its outer end where nodes are wanted, m; only for a tabulated material
 */
public record LayerPlan(
        String name,
        Material material,
        double thicknessM,
        double startCelsius,
        double startSuctionPa,
        Instant laid,
        List<Double> nodesM) {
    public LayerPlan {
        Check.notBlank(name, "name");
        Check.positive(thicknessM, "thicknessM", "m");
        Check.finite(startCelsius, "startCelsius", "C");
        if (material.retention() instanceof SuctionTable) {
            Check.nonNegative(startSuctionPa, "startSuctionPa", "Pa");
        } else {
            Check.positive(startSuctionPa, "startSuctionPa", "Pa");
        }
        nodesM = List.copyOf(nodesM);
    }

    /** Plans a layer that is there from the start. */
    public LayerPlan(String name, Material material, double thicknessM, double startCelsius, double startSuctionPa) {
        this(name, material, thicknessM, startCelsius, startSuctionPa, Instant.MIN, List.of());
    }

    /** Tells whether it is there from the start. */
    public boolean isThereFromTheStart() {
        return laid.equals(Instant.MIN);
    }

    /** Tells whether the functions of its material are tables, met to the letter. */
    boolean isTabulated() {
        return material.retention() instanceof SuctionTable;
    }
}
