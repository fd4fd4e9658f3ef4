package org.limedry.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.limedry.numerics.DenseSolver;
import org.limedry.units.Check;

/**
 * Carbon dioxide in the air of rooms over one time step.
 *
 * <p>{@code m dC/dt = G (C_o - C) + sum G_d (C_d - C) + (plant + people - sum A r) / kappa}, C in parts per million by
 * volume, m and G in kg of dry air and kg/s, kappa = 1.519e-6 kg per kg of air and ppm. Taking up is an unknown of the
 * step, tied to the mean content over it, so a shut room starves and never falls below zero.
 *
 * <p>Exact for one room with constant coefficients and an uptake proportional to content. Between rooms the air that comes
 * through a door has the other room's mean content of the step. Every flow is counted at those means, so each room
 * closes to rounding whatever the step.
 *
 * <p>Does not model carbon monoxide, air that stands in layers, or what people and flames do to each other.
 */
public final class CarbonDioxide {
    /** Molar mass 44.009 kg/kmol over that of dry air, 28.9647 kg/kmol (FROM MEMORY, CIAAW and ASHRAE), per million. */
    private static final double KG_PER_KG_PPM = 44.009 / 28.9647 * 1.0e-6;

    private static final double RELATIVE_CHANGE = 1.0e-10;
    private static final int MOST_ROUNDS = 60;
    private static final double SERIES_BELOW = 0.01;

    private CarbonDioxide() {}

    /**
     * One room over the step.
     *
     * @param airKg dry air in it, kg; above 0
     * @param startPpm content as the step begins, ppm; at least 0
     * @param freshAirKgPerS dry air from outdoors, kg/s; at least 0
     * @param sourceKgPerS given by plant and people, kg/s; at least 0
     * @param takenUpKg what all coats would take over the step, kg, at a mean content in ppm: 0 at 0, growing with content
     *     at most in proportion and at least as its square root, until nothing is left to take
     */
    public record Zone(
            double airKg, double startPpm, double freshAirKgPerS, double sourceKgPerS, DoubleUnaryOperator takenUpKg) {
        public Zone {
            Check.positive(airKg, "airKg", "kg");
            Check.nonNegative(startPpm, "startPpm", "ppm");
            Check.nonNegative(freshAirKgPerS, "freshAirKgPerS", "kg/s");
            Check.nonNegative(sourceKgPerS, "sourceKgPerS", "kg/s");
        }
    }

    /**
     * An open door.
     *
     * @param one index of one room
     * @param other index of the other
     * @param eachWayKgPerS dry air each way, kg/s; at least 0
     */
    public record Door(int one, int other, double eachWayKgPerS) {
        public Door {
            Check.nonNegative(eachWayKgPerS, "eachWayKgPerS", "kg/s");
        }
    }

    /**
     * What the step did to one room.
     *
     * @param endPpm content as the step ends, ppm
     * @param meanPpm mean content over the step, ppm
     * @param takenUpKg taken by coats, kg
     * @param outKg carried outdoors, net, kg
     * @param toOtherRoomsKg carried to other rooms, net, kg
     */
    public record Step(double endPpm, double meanPpm, double takenUpKg, double outKg, double toOtherRoomsKg) {}

    /** Returns the carbon dioxide, kg, that {@code airKg} of dry air holds at a content of {@code ppm} by volume. */
    public static double kg(double airKg, double ppm) {
        return airKg * ppm * KG_PER_KG_PPM;
    }

