package org.limedry.wall;

import java.util.List;
import java.util.stream.Stream;
import org.limedry.units.Check;

/**
 * One wall, floor, ceiling or glass pane: one-dimensional, from its outer side to the room it is listed under.
 *
 * @param name what the user calls it, unique on the site ("store north"); not blank
 * @param kind what the report may say about it
 * @param areaM2 area, m2; above 0
 * @param layers from the outer side to the room
 * @param outside what the first layer looks at
 * @param inside what the last layer looks at; coats go on this side
 * @param risingDampKgPerS water drawn from the ground into the whole wall, kg/s; at least 0
 * @param later layers laid on the inner face in the course of a run, in that order
 * @param meshing how it is divided into cells
 */
public record WallPlan(
        String name,
        Kind kind,
        double areaM2,
        List<LayerPlan> layers,
        Side outside,
        Side inside,
        double risingDampKgPerS,
        List<LaterLayer> later,
        Meshing meshing) {
    /** What a wall is to the reader of a report. */
    public enum Kind {
        /** A wall the user listed. */
        LISTED,
        /** A face the user did not list, made up from the principal background. */
        REST,
        /** The ceiling, made up. */
        CEILING,
        /** The floor. */
        FLOOR,
        /** A pane of glass: water runs off it to the sill. */
        PANE
    }

    public WallPlan {
        Check.notBlank(name, "name");
        Check.positive(areaM2, "areaM2", "m2");
        layers = List.copyOf(layers);
        Check.notEmpty(layers, "layers");
        Check.nonNegative(risingDampKgPerS, "risingDampKgPerS", "kg/s");
        later = List.copyOf(later);
        long tabulated = layersAndLater(layers, later)
                .filter(layer -> layer.isTabulated())
                .count();
        Check.that(
                tabulated == 0 || tabulated == layers.size() + later.size(),
                "layers",
                "all tabulated or none",
                tabulated + " tabulated");
    }

    /** Plans a wall of a site: nothing laid later but coats, and the grid of sites. */
    public WallPlan(
            String name,
            Kind kind,
            double areaM2,
            List<LayerPlan> layers,
            Side outside,
            Side inside,
            double risingDampKgPerS) {
        this(name, kind, areaM2, layers, outside, inside, risingDampKgPerS, List.of(), new Meshing.OfSites());
    }

    /** Tells whether the functions of its materials are tables, met to the letter. */
    public boolean isTabulated() {
        return layers.get(0).isTabulated();
    }

    private static Stream<LayerPlan> layersAndLater(List<LayerPlan> layers, List<LaterLayer> later) {
        return Stream.concat(layers.stream(), later.stream().map(LaterLayer::layer));
    }
}
