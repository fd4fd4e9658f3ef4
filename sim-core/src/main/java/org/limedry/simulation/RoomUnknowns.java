package org.limedry.simulation;

import org.limedry.units.Units;

/**
 * Air temperature (C), vapour density (kg/m3) and radiant temperature (C) of every room, three numbers a room.
 *
 * @param values the numbers; written by the coupled solver, which owns them
 */
@SuppressWarnings("ArrayRecordComponent") // a view of the solver's own workspace, never compared
record RoomUnknowns(double[] values) {
    static final int PER_ROOM = 3;
    static final int AIR = 0;
    static final int VAPOUR = 1;
    static final int RADIANT = 2;

    double airCelsius(int room) {
        return values[PER_ROOM * room + AIR];
    }

    double vapourKgPerM3(int room) {
        return values[PER_ROOM * room + VAPOUR];
    }

    double radiantCelsius(int room) {
        return values[PER_ROOM * room + RADIANT];
    }

    double vapourPa(int room, double gasConstantJPerKgK) {
        return vapourKgPerM3(room) * gasConstantJPerKgK * Units.kelvin(airCelsius(room));
    }

    void put(int room, double celsius, double vapourPa, double gasConstantJPerKgK) {
        values[PER_ROOM * room + AIR] = celsius;
        values[PER_ROOM * room + VAPOUR] = vapourPa / (gasConstantJPerKgK * Units.kelvin(celsius));
        values[PER_ROOM * room + RADIANT] = celsius;
    }
}
