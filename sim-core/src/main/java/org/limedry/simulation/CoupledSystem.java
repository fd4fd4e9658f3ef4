package org.limedry.simulation;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.limedry.climate.Outdoors;
import org.limedry.numerics.DenseSolver;
import org.limedry.numerics.Rodas3;
import org.limedry.wall.FaceExchange;
import org.limedry.wall.WallColumn;
import org.limedry.wall.WallStep;

/**
 * All walls and rooms of a site as one implicit system: every wall is eliminated, the rooms' border system is solved, and
 * the walls are filled in.
 *
 * <p>One call of {@link #tryStep} works out one Rosenbrock step; {@link #accept} takes it.
 */
final class CoupledSystem {
    private static final double TEMPERATURE_SCALE_K = 100.0;
    private static final double VAPOUR_SCALE_KG_PER_M3 = 0.02;

    private final List<WallColumn> columns;
    private final FaceAir air;
    private final ZoneFlows flows;
    private final ZoneStep zone;
    private final RoomUnknowns rooms;
    private final RoomUnknowns trial;
    private final DenseSolver border;
    private final double[][] stages;
    private final double[] rhs;
    private final double[] innerRoom = new double[RoomUnknowns.PER_ROOM];
    private final double[] outerRoom = new double[RoomUnknowns.PER_ROOM];
    private final double[][][] responses;
    private final double[][] particular;
    private long solves;

    CoupledSystem(List<WallColumn> columns, FaceAir air, ZoneFlows flows, ZoneStep zone, RoomUnknowns rooms) {
        this.columns = columns;
        this.air = air;
        this.flows = flows;
        this.zone = zone;
        this.rooms = rooms;
        int unknowns = rooms.values().length;
        trial = new RoomUnknowns(new double[unknowns]);
        border = new DenseSolver(unknowns);
        stages = new double[Rodas3.STAGES][unknowns];
        rhs = new double[unknowns];
        responses = new double[columns.size()][4][6];
        particular = new double[columns.size()][4];
    }

    RoomUnknowns rooms() {
        return rooms;
    }

    ZoneStep zone() {
        return zone;
    }

    long solves() {
        return solves;
    }

    /**
     * Works out one step.
     *
     * @param weather site weather over the step
     * @param courses other air over the step, by name
     * @param stepS the step, s
     * @param tolerance relative tolerance
     * @return its error against 1, or NaN if it cannot be made
     */
    double tryStep(Outdoors.Piece weather, Map<String, Outdoors.Piece> courses, double stepS, double tolerance) {
        air.begin(weather, courses, stepS);
        air.set(rooms, 0.0);
        if (!beginWalls(stepS)) {
            return Double.NaN;
        }
        zone.linearise(flows, rooms, weather, stepS);
        if (!factorBorder(1.0 / (Rodas3.DIAGONAL * stepS))) {
            return Double.NaN;
        }
        for (int i = 0; i < Rodas3.STAGES; i++) {
            if (!stage(i, weather, stepS)) {
                return Double.NaN;
            }
        }
        return propose() ? error(tolerance) : Double.NaN;
    }

    /** Takes the step last worked out. */
    void accept() {
        for (WallColumn column : columns) {
            column.step().accept();
        }
        System.arraycopy(trial.values(), 0, rooms.values(), 0, rhs.length);
    }

    private boolean beginWalls(double stepS) {
        for (int wall = 0; wall < columns.size(); wall++) {
            WallStep step = columns.get(wall).step();
            if (!step.begin(stepS)) {
                return false;
            }
            if (air.outerRoom(wall) >= 0) {
                step.responseBoth(responses[wall]);
            } else if (air.innerRoom(wall) >= 0) {
                step.response(responses[wall][0]);
            }
        }
        return true;
    }

    private boolean factorBorder(double perGammaStep) {
        double[] matrix = border.matrix();
        Arrays.fill(matrix, 0.0);
        zone.fillMatrix(matrix, perGammaStep);
        for (RoomFace face : air.roomFaces()) {
            FaceExchange exchange = face.exchange(columns);
            face.addDirect(exchange, matrix, rhs.length);
            double[][] answers = responses[face.wall()];
            int block = face.isInner() ? 0 : 2;
            face.addAnswer(exchange, matrix, air.innerRoom(face.wall()), answers[block]);
            if (air.outerRoom(face.wall()) >= 0) {
                face.addAnswer(exchange, matrix, air.outerRoom(face.wall()), answers[block + 1]);
            }
        }
        return border.factor();
    }

