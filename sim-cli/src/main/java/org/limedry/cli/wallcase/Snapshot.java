package org.limedry.cli.wallcase;

import java.util.List;
import org.limedry.wall.FaceLook;

/**
 * A wall at one output hour.
 *
 * @param hour hour of the run
 * @param profile one entry for each asked position that the wall then reaches
 * @param layerWaterKgPerM2 water of each layer of the case; 0 for one not laid yet
 * @param outside the outside face
 * @param inside the inside face
 */
record Snapshot(double hour, List<Point> profile, List<Double> layerWaterKgPerM2, FaceState outside, FaceState inside) {
    Snapshot {
        profile = List.copyOf(profile);
        layerWaterKgPerM2 = List.copyOf(layerWaterKgPerM2);
    }

    /**
     * The wall at one position.
     *
     * @param positionMm from the outside face, mm
     * @param celsius temperature, C
     * @param rhPercent relative humidity in the pores, %
     * @param suctionPa suction, Pa; at least 0
     * @param waterKgPerM3 water, kg/m3
     */
    record Point(double positionMm, double celsius, double rhPercent, double suctionPa, double waterKgPerM3) {}

    /**
     * One face.
     *
     * @param now state and flows
     * @param cumulativeWaterKgPerM2 water taken up since the start, kg/m2
     */
    record FaceState(FaceLook now, double cumulativeWaterKgPerM2) {}
}
