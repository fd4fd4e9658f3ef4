package org.limedry.wall;

import org.limedry.numerics.BlockTridiagonal;

/** The matrix of one wall's step: stores over the step, less the slopes of links and faces. */
final class WallMatrix {
    private final BlockTridiagonal blocks;
    private final int last;

    WallMatrix(int nodes) {
        blocks = new BlockTridiagonal(nodes);
        last = nodes - 1;
    }

    BlockTridiagonal blocks() {
        return blocks;
    }

    /** Sets the diagonal to the stores of the nodes; {@code heatByLog} is how the heat row answers to ln p. */
    void stores(double perGammaStep, double[] storeByLog, double[] capacity) {
        double[] d = blocks.diagonal();
        for (int node = 0; node <= last; node++) {
            int at = 4 * node;
            d[at] = perGammaStep * storeByLog[node];
            d[at + 1] = 0.0;
            d[at + 3] = perGammaStep * capacity[node];
        }
    }

    /** Sets how the heat row of each node answers to its ln p by its capacity. */
    void heatByLog(double[] residual, double[] capacityByLog, double[] capacity) {
        double[] d = blocks.diagonal();
        for (int node = 0; node <= last; node++) {
            d[4 * node + 2] = residual[2 * node + 1] * capacityByLog[node] / capacity[node];
        }
    }

    /** Adds the slopes of all links. */
    void links(double[] slopes) {
        for (int k = 0; k < last; k++) {
            link(k, slopes);
        }
    }

    private void link(int k, double[] slopes) {
        double[] d = blocks.diagonal();
        double[] up = blocks.upper();
        double[] low = blocks.lower();
        int from = 8 * k;
        int left = 4 * k;
        int right = left + 4;
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 2; column++) {
                double byLeft = slopes[from + 4 * row + column];
                double byRight = slopes[from + 4 * row + 2 + column];
                int at = 2 * row + column;
                d[left + at] += byLeft;
                up[left + at] = byRight;
                d[right + at] -= byRight;
                low[right + at] = -byLeft;
            }
        }
    }

    /** Adds the slopes of the flows at a face. */
    void face(int node, FaceExchange face) {
        double[] d = blocks.diagonal();
        int at = 4 * node;
        d[at] -= face.vapourByLog() - face.runOffByLog();
        d[at + 1] -= face.vapourByCelsius();
        d[at + 2] -= face.heatByLog();
        d[at + 3] -= face.heatByCelsius();
    }

    /** Makes the rows of a node those of a given state: its unknowns are its right-hand sides. */
    void hold(int node) {
        int at = 4 * node;
        for (int k = 0; k < 4; k++) {
            blocks.diagonal()[at + k] = k == 0 || k == 3 ? 1.0 : 0.0;
            blocks.upper()[at + k] = 0.0;
            blocks.lower()[at + k] = 0.0;
        }
    }

    /** Adds what a room does to the right-hand side of a face, by its coupling of 2 x 3 numbers. */
    static void addCoupling(double[] to, int at, double[] coupling, double[] room) {
        for (int row = 0; row < 2; row++) {
            to[at + row] +=
                    coupling[3 * row] * room[0] + coupling[3 * row + 1] * room[1] + coupling[3 * row + 2] * room[2];
        }
    }
}