    /**
     * Returns what a step does to each room.
     *
     * @param zones the rooms
     * @param doors the open doors between them
     * @param outdoorPpm content outdoors, ppm; at least 0
     * @param dtS length of the step, s; above 0
     * @return one entry for each room, in order
     * @throws IllegalArgumentException if {@code outdoorPpm} or {@code dtS} is NaN or out of range
     */
    public static List<Step> over(List<Zone> zones, List<Door> doors, double outdoorPpm, double dtS) {
        Check.nonNegative(outdoorPpm, "outdoorPpm", "ppm");
        Check.positive(dtS, "dtS", "s");
        double[] mean = zones.stream().mapToDouble(Zone::startPpm).toArray();
        double[] uptakeKgPerS = new double[mean.length];
        Balance balance = new Balance(zones, doors, outdoorPpm, dtS);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] before = mean;
            Arrays.setAll(uptakeKgPerS, i -> uptakeAirKgPerS(zones.get(i), before[i], dtS));
            mean = means(balance, uptakeKgPerS);
            if (agree(before, mean)) {
                break;
            }
        }
        return steps(balance, uptakeKgPerS, mean);
    }

    private record Balance(List<Zone> zones, List<Door> doors, double outdoorPpm, double dtS) {
        /** Returns how often the air of a room is changed or stripped over the step. */
        double airChanges(int room, double uptakeKgPerS) {
            double flow = zones.get(room).freshAirKgPerS() + uptakeKgPerS;
            for (Door door : doors) {
                flow += door.one() == room || door.other() == room ? door.eachWayKgPerS() : 0.0;
            }
            return flow * dtS / zones.get(room).airKg();
        }

        /** Returns what comes from outdoors, plant and people, ppm kg/s. */
        double notByDoors(int room) {
            Zone zone = zones.get(room);
            return zone.freshAirKgPerS() * outdoorPpm + zone.sourceKgPerS() / KG_PER_KG_PPM;
        }
    }

    /** The uptake as the flow of air that would have to be stripped clean. */
    private static double uptakeAirKgPerS(Zone zone, double meanPpm, double dtS) {
        return meanPpm > 0.0 ? zone.takenUpKg().applyAsDouble(meanPpm) / (kg(1.0, meanPpm) * dtS) : 0.0;
    }

    /**
     * Solves for the mean contents: {@code C = C_0 phi1(x) + (dt / m) b phi2(x)}, {@code x = D dt / m}, D all air leaving,
     * b what comes in; b holds the means of the neighbours.
     */
    private static double[] means(Balance balance, double[] uptakeKgPerS) {
        int size = uptakeKgPerS.length;
        DenseSolver solver = new DenseSolver(size);
        double[] mean = new double[size];
        double[] weight = new double[size];
        for (int i = 0; i < size; i++) {
            double x = balance.airChanges(i, uptakeKgPerS[i]);
            weight[i] = balance.dtS() / balance.zones().get(i).airKg() * phi2(x);
            mean[i] = balance.zones().get(i).startPpm() * phi1(x) + weight[i] * balance.notByDoors(i);
            solver.matrix()[i * size + i] = 1.0;
        }
        for (Door door : balance.doors()) {
            solver.matrix()[door.one() * size + door.other()] -= weight[door.one()] * door.eachWayKgPerS();
            solver.matrix()[door.other() * size + door.one()] -= weight[door.other()] * door.eachWayKgPerS();
        }
        Check.that(solver.factor(), "zones", "finite", balance.zones());
        solver.solve(mean);
        return mean;
    }

    /** The end by {@code C_0 exp(-x) + (dt / m) b phi1(x)}, which never falls below 0; the flows at the mean contents. */
    private static List<Step> steps(Balance balance, double[] uptakeKgPerS, double[] mean) {
        double[] byDoors = new double[mean.length];
        double[] toOthers = new double[mean.length];
        for (Door door : balance.doors()) {
            byDoors[door.one()] += door.eachWayKgPerS() * mean[door.other()];
            byDoors[door.other()] += door.eachWayKgPerS() * mean[door.one()];
            double flow = door.eachWayKgPerS() * (mean[door.one()] - mean[door.other()]);
            toOthers[door.one()] += flow;
            toOthers[door.other()] -= flow;
        }
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < mean.length; i++) {
            Zone zone = balance.zones().get(i);
            double x = balance.airChanges(i, uptakeKgPerS[i]);
            double incoming = balance.dtS() / zone.airKg() * (balance.notByDoors(i) + byDoors[i]);
            steps.add(new Step(
                    zone.startPpm() * Math.exp(-x) + incoming * phi1(x),
                    mean[i],
                    kg(uptakeKgPerS[i] * balance.dtS(), mean[i]),
                    kg(zone.freshAirKgPerS() * balance.dtS(), mean[i] - balance.outdoorPpm()),
                    toOthers[i] * balance.dtS() * KG_PER_KG_PPM));
        }
        return List.copyOf(steps);
    }

    private static boolean agree(double[] before, double[] after) {
        for (int i = 0; i < before.length; i++) {
            if (!(Math.abs(after[i] - before[i]) <= RELATIVE_CHANGE * Math.abs(after[i]))) {
                return false;
            }
        }
        return true;
    }

    /** {@code (1 - exp(-x)) / x}. */
    private static double phi1(double x) {
        return x == 0.0 ? 1.0 : -Math.expm1(-x) / x;
    }

    /** {@code (1 - phi1(x)) / x}; by its series near 0, where the difference cancels. */
    private static double phi2(double x) {
        return x < SERIES_BELOW
                ? 1.0 / 2.0 - x * (1.0 / 6.0 - x * (1.0 / 24.0 - x * (1.0 / 120.0 - x / 720.0)))
                : (1.0 - phi1(x)) / x;
    }
}
