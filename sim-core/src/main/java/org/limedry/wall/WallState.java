package org.limedry.wall;

/** Water, temperature and ln suction of the nodes of one wall: the one set of arrays the kernel writes into. */
final class WallState {
    final double[] waterKgPerM2;
    final double[] celsius;
    final double[] logSuction;

    WallState(int nodes) {
        waterKgPerM2 = new double[nodes];
        celsius = new double[nodes];
        logSuction = new double[nodes];
    }

    void copyFrom(WallState other) {
        System.arraycopy(other.waterKgPerM2, 0, waterKgPerM2, 0, waterKgPerM2.length);
        System.arraycopy(other.celsius, 0, celsius, 0, celsius.length);
        System.arraycopy(other.logSuction, 0, logSuction, 0, logSuction.length);
    }
}
