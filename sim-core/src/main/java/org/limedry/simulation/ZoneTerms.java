package org.limedry.simulation;

import java.util.Arrays;

/**
 * What acts on the air and the radiant node of each room besides its faces, one number for each room and term.
 *
 * <p>Written by {@link ZoneFlows}; the room's rows and the water account are both made of these terms and of their
 * slopes, so the account holds to rounding.
 */
final class ZoneTerms {
    /** Heat to the room air, W. */
    static final int AIR_HEAT = 0;

    /** Heat to the radiant node, W. */
    static final int RADIANT_HEAT = 1;

    /** Vapour carried outdoors, net, kg/s. */
    static final int OUT_BY_AIR = 2;

    /** Vapour carried to other rooms, net, kg/s. */
    static final int TO_ROOMS = 3;

    /** Vapour caught by dehumidifiers, kg/s. */
    static final int DEHUMIDIFIER = 4;

    /** Vapour made by burning fuel, kg/s. */
    static final int PLANT = 5;

    /** Vapour given off by people, kg/s. */
    static final int PEOPLE = 6;

    /** Vapour given by a bare earth floor, kg/s. */
    static final int GROUND = 7;

    /** Vapour that falls out of the air as fog, kg/s. */
    static final int FOG = 8;

    /** Number of terms. */
    static final int COUNT = 9;

    private static final int[] VAPOUR_SIGN = {0, 0, -1, -1, -1, 1, 1, 1, -1};

    private final double[] values;

    ZoneTerms(int rooms) {
        values = new double[rooms * COUNT];
    }

    double at(int room, int term) {
        return values[room * COUNT + term];
    }

    void put(int room, int term, double value) {
        values[room * COUNT + term] = value;
    }

    void add(int room, int term, double value) {
        values[room * COUNT + term] += value;
    }

    void clear() {
        Arrays.fill(values, 0.0);
    }

    /** Returns the sign with which a term enters the vapour balance of its room; 0 for heat. */
    static int vapourSign(int term) {
        return VAPOUR_SIGN[term];
    }
}
