package org.limedry.wall;

import java.util.List;

/** The state of a wall as a run begins. */
final class WallStart {
    private WallStart() {}

    /**
     * Fills every node: its water is the sum of what its halves hold, its temperature their mean by heat capacity.
     *
     * @param layers the layers as planned
     * @param mesh the mesh of the wall
     * @param state the state to fill; ln p is a first guess, for the owner to find from the water
     */
    static void fill(List<LayerPlan> layers, WallMesh mesh, WallState state) {
        for (int node = 0; node < mesh.nodes(); node++) {
            LayerPlan before = layers.get(mesh.layerOfLink(Math.max(0, node - 1)));
            LayerPlan after = layers.get(mesh.layerOfLink(Math.min(node, mesh.nodes() - 2)));
            double logBefore = mesh.scale().of(before.startSuctionPa());
            double logAfter = mesh.scale().of(after.startSuctionPa());
            double water = mesh.filmKgPerM2(node, node == 0 ? logAfter : logBefore);
            double heatBefore = 0.0;
            double heatAfter = 0.0;
            if (node > 0) {
                water += mesh.halfBeforeM(node) * mesh.table(node - 1).waterKgPerM3(logBefore);
                heatBefore = mesh.halfBeforeM(node) * mesh.table(node - 1).dryHeatCapacityJPerM3K();
            }
            if (node < mesh.nodes() - 1) {
                water += mesh.halfAfterM(node) * mesh.table(node).waterKgPerM3(logAfter);
                heatAfter = mesh.halfAfterM(node) * mesh.table(node).dryHeatCapacityJPerM3K();
            }
            state.celsius[node] =
                    (heatBefore * before.startCelsius() + heatAfter * after.startCelsius()) / (heatBefore + heatAfter);
            state.waterKgPerM2[node] = water;
            state.logSuction[node] = Math.min(logBefore, logAfter);
        }
    }
}
