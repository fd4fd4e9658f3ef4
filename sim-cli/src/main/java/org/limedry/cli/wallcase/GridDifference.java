package org.limedry.cli.wallcase;

import java.util.List;

/**
 * The largest differences between two runs of one case, over all that is written.
 *
 * @param celsius of temperatures, K
 * @param rhPercent of relative humidities, % points
 * @param waterKgPerM3 of water in profiles, kg/m3
 * @param layerWaterKgPerM2 of water in layers, kg/m2
 * @param cumulativeWaterKgPerM2 of water through faces, kg/m2
 */
record GridDifference(
        double celsius,
        double rhPercent,
        double waterKgPerM3,
        double layerWaterKgPerM2,
        double cumulativeWaterKgPerM2) {
    private static final double PERCENT = 100.0;

    /** Compares what both runs reached. */
    static GridDifference between(List<Snapshot> some, List<Snapshot> others) {
        GridDifference largest = new GridDifference(0.0, 0.0, 0.0, 0.0, 0.0);
        for (int k = 0; k < Math.min(some.size(), others.size()); k++) {
            largest = largest.or(between(some.get(k), others.get(k)));
        }
        return largest;
    }

    private static GridDifference between(Snapshot one, Snapshot other) {
        GridDifference largest = face(one.outside(), other.outside()).or(face(one.inside(), other.inside()));
        for (int k = 0; k < one.profile().size(); k++) {
            Snapshot.Point a = one.profile().get(k);
            Snapshot.Point b = other.profile().get(k);
            largest = largest.or(new GridDifference(
                    Math.abs(a.celsius() - b.celsius()),
                    Math.abs(a.rhPercent() - b.rhPercent()),
                    Math.abs(a.waterKgPerM3() - b.waterKgPerM3()),
                    0.0,
                    0.0));
        }
        for (int k = 0; k < one.layerWaterKgPerM2().size(); k++) {
            double layer = Math.abs(
                    one.layerWaterKgPerM2().get(k) - other.layerWaterKgPerM2().get(k));
            largest = largest.or(new GridDifference(0.0, 0.0, 0.0, layer, 0.0));
        }
        return largest;
    }

    private static GridDifference face(Snapshot.FaceState one, Snapshot.FaceState other) {
        return new GridDifference(
                Math.abs(one.now().celsius() - other.now().celsius()),
                PERCENT * Math.abs(one.now().relativeHumidity() - other.now().relativeHumidity()),
                0.0,
                0.0,
                Math.abs(one.cumulativeWaterKgPerM2() - other.cumulativeWaterKgPerM2()));
    }

    private GridDifference or(GridDifference other) {
        return new GridDifference(
                Math.max(celsius, other.celsius),
                Math.max(rhPercent, other.rhPercent),
                Math.max(waterKgPerM3, other.waterKgPerM3),
                Math.max(layerWaterKgPerM2, other.layerWaterKgPerM2),
                Math.max(cumulativeWaterKgPerM2, other.cumulativeWaterKgPerM2));
    }
}
