package org.limedry.simulation;

import org.limedry.climate.Outdoors;

/**
 * Outdoor air at one instant.
 *
 * @param celsius air temperature, C
 * @param vapourPa vapour pressure, Pa
 * @param windMPerS wind at the building, m/s
 */
record Weather(double celsius, double vapourPa, double windMPerS) {
    /** Returns the air at a place within a piece, 0 at its start, 1 at its end. */
    static Weather at(Outdoors.Piece piece, double place) {
        return new Weather(
                piece.startCelsius() + place * (piece.endCelsius() - piece.startCelsius()),
                piece.startVapourPressurePa() + place * (piece.endVapourPressurePa() - piece.startVapourPressurePa()),
                piece.startWindMPerS() + place * (piece.endWindMPerS() - piece.startWindMPerS()));
    }
}
