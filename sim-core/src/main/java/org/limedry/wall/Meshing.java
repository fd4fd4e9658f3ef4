package org.limedry.wall;

import java.util.List;

/** How a wall is divided into cells. */
public sealed interface Meshing {
    /** The grid of sites. */
    record OfSites() implements Meshing {}

    /**
     * A finer grid, graded from every face and contact however thin or deep the layers are, with nodes at asked depths as
     * far as there are nodes to move there.
     *
     * @param depthsM depths from the outer face, m
     */
    record Graded(List<Double> depthsM) implements Meshing {
        public Graded {
            depthsM = List.copyOf(depthsM);
        }
    }
}
