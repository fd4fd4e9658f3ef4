package org.limedry.simulation;

import java.util.Arrays;
import org.limedry.climate.Outdoors;
import org.limedry.numerics.Rodas3;

/**
 * The rooms' own share of a step: their terms, the slopes of the terms, and what each term carried.
 *
 * <p>Slopes are taken by differences: the terms are a dozen smooth scalar formulas (openings, machines, burners) for
 * which an analytic slope would write every formula twice. The steps, some 1e-5 of the range of the unknowns, leave
 * slopes right to about five digits, which an order test of the whole system does not see, and rounding in them small
 * enough that the order in which walls are listed moves no coat by more than 1e-11 of its water; steps a tenth as long
 * let it move by 1e-9.
 *
 * <p>Where faces exchange no long-wave heat, nothing holds the radiant nodes: each then takes the temperature of its air,
 * and heat given as radiation goes to the air.
 */
final class ZoneStep {
    private static final double CELSIUS_STEP = 1.0e-4;
    private static final double VAPOUR_STEP = 1.0e-7;
    private static final double TIME_PLACE = 1.0e-3;
    /** Ties a radiant node without exchange to its air, W/K; any will do, since the two come out the same. */
    private static final double TIE_W_PER_K = 1.0;

    private final int rooms;
    private final int unknowns;
    private final double[] airHeatCapacityJPerK;
    private final double[] volumeM3;
    private final boolean radiates;
    private final double[] baseGapK;
    private final double[] lookGapK;
    private final ZoneTerms base;
    private final ZoneTerms look;
    private final double[] slopes;
    private final double[] rates;
    private final Rodas3.Integral[] integrals;

    ZoneStep(double[] airHeatCapacityJPerK, double[] volumeM3, boolean radiates) {
        this.airHeatCapacityJPerK = airHeatCapacityJPerK;
        this.volumeM3 = volumeM3;
        this.radiates = radiates;
        rooms = volumeM3.length;
        baseGapK = new double[rooms];
        lookGapK = new double[rooms];
        unknowns = RoomUnknowns.PER_ROOM * rooms;
        base = new ZoneTerms(rooms);
        look = new ZoneTerms(rooms);
        slopes = new double[rooms * ZoneTerms.COUNT * unknowns];
        rates = new double[rooms * ZoneTerms.COUNT];
        integrals = new Rodas3.Integral[rooms * ZoneTerms.COUNT];
        Arrays.setAll(integrals, k -> new Rodas3.Integral());
    }

    /** Looks at the start of a step: terms, their slopes by every unknown and their rate in time. */
    void linearise(ZoneFlows flows, RoomUnknowns at, Outdoors.Piece piece, double stepS) {
        Weather now = Weather.at(piece, 0.0);
        flows.evaluate(at, now, base);
        gaps(at, baseGapK);
        flows.evaluate(at, Weather.at(piece, TIME_PLACE), look);
        for (int k = 0; k < rates.length; k++) {
            rates[k] = (look.at(0, k) - base.at(0, k)) / (TIME_PLACE * stepS);
        }
        for (int unknown = 0; unknown < unknowns; unknown++) {
            int kind = unknown % RoomUnknowns.PER_ROOM;
            if (kind != RoomUnknowns.RADIANT) {
                slope(flows, at, now, unknown, kind == RoomUnknowns.AIR ? CELSIUS_STEP : VAPOUR_STEP);
            }
        }
    }

    private void slope(ZoneFlows flows, RoomUnknowns at, Weather now, int unknown, double step) {
        double held = at.values()[unknown];
        at.values()[unknown] = held + step;
        flows.evaluate(at, now, look);
        at.values()[unknown] = held;
        for (int k = 0; k < rooms * ZoneTerms.COUNT; k++) {
            slopes[k * unknowns + unknown] = (look.at(0, k) - base.at(0, k)) / step;
        }
    }

    /** Adds the stores and the terms' slopes to the step matrix of the rooms. */
    void fillMatrix(double[] matrix, double perGammaStep) {
        for (int room = 0; room < rooms; room++) {
            int air = RoomUnknowns.PER_ROOM * room;
            matrix[air * unknowns + air] += perGammaStep * airHeatCapacityJPerK[room];
            matrix[(air + 1) * unknowns + air + 1] += perGammaStep * volumeM3[room];
            if (!radiates) {
                int radiant = air + RoomUnknowns.RADIANT;
                matrix[radiant * unknowns + radiant] += TIE_W_PER_K;
                matrix[radiant * unknowns + air] -= TIE_W_PER_K;
            }
            for (int term = 0; term < ZoneTerms.COUNT; term++) {
                int row = air + row(term);
                int from = (room * ZoneTerms.COUNT + term) * unknowns;
                for (int k = 0; k < unknowns; k++) {
                    matrix[row * unknowns + k] -= sign(term) * slopes[from + k];
                }
            }
        }
    }

    /** Looks at the state of a later stage. */
    void enter(ZoneFlows flows, RoomUnknowns at, Weather weather) {
        flows.evaluate(at, weather, look);
        gaps(at, lookGapK);
    }

    private static void gaps(RoomUnknowns at, double[] to) {
        for (int room = 0; room < to.length; room++) {
            to[room] = at.airCelsius(room) - at.radiantCelsius(room);
        }
    }

    /** Adds the terms, stores of earlier stages and rates in time to the right-hand side of a stage. */
    void fillRhs(int i, double stepS, double[][] stages, double[] rhs) {
        ZoneTerms terms = i < 2 ? base : look;
        for (int room = 0; room < rooms; room++) {
            int air = RoomUnknowns.PER_ROOM * room;
            for (int term = 0; term < ZoneTerms.COUNT; term++) {
                double rate = rates[room * ZoneTerms.COUNT + term];
                rhs[air + row(term)] += sign(term) * (terms.at(room, term) + Rodas3.gamma(i) * stepS * rate);
            }
            if (!radiates) {
                rhs[air + RoomUnknowns.RADIANT] += TIE_W_PER_K * (i < 2 ? baseGapK : lookGapK)[room];
            }
            for (int j = 0; j < i; j++) {
                double weight = Rodas3.c(i, j) / stepS;
                rhs[air] += weight * airHeatCapacityJPerK[room] * stages[j][air];
                rhs[air + 1] += weight * volumeM3[room] * stages[j][air + 1];
            }
        }
    }

    /** Records what every term carries in a stage. */
    void record(int i, double stepS, double[] stage) {
        ZoneTerms terms = i < 2 ? base : look;
        for (int k = 0; k < integrals.length; k++) {
            double rate = terms.at(0, k) + Rodas3.gamma(i) * stepS * rates[k];
            for (int unknown = 0; unknown < unknowns; unknown++) {
                rate += slopes[k * unknowns + unknown] * stage[unknown];
            }
            integrals[k].stage(i, stepS, rate);
        }
    }

    /** Returns what a term carried over the step, in its unit times seconds. */
    double overStep(int room, int term) {
        return integrals[room * ZoneTerms.COUNT + term].overStep();
    }

    private int row(int term) {
        return switch (term) {
            case ZoneTerms.AIR_HEAT -> RoomUnknowns.AIR;
            case ZoneTerms.RADIANT_HEAT -> radiates ? RoomUnknowns.RADIANT : RoomUnknowns.AIR;
            default -> RoomUnknowns.VAPOUR;
        };
    }

    private static double sign(int term) {
        int sign = ZoneTerms.vapourSign(term);
        return sign == 0 ? 1.0 : sign;
    }
}
