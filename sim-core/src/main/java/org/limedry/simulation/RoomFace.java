package org.limedry.simulation;

import java.util.List;
import org.limedry.wall.Face;
import org.limedry.wall.FaceExchange;
import org.limedry.wall.WallColumn;

/**
 * One face that looks into a room: what it adds to the rows of that room in the border system.
 *
 * @param wall index of its wall
 * @param isInner whether it is the wall's inner face
 * @param room index of the room it looks into
 * @param areaM2 its area, m2
 */
record RoomFace(int wall, boolean isInner, int room, double areaM2) {
    FaceExchange exchange(List<WallColumn> columns) {
        return isInner
                ? columns.get(wall).step().inner()
                : columns.get(wall).step().outer();
    }

    /** Adds how the face's flows answer to its own room while the face stands still. */
    void addDirect(FaceExchange exchange, double[] matrix, int unknowns) {
        Face face = exchange.face();
        int air = RoomUnknowns.PER_ROOM * room;
        int vapour = air + RoomUnknowns.VAPOUR;
        int radiant = air + RoomUnknowns.RADIANT;
        matrix[air * unknowns + air] += areaM2 * face.convectionWPerM2K;
        matrix[radiant * unknowns + radiant] += areaM2 * face.radiationWPerM2K;
        matrix[vapour * unknowns + air] += areaM2 * face.vapourTransferSPerM * face.airVapourByCelsius;
        matrix[vapour * unknowns + vapour] += areaM2 * face.vapourTransferSPerM * face.airVapourByDensity;
    }

    /** Adds how the face's flows answer to a room through the wall; {@code block} is the face's 2 x 3 answer to it. */
    void addAnswer(FaceExchange exchange, double[] matrix, int toRoom, double[] block) {
        int unknowns = (int) Math.round(Math.sqrt(matrix.length));
        int air = RoomUnknowns.PER_ROOM * room;
        Face face = exchange.face();
        for (int k = 0; k < RoomUnknowns.PER_ROOM; k++) {
            int column = RoomUnknowns.PER_ROOM * toRoom + k;
            double byLog = block[k];
            double byCelsius = block[RoomUnknowns.PER_ROOM + k];
            matrix[air * unknowns + column] -= areaM2 * face.convectionWPerM2K * byCelsius;
            matrix[(air + 1) * unknowns + column] +=
                    areaM2 * (exchange.vapourByLog() * byLog + exchange.vapourByCelsius() * byCelsius);
            matrix[(air + 2) * unknowns + column] -= areaM2 * face.radiationWPerM2K * byCelsius;
        }
    }

    /** Adds the face's flows in the state last looked at to the balance of its room. */
    void addFlows(FaceExchange exchange, double[] rhs) {
        int air = RoomUnknowns.PER_ROOM * room;
        rhs[air] -= areaM2 * exchange.convectionWPerM2();
        rhs[air + RoomUnknowns.VAPOUR] -= areaM2 * exchange.vapourKgPerM2S();
        rhs[air + RoomUnknowns.RADIANT] -= areaM2 * exchange.radiationWPerM2();
    }

    /** Adds what the face does in a stage while the rooms stand still: changes of ln p and temperature. */
    void addParticular(FaceExchange exchange, double[] rhs, double byLog, double byCelsius) {
        int air = RoomUnknowns.PER_ROOM * room;
        Face face = exchange.face();
        rhs[air] += areaM2 * face.convectionWPerM2K * byCelsius;
        rhs[air + RoomUnknowns.VAPOUR] -=
                areaM2 * (exchange.vapourByLog() * byLog + exchange.vapourByCelsius() * byCelsius);
        rhs[air + RoomUnknowns.RADIANT] += areaM2 * face.radiationWPerM2K * byCelsius;
    }
}