    private boolean stage(int i, Outdoors.Piece weather, double stepS) {
        if (Rodas3.isNewState(i) && i > 0) {
            System.arraycopy(rooms.values(), 0, trial.values(), 0, rhs.length);
            for (int j = 0; j < i; j++) {
                addStage(Rodas3.a(i, j), stages[j]);
            }
            air.set(trial, Rodas3.alpha(i));
            zone.enter(flows, trial, Weather.at(weather, Rodas3.alpha(i)));
        }
        Arrays.fill(rhs, 0.0);
        zone.fillRhs(i, stepS, stages, rhs);
        for (int wall = 0; wall < columns.size(); wall++) {
            if (!columns.get(wall).step().enter(i)) {
                return false;
            }
        }
        reduceWalls();
        border.solve(rhs);
        System.arraycopy(rhs, 0, stages[i], 0, rhs.length);
        for (int wall = 0; wall < columns.size(); wall++) {
            completeWall(wall, i);
        }
        zone.record(i, stepS, stages[i]);
        solves++;
        return true;
    }

    private void reduceWalls() {
        for (int wall = 0; wall < columns.size(); wall++) {
            WallStep step = columns.get(wall).step();
            if (air.outerRoom(wall) >= 0) {
                step.reduceBoth(particular[wall]);
            } else {
                step.reduce(particular[wall]);
            }
        }
        for (RoomFace face : air.roomFaces()) {
            double[] own = particular[face.wall()];
            int at = face.isInner() ? 0 : 2;
            face.addFlows(face.exchange(columns), rhs);
            face.addParticular(face.exchange(columns), rhs, own[at], own[at + 1]);
        }
    }

    private void completeWall(int wall, int i) {
        WallStep step = columns.get(wall).step();
        roomPart(air.innerRoom(wall), i, innerRoom);
        roomPart(air.outerRoom(wall), i, outerRoom);
        if (air.outerRoom(wall) >= 0) {
            step.completeBoth(i, innerRoom, outerRoom);
        } else {
            step.complete(i, innerRoom, outerRoom);
        }
    }

    private void roomPart(int room, int i, double[] to) {
        for (int k = 0; k < RoomUnknowns.PER_ROOM; k++) {
            to[k] = room >= 0 ? stages[i][RoomUnknowns.PER_ROOM * room + k] : 0.0;
        }
    }

    private void addStage(double weight, double[] stage) {
        for (int k = 0; k < stage.length; k++) {
            trial.values()[k] += weight * stage[k];
        }
    }

    private boolean propose() {
        System.arraycopy(rooms.values(), 0, trial.values(), 0, rhs.length);
        for (int i = 0; i < Rodas3.STAGES; i++) {
            addStage(Rodas3.m(i), stages[i]);
        }
        for (int room = 0; room < rhs.length / RoomUnknowns.PER_ROOM; room++) {
            if (!(trial.vapourKgPerM3(room) > 0.0 && Math.abs(trial.airCelsius(room)) < 100.0)) {
                return false;
            }
        }
        for (WallColumn column : columns) {
            if (!column.step().propose()) {
                return false;
            }
        }
        return true;
    }

    private double error(double tolerance) {
        double largest = 0.0;
        for (WallColumn column : columns) {
            largest = Math.max(largest, column.step().error(tolerance));
        }
        double[] estimate = stages[Rodas3.STAGES - 1];
        for (int room = 0; room < rhs.length / RoomUnknowns.PER_ROOM; room++) {
            int at = RoomUnknowns.PER_ROOM * room;
            double warmth = Math.abs(estimate[at]) / (tolerance * TEMPERATURE_SCALE_K);
            double vapour = Math.abs(estimate[at + 1]) / (tolerance * VAPOUR_SCALE_KG_PER_M3);
            largest = Math.max(largest, Math.max(warmth, vapour));
        }
        return largest;
    }
}
