package org.limedry.wall;

import java.util.Arrays;

/**
 * Nodes of a wall and what lies between them. Nodes stand on both faces, on every contact and inside the layers; each
 * holds the water of half the link on either side of it, so a contact node holds two materials at one suction.
 *
 * <p>Built once and again with every coat; never changed.
 */
final class WallMesh {
    private static final int MAX_ITERATIONS = 60;
    private static final double MAX_STEP = 2.5;
    private static final int MAX_BRACKETED = 300;
    private static final int HALVE_EVERY = 6;
    private static final double BRACKETED_SHARE = 1.0e-3;
    private static final double CLOSED = 1.0e-13;

    /** Accuracy of a state that is kept: rounding after the last correction. */
    static final double KEPT = 1.0e-7;

    /** Accuracy of a state that a stage only looks at: 1e-8 after the last correction. */
    static final double LOOKED_AT = 1.0e-4;

    private final double[] linkM;
    private final Transport[] linkTable;
    private final int[] linkLayer;
    private final int[] layerStart;
    private final SuctionScale scale;
    private final boolean outerFilm;
    private final boolean innerFilm;

    private WallMesh(double[] linkM, Transport[] linkTable, int[] linkLayer, WallMesh like) {
        this.linkM = linkM;
        this.linkTable = linkTable;
        this.linkLayer = linkLayer;
        scale = like.scale;
        outerFilm = like.outerFilm;
        innerFilm = like.innerFilm;
        layerStart = layerStarts(linkLayer);
    }

    /** Returns the first node of each layer, and the last node of all behind them. */
    private static int[] layerStarts(int[] linkLayer) {
        int layers = linkLayer.length == 0 ? 0 : linkLayer[linkLayer.length - 1] + 1;
        int[] starts = new int[layers + 1];
        for (int link = linkLayer.length - 1; link >= 0; link--) {
            starts[linkLayer[link]] = link;
        }
        starts[layers] = linkLayer.length;
        return starts;
    }

    private WallMesh(SuctionScale scale, boolean outerFilm, boolean innerFilm) {
        linkM = new double[0];
        linkTable = new Transport[0];
        linkLayer = new int[0];
        layerStart = layerStarts(linkLayer);
        this.scale = scale;
        this.outerFilm = outerFilm;
        this.innerFilm = innerFilm;
    }

    /** Returns the mesh of a wall without layers, whose inner face will carry a film. */
    static WallMesh empty(boolean outerFilm) {
        return new WallMesh(SuctionScale.LOGARITHM, outerFilm, true);
    }

    /** Returns the mesh of a wall without layers that will be of tabulated materials: no face carries a film. */
    static WallMesh emptyTabulated() {
        return new WallMesh(SuctionScale.SHIFTED, false, false);
    }

    /** Returns this mesh with one more layer on the inside. */
    WallMesh with(double[] links, Transport table) {
        int before = linkM.length;
        int count = before + links.length;
        double[] nextLink = Arrays.copyOf(linkM, count);
        Transport[] nextTable = Arrays.copyOf(linkTable, count);
        int[] nextLayer = Arrays.copyOf(linkLayer, count);
        int layer = before == 0 ? 0 : linkLayer[before - 1] + 1;
        for (int k = before; k < count; k++) {
            nextLink[k] = links[k - before];
            nextTable[k] = table;
            nextLayer[k] = layer;
        }
        return new WallMesh(nextLink, nextTable, nextLayer, this);
    }

    /** Returns what the moisture variable of its nodes stands for. */
    SuctionScale scale() {
        return scale;
    }

    int nodes() {
        return linkM.length + 1;
    }

    int layers() {
        return linkM.length == 0 ? 0 : linkLayer[linkM.length - 1] + 1;
    }

    int layerOfLink(int link) {
        return linkLayer[link];
    }

    double linkM(int link) {
        return linkM[link];
    }

    Transport table(int link) {
        return linkTable[link];
    }

    /** Tells whether both halves of a node are of one material, so that one look-up serves both. */
    boolean isUniform(int node) {
        return node == 0 || node == linkM.length || linkTable[node - 1] == linkTable[node];
    }

    /** Tells whether a node carries a film. */
    boolean hasFilm(int node) {
        return (node == linkM.length && innerFilm) || (node == 0 && outerFilm);
    }

    /** Tells whether a node is a face that carries a film and does not drink. */
    boolean isClosedFace(int node) {
        return hasFilm(node) && linkTable[node == 0 ? 0 : node - 1].isClosed();
    }

    /** Returns the film on a node at a suction, kg/m2; 0 where there is none. */
    double filmKgPerM2(int node, double logSuction) {
        return hasFilm(node) ? WaterFilm.waterKgPerM2(logSuction, isClosedFace(node)) : 0.0;
    }

    /** Returns the slope of the film on a node by ln p, kg/m2. */
    double filmSlopeKgPerM2(int node, double logSuction) {
        return hasFilm(node) ? WaterFilm.slopeKgPerM2(logSuction, isClosedFace(node)) : 0.0;
    }

    /** Returns half the link before a node, m; 0 at the outer face. */
    double halfBeforeM(int node) {
        return node == 0 ? 0.0 : 0.5 * linkM[node - 1];
    }

    /** Returns half the link after a node, m; 0 at the inner face. */
    double halfAfterM(int node) {
        return node == linkM.length ? 0.0 : 0.5 * linkM[node];
    }

