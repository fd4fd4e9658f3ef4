package org.limedry.wall;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Distances between the nodes of a wall that ends in a sealed middle: for tests that integrate over them. */
public final class WallNodes {
    private WallNodes() {}

    /** Returns the distances in one old layer, from the sealed end to the face, and then in the coats on it, m. */
    public static double[] linksM(double layerM, double gridFactor, double... coatsM) {
        double[] layer = Grid.layer(layerM, gridFactor, Grid.End.STILL, Grid.End.FACE);
        return DoubleStream.concat(
                        Arrays.stream(layer),
                        Arrays.stream(coatsM).flatMap(coatM -> Arrays.stream(Grid.coat(coatM, gridFactor))))
                .toArray();
    }
}
