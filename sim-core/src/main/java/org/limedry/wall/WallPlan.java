package org.limedry.wall;

import java.util.List;
import java.util.Optional;
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
 */
public record WallPlan(
        String name,
        Kind kind,
        double areaM2,
        List<LayerPlan> layers,
        Side outside,
        Side inside,
        double risingDampKgPerS) {
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
        Check.that(layers.get(0).isThereFromTheStart(), "layers", "led by one that is there from the start", name);
        for (int k = 1; k < layers.size(); k++) {
            boolean inOrder = !layers.get(k).laid().isBefore(layers.get(k - 1).laid());
            Check.that(
                    inOrder,
                    "layers",
                    "in the order in which they are laid",
                    layers.get(k).name());
            boolean ofOneKind = layers.get(k).isTabulated() == layers.get(0).isTabulated();
            Check.that(
                    ofOneKind, "layers", "all tabulated or none", layers.get(k).name());
        }
    }

    /** Returns the layers that are there from the start. */
    public List<LayerPlan> startLayers() {
        return layers.stream().filter(LayerPlan::isThereFromTheStart).toList();
    }

    /** Returns the layers that are laid on the inner face in the course of a run. */
    public List<LayerPlan> laterLayers() {
        return layers.stream().filter(layer -> !layer.isThereFromTheStart()).toList();
    }

    /** Tells whether the functions of its materials are tables, met to the letter. */
    public boolean isTabulated() {
        return layers.get(0).isTabulated();
    }

    /** Returns the room that the side on which coats go on faces, if it faces one. */
    public Optional<String> innerRoom() {
        return inside instanceof Side.Room side ? Optional.of(side.room()) : Optional.empty();
    }
}