    /** Returns the water added to the water held in the weight of an error at a node, kg/m2. */
    double errorFloorKgPerM2(int node) {
        double before = linkTable[Math.max(0, node - 1)].errorFloorKgPerM3();
        double after = linkTable[Math.min(node, linkM.length - 1)].errorFloorKgPerM3();
        return before == after
                ? before * (halfBeforeM(node) + halfAfterM(node))
                : before * halfBeforeM(node) + after * halfAfterM(node);
    }

    /** Returns the node at the outer end of a layer. */
    int firstNode(int layer) {
        return layerStart[layer];
    }

    /** Returns the node at the inner end of a layer. */
    int lastNode(int layer) {
        return layerStart[layer + 1];
    }

    /** Returns the water that a node stores at a suction, film included, kg/m2. */
    double storedKgPerM2(int node, double logSuction) {
        double water = filmKgPerM2(node, logSuction);
        if (node > 0) {
            water += halfBeforeM(node) * linkTable[node - 1].waterKgPerM3(logSuction);
        }
        if (node < linkM.length) {
            water += halfAfterM(node) * linkTable[node].waterKgPerM3(logSuction);
        }
        return water;
    }

    /** Returns the slope of the stored water by ln p, kg/m2; below 0. */
    double storedSlopeKgPerM2(int node, double logSuction) {
        double slope = filmSlopeKgPerM2(node, logSuction);
        if (node > 0) {
            slope += halfBeforeM(node) * linkTable[node - 1].waterSlopeKgPerM3(logSuction);
        }
        if (node < linkM.length) {
            slope += halfAfterM(node) * linkTable[node].waterSlopeKgPerM3(logSuction);
        }
        return slope;
    }

    /**
     * Returns ln p at which a node stores a given water.
     *
     * @param node the node
     * @param waterKgPerM2 stored water, kg/m2
     * @param guess where to start
     * @param accuracy move of ln p after which one more correction, which squares the error, is enough
     * @return ln p, or NaN if no suction in range holds that water
     */
    double logSuction(int node, double waterKgPerM2, double guess, double accuracy) {
        if (scale.shiftPa() > 0.0) {
            return bracketed(node, waterKgPerM2, guess, accuracy);
        }
        double u = Math.max(TransportTable.LEAST_LOG_SUCTION, Math.min(TransportTable.LARGEST_LOG_SUCTION, guess));
        boolean plain = isUniform(node) && !hasFilm(node);
        double thicknessM = halfBeforeM(node) + halfAfterM(node);
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            double move = plain
                    ? linkTable[node].newtonMove(u, waterKgPerM2 / thicknessM)
                    : (waterKgPerM2 - storedKgPerM2(node, u)) / storedSlopeKgPerM2(node, u);
            if (Math.abs(move) < accuracy) {
                u += move;
                return inRange(u) ? u : Double.NaN;
            }
            u += Math.max(-MAX_STEP, Math.min(MAX_STEP, move));
            if (!inRange(u)) {
                return Double.NaN;
            }
        }
        return Double.NaN;
    }

    /** Newton within a bracket: tables have kinks, and stores that change by ten decades at the ends of a table. */
    private double bracketed(int node, double waterKgPerM2, double guess, double accuracy) {
        double low = TransportTable.LEAST_LOG_SUCTION;
        double high = TransportTable.LARGEST_LOG_SUCTION;
        double u = inRange(guess) ? guess : 0.5 * (low + high);
        double[] stored = new double[2];
        for (int i = 0; i < MAX_BRACKETED; i++) {
            stored(node, u, stored);
            double excess = stored[0] - waterKgPerM2;
            low = excess > 0.0 ? u : low;
            high = excess > 0.0 ? high : u;
            double newton = u - excess / stored[1];
            // Where Newton keeps to one side of a kink, halving now and then closes the bracket.
            boolean halved = !isWithin(newton, low, high) || i % HALVE_EVERY == HALVE_EVERY - 1;
            double next = halved ? 0.5 * (low + high) : newton;
            double moved = halved ? Double.POSITIVE_INFINITY : Math.abs(next - u);
            if (isSettled(moved, high - low, accuracy)) {
                return kept(next);
            }
            u = next;
        }
        return Double.NaN;
    }

    private static boolean isSettled(double moved, double bracket, double accuracy) {
        return moved < BRACKETED_SHARE * accuracy || bracket < CLOSED;
    }

    private static boolean isWithin(double u, double low, double high) {
        return u >= low && u <= high;
    }

    /** A search that ends at an end of the range has found no suction that holds the water. */
    private static double kept(double u) {
        return inRange(u - CLOSED) && inRange(u + CLOSED) ? u : Double.NaN;
    }

    /** Writes the water that a node without a film stores at u, and its slope. */
    private void stored(int node, double u, double[] to) {
        if (isUniform(node)) {
            double thicknessM = halfBeforeM(node) + halfAfterM(node);
            linkTable[Math.max(0, node - 1)].water(u, to);
            to[0] *= thicknessM;
            to[1] *= thicknessM;
        } else {
            to[0] = storedKgPerM2(node, u);
            to[1] = storedSlopeKgPerM2(node, u);
        }
    }

    private static boolean inRange(double u) {
        return u >= TransportTable.LEAST_LOG_SUCTION && u <= TransportTable.LARGEST_LOG_SUCTION;
    }
}
