package org.limedry.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.limedry.climate.Outdoors;
import org.limedry.room.FaceTransfer;
import org.limedry.room.Surfaces;
import org.limedry.units.Units;
import org.limedry.wall.Constants;
import org.limedry.wall.Face;
import org.limedry.wall.Side;
import org.limedry.wall.WallColumn;

/** Sets what every face of every wall exchanges with, for a step and for each of its stages. */
final class FaceAir {
    /** Transfer that holds a face at the temperature of the soil, W/(m2 K). */
    private static final double HELD_W_PER_M2K = 1.0e4;

    private final List<WallColumn> columns;
    private final Surfaces surfaces;
    private final Constants constants;
    private final int[] innerRoom;
    private final int[] outerRoom;
    private final List<RoomFace> roomFaces = new ArrayList<>();
    private final double[] convectionWPerM2K;
    private Outdoors.Piece weather = new Outdoors.Piece(0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    private Map<String, Outdoors.Piece> courses = Map.of();
    private double stepS = 1.0;

    FaceAir(List<WallColumn> columns, List<String> rooms, Surfaces surfaces, Constants constants) {
        this.columns = columns;
        this.surfaces = surfaces;
        this.constants = constants;
        innerRoom = new int[columns.size()];
        outerRoom = new int[columns.size()];
        convectionWPerM2K = new double[rooms.size()];
        Arrays.fill(convectionWPerM2K, surfaces.stillWPerM2K());
        for (int wall = 0; wall < columns.size(); wall++) {
            innerRoom[wall] = room(columns.get(wall).plan().inside(), rooms);
            outerRoom[wall] = room(columns.get(wall).plan().outside(), rooms);
            addRoomFace(wall, true, innerRoom[wall]);
            addRoomFace(wall, false, outerRoom[wall]);
        }
    }

    int innerRoom(int wall) {
        return innerRoom[wall];
    }

    int outerRoom(int wall) {
        return outerRoom[wall];
    }

    List<RoomFace> roomFaces() {
        return roomFaces;
    }

    /** Sets the convection at the faces of a room, W/(m2 K). */
    void convection(int room, double wattsPerM2K) {
        convectionWPerM2K[room] = wattsPerM2K;
    }

    /** Sets what stays the same over a step. */
    void begin(Outdoors.Piece site, Map<String, Outdoors.Piece> others, double nextStepS) {
        weather = site;
        courses = others;
        stepS = nextStepS;
        for (WallColumn column : columns) {
            fixed(column.plan().inside(), column.step().inner().face());
            fixed(column.plan().outside(), column.step().outer().face());
        }
    }

    /** Sets the air at a place within the step, 0 to 1. */
    void set(RoomUnknowns rooms, double place) {
        for (int wall = 0; wall < columns.size(); wall++) {
            WallColumn column = columns.get(wall);
            set(column.plan().inside(), column.step().inner().face(), rooms, innerRoom[wall], place);
            set(column.plan().outside(), column.step().outer().face(), rooms, outerRoom[wall], place);
        }
    }

    private void fixed(Side side, Face face) {
        face.airCelsiusPerS = 0.0;
        face.airVapourPaPerS = 0.0;
        face.airVapourByCelsius = 0.0;
        face.airVapourByDensity = 0.0;
        face.radiationWPerM2K = 0.0;
        face.convectionWPerM2K = 0.0;
        face.vapourTransferSPerM = 0.0;
        if (side instanceof Side.Outdoors) {
            double wind = 0.5 * (weather.startWindMPerS() + weather.endWindMPerS());
            double convection = FaceTransfer.outsideWPerM2K(surfaces, wind);
            transfer(face, convection + surfaces.radiantWPerM2K(), FaceTransfer.vapourSPerM(surfaces, convection));
            rates(face, weather);
        } else if (side instanceof Side.Course course) {
            transfer(face, course.heatTransferWPerM2K(), course.vapourTransferSPerM());
            rates(face, piece(course.course()));
        } else if (side instanceof Side.Held held) {
            rates(face, piece(held.course()));
        } else if (side instanceof Side.Air still) {
            transfer(face, still.heatTransferWPerM2K(), still.vapourTransferSPerM());
        } else if (side instanceof Side.Soil) {
            transfer(face, HELD_W_PER_M2K, 0.0);
        }
    }

    private static void transfer(Face face, double heatWPerM2K, double vapourSPerM) {
        face.convectionWPerM2K = heatWPerM2K;
        face.vapourTransferSPerM = vapourSPerM;
    }

    private void rates(Face face, Outdoors.Piece piece) {
        face.airCelsiusPerS = (piece.endCelsius() - piece.startCelsius()) / stepS;
        face.airVapourPaPerS = (piece.endVapourPressurePa() - piece.startVapourPressurePa()) / stepS;
    }

    private void set(Side side, Face face, RoomUnknowns rooms, int room, double place) {
        if (room >= 0) {
            inRoom(face, rooms, room);
        } else if (side instanceof Side.Outdoors) {
            air(face, Weather.at(weather, place));
        } else if (side instanceof Side.Course course) {
            air(face, Weather.at(piece(course.course()), place));
        } else if (side instanceof Side.Held held) {
            air(face, Weather.at(piece(held.course()), place));
        } else if (side instanceof Side.Air still) {
            face.airCelsius = still.celsius();
            face.airVapourPa = still.relativeHumidity() * constants.saturation().pressurePa(still.celsius());
        } else if (side instanceof Side.Soil soil) {
            face.airCelsius = soil.celsius();
        }
    }

    private void inRoom(Face face, RoomUnknowns rooms, int room) {
        face.convectionWPerM2K = convectionWPerM2K[room];
        face.radiationWPerM2K = surfaces.radiantWPerM2K();
        face.vapourTransferSPerM = FaceTransfer.vapourSPerM(surfaces, convectionWPerM2K[room]);
        face.airCelsius = rooms.airCelsius(room);
        face.radiantCelsius = rooms.radiantCelsius(room);
        face.airVapourByCelsius = rooms.vapourKgPerM3(room) * constants.gasConstantVapourJPerKgK();
        face.airVapourByDensity = constants.gasConstantVapourJPerKgK() * Units.kelvin(rooms.airCelsius(room));
        face.airVapourPa = rooms.vapourKgPerM3(room) * face.airVapourByDensity;
    }

    private static void air(Face face, Weather weather) {
        face.airCelsius = weather.celsius();
        face.airVapourPa = weather.vapourPa();
    }

    private Outdoors.Piece piece(String course) {
        Outdoors.Piece piece = courses.get(course);
        if (piece == null) {
            throw new IllegalArgumentException("courses: must hold \"" + course + "\", had " + courses.keySet());
        }
        return piece;
    }

    private void addRoomFace(int wall, boolean inner, int room) {
        if (room >= 0) {
            roomFaces.add(
                    new RoomFace(wall, inner, room, columns.get(wall).plan().areaM2()));
        }
    }

    private static int room(Side side, List<String> rooms) {
        if (!(side instanceof Side.Room room)) {
            return -1;
        }
        int index = rooms.indexOf(room.room());
        if (index < 0) {
            throw new IllegalArgumentException("room: must be one of " + rooms + ", was " + room.room());
        }
        return index;
    }
}
