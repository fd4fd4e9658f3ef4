package org.limedry.wall;

/** Sums, means and profiles of one wall's present state. */
final class WallReading {
    /** A depth within this of a contact is on it, m: links add up to a depth by rounding only. */
    private static final double SAME_M = 1.0e-9;

    private final WallMesh mesh;
    private final WallState state;

    WallReading(WallMesh mesh, WallState state) {
        this.mesh = mesh;
        this.state = state;
    }

    double thicknessM() {
        double sum = 0.0;
        for (int link = 0; link < mesh.nodes() - 1; link++) {
            sum += mesh.linkM(link);
        }
        return sum;
    }

    double layerWaterKgPerM2(int layer) {
        double sum = 0.0;
        for (int node = mesh.firstNode(layer); node <= mesh.lastNode(layer); node++) {
            if (node > mesh.firstNode(layer)) {
                sum += mesh.halfBeforeM(node) * mesh.table(node - 1).waterKgPerM3(state.logSuction[node]);
            }
            if (node < mesh.lastNode(layer)) {
                sum += mesh.halfAfterM(node) * mesh.table(node).waterKgPerM3(state.logSuction[node]);
            }
        }
        return sum;
    }

    /** Mean over the thickness of a layer of something linear between nodes. */
    double mean(double[] values, int layer) {
        double sum = 0.0;
        double thickness = 0.0;
        for (int link = mesh.firstNode(layer); link < mesh.lastNode(layer); link++) {
            sum += mesh.linkM(link) * 0.5 * (values[link] + values[link + 1]);
            thickness += mesh.linkM(link);
        }
        return sum / thickness;
    }

    /** The node nearest to a point of a layer, {@code depthM} under its inner end. */
    int nodeUnder(int layer, double depthM) {
        int node = mesh.lastNode(layer);
        double reach = 0.0;
        while (node > mesh.firstNode(layer) && reach + 0.5 * mesh.linkM(node - 1) < depthM) {
            reach += mesh.linkM(node - 1);
            node--;
        }
        return node;
    }

    /** Something linear between nodes, at a depth from the outer face. */
    double at(double[] values, double depthM) {
        int link = linkAt(depthM);
        double reach = 0.0;
        for (int k = 0; k < link; k++) {
            reach += mesh.linkM(k);
        }
        double share = Math.min(1.0, Math.max(0.0, (depthM - reach) / mesh.linkM(link)));
        return values[link] + share * (values[link + 1] - values[link]);
    }

    /** The water at a depth; on a contact, that of the layer on its outer side. */
    double waterKgPerM3At(double depthM) {
        return mesh.table(linkAt(depthM)).ownKgPerM3(at(state.logSuction, depthM));
    }

    private int linkAt(double depthM) {
        double reach = 0.0;
        int link = 0;
        while (link < mesh.nodes() - 2 && reach + mesh.linkM(link) < depthM - SAME_M) {
            reach += mesh.linkM(link);
            link++;
        }
        return link;
    }
}
