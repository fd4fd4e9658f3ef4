package org.limedry.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.limedry.numerics.BlockTridiagonal;
import org.limedry.numerics.Rodas3;

/**
 * One wall within a step of the coupled system: its share of every stage.
 *
 * <p>The unknowns of a node are the changes of ln p and of temperature; the stored quantities are water and temperature,
 * so water is conserved to rounding whatever the tolerance. Order of calls: set both faces, {@link #begin}; then for each
 * stage set the faces if the stage looks at a new state, {@link #enter}, {@link #reduce}, {@link #complete}; then
 * {@link #error} and, if it is small enough, {@link #propose} and {@link #accept}.
 */
public final class WallStep {
    private static final double FILM_FLOOR_KG_PER_M2 = 0.2;
    private static final double TEMPERATURE_SCALE_K = 100.0;

    private final WallMesh mesh;
    private final WallState state;
    private final WallState trial;
    private final WallProperties base;
    private final WallProperties look;
    private final Links links;
    private final WallMatrix stepMatrix;
    private final BlockTridiagonal matrix;
    private final FaceExchange outer;
    private final FaceExchange inner;
    private final double[] source;
    private final double[] storeByLog;
    private final double[] residual;
    private final double[] rhs;
    private final double[] kept;
    private final double[][] stages;
    private final double[] own = new double[2];
    private final double[] couplingIn = new double[6];
    private final double[] couplingOut = new double[6];
    private final int last;
    private final double waterHeatCapacityJPerKgK;
    private final List<HeldNode> held = new ArrayList<>();
    private double heatStoredJPerM2;
    private double stepS;

    WallStep(WallMesh mesh, WallState state, Constants constants, WallPlan plan) {
        this.mesh = mesh;
        this.state = state;
        int nodes = mesh.nodes();
        trial = new WallState(nodes);
        base = new WallProperties(mesh, constants);
        look = new WallProperties(mesh, constants);
        links = new Links(mesh, constants.latentHeatJPerKg());
        stepMatrix = new WallMatrix(nodes);
        matrix = stepMatrix.blocks();
        outer = new FaceExchange(constants.latentHeatJPerKg());
        inner = new FaceExchange(constants.latentHeatJPerKg());
        source = new double[nodes];
        storeByLog = new double[nodes];
        residual = new double[2 * nodes];
        rhs = new double[2 * nodes];
        kept = new double[2 * nodes];
        stages = new double[Rodas3.STAGES][2 * nodes];
        last = nodes - 1;
        waterHeatCapacityJPerKgK = constants.waterHeatCapacityJPerKgK();
        if (plan.outside() instanceof Side.Held) {
            held.add(new HeldNode(0, mesh, constants, outer));
        }
        if (plan.inside() instanceof Side.Held) {
            held.add(new HeldNode(last, mesh, constants, inner));
        }
    }

    /** Returns the outer face. */
    public FaceExchange outer() {
        return outer;
    }

    /** Returns the face towards the room. */
    public FaceExchange inner() {
        return inner;
    }

    /** Returns water put into each node, kg/(m2 s), to be set by the owner and constant over a step. */
    double[] source() {
        return source;
    }

    /**
     * Looks at the present state and factors the step matrix.
     *
     * @param nextStepS the step, s
     * @return false if the matrix is singular
     */
    public boolean begin(double nextStepS) {
        stepS = nextStepS;
        held.forEach(node -> node.begin(stepS, state));
        base.evaluate(state);
        links.flows(base, state);
        links.slopes(base, state);
        faces(base, state);
        inner.slopes(
                base.vapourByLog[last],
                base.vapourByCelsius[last],
                mesh.filmKgPerM2(last, state.logSuction[last]),
                mesh.filmSlopeKgPerM2(last, state.logSuction[last]));
        outer.slopes(
                base.vapourByLog[0],
                base.vapourByCelsius[0],
                mesh.filmKgPerM2(0, state.logSuction[0]),
                mesh.filmSlopeKgPerM2(0, state.logSuction[0]));
        balance(base);
        inner.coupling(couplingIn);
        outer.coupling(couplingOut);
        for (int node = 0; node <= last; node++) {
            storeByLog[node] = mesh.storedSlopeKgPerM2(node, state.logSuction[node]);
        }
        fillMatrix(1.0 / (Rodas3.DIAGONAL * stepS));
        return matrix.factor();
    }

    /**
     * Looks at the state of a stage and forms its right-hand side.
     *
     * @param i the stage
     * @return false if the state cannot be reached: the step must be refused
     */
    public boolean enter(int i) {
        if (i > 0 && Rodas3.isNewState(i)) {
            if (!stageState(i)) {
                return false;
            }
            look.evaluate(trial);
            links.flows(look, trial);
            faces(look, trial);
            balance(look);
        }
        System.arraycopy(residual, 0, rhs, 0, rhs.length);
        double time = Rodas3.gamma(i) * stepS;
        rhs[0] += time * outer.vapourRate();
        rhs[1] += time * outer.heatRate();
        rhs[2 * last] += time * inner.vapourRate();
        rhs[2 * last + 1] += time * inner.heatRate();
        for (int j = 0; j < i; j++) {
            double weight = Rodas3.c(i, j) / stepS;
            for (int node = 0; weight != 0.0 && node <= last; node++) {
                rhs[2 * node] += weight * storeByLog[node] * stages[j][2 * node];
                rhs[2 * node + 1] += weight * base.capacity[node] * stages[j][2 * node + 1];
            }
        }
        for (HeldNode node : held) {
            node.rightHandSide(i, i > 1 ? trial : state, rhs);
        }
        return true;
    }

    /**
     * Writes what the inner face would do in this stage if the room stood still: changes of ln p and temperature.
     *
     * @param to two numbers
     */
    public void reduce(double[] to) {
        matrix.forward(rhs);
        for (int row = 0; row < 2; row++) {
            to[row] = matrix.lastInverse(row, 0) * rhs[2 * last] + matrix.lastInverse(row, 1) * rhs[2 * last + 1];
        }
    }

    /** Writes how the inner face answers to its room (air C, vapour density, radiant C): 2 x 3 numbers. */
    public void response(double[] to) {
        for (int row = 0; row < 2; row++) {
            for (int k = 0; k < 3; k++) {
                to[3 * row + k] =
                        matrix.lastInverse(row, 0) * couplingIn[k] + matrix.lastInverse(row, 1) * couplingIn[3 + k];
            }
        }
    }

    /**
     * Finishes a stage.
     *
     * @param i the stage
     * @param room what the room does in this stage
     * @param noRoom zeros
     */
    public void complete(int i, double[] room, double[] noRoom) {
        WallMatrix.addCoupling(rhs, 2 * last, couplingIn, room);
        matrix.backward(rhs);
        finish(i, room, noRoom);
    }

    /**
     * Writes what both faces would do in this stage if both rooms stood still: two numbers for the inner, two for the
     * outer face.
     */
    public void reduceBoth(double[] to) {
        System.arraycopy(rhs, 0, kept, 0, rhs.length);
        matrix.forward(rhs);
        matrix.backward(rhs);
        to[0] = rhs[2 * last];
        to[1] = rhs[2 * last + 1];
        to[2] = rhs[0];
        to[3] = rhs[1];
    }

    /**
     * Writes how both faces answer to both rooms, each 2 x 3 numbers: the inner face to the inner and to the outer room,
     * the outer face to the inner and to the outer room.
     */
    public void responseBoth(double[][] to) {
        for (int k = 0; k < 6; k++) {
            Arrays.fill(rhs, 0.0);
            int at = k < 3 ? 2 * last : 0;
            double[] coupling = k < 3 ? couplingIn : couplingOut;
            rhs[at] = coupling[k % 3];
            rhs[at + 1] = coupling[3 + k % 3];
            matrix.forward(rhs);
            matrix.backward(rhs);
            int room = k / 3;
            to[room][k % 3] = rhs[2 * last];
            to[room][3 + k % 3] = rhs[2 * last + 1];
            to[2 + room][k % 3] = rhs[0];
            to[2 + room][3 + k % 3] = rhs[1];
        }
    }

    /** Finishes a stage of a wall between two rooms. */
    public void completeBoth(int i, double[] innerRoom, double[] outerRoom) {
        System.arraycopy(kept, 0, rhs, 0, rhs.length);
        WallMatrix.addCoupling(rhs, 2 * last, couplingIn, innerRoom);
        WallMatrix.addCoupling(rhs, 0, couplingOut, outerRoom);
        matrix.forward(rhs);
        matrix.backward(rhs);
        finish(i, innerRoom, outerRoom);
    }

    /** Returns the error of the step against a tolerance of 1: root mean square over all nodes. */
    public double error(double tolerance) {
        double sum = 0.0;
        double[] estimate = stages[Rodas3.STAGES - 1];
        for (int node = 0; node <= last; node++) {
            double floor = mesh.errorFloorKgPerM2(node) + (mesh.isClosedFace(node) ? FILM_FLOOR_KG_PER_M2 : 0.0);
            double water = storeByLog[node] * estimate[2 * node] / (tolerance * (state.waterKgPerM2[node] + floor));
            double warmth = estimate[2 * node + 1] / (tolerance * TEMPERATURE_SCALE_K);
            sum += water * water + warmth * warmth;
        }
        return Math.sqrt(sum / (2.0 * (last + 1)));
    }

    /**
     * Works out the new state without taking it.
     *
     * @return false if it is out of range: the step must be refused
     */
    public boolean propose() {
        trial.copyFrom(state);
        for (int i = 0; i < Rodas3.STAGES; i++) {
            add(Rodas3.m(i), stages[i]);
        }
        return invert(WallMesh.KEPT);
    }

    /** Takes the state that {@link #propose} worked out. */
    public void accept() {
        heatStoredJPerM2 = 0.0;
        for (int node = 0; node <= last; node++) {
            double water = trial.waterKgPerM2[node] - state.waterKgPerM2[node];
            double capacity = base.capacity[node] + 0.5 * waterHeatCapacityJPerKgK * water;
            heatStoredJPerM2 += capacity * (trial.celsius[node] - state.celsius[node]);
        }
        outer.accept(0.0, 0.0);
        inner.accept(0.0, 0.0);
        for (HeldNode node : held) {
            heatStoredJPerM2 += node.accept(state, trial, base.capacity[node.index()]);
        }
        state.copyFrom(trial);
    }

    /** Returns the heat stored over the accepted step, the sum of (rho c + c_w w) dT with w in the middle, J/m2. */
    double heatStoredJPerM2() {
        return heatStoredJPerM2;
    }

    /** Looks at a face in the present state and in the air last set. */
    FaceLook look(int node) {
        trial.copyFrom(state);
        held.forEach(given -> given.show(trial));
        base.evaluate(trial);
        links.flows(base, trial);
        faces(base, trial);
        FaceExchange face = node == 0 ? outer : inner;
        double water = face.vapourKgPerM2S();
        double heat = face.heatWPerM2();
        for (HeldNode given : held) {
            water = given.index() == node ? given.waterKgPerM2S(links) : water;
            heat = given.index() == node ? given.heatWPerM2(links) : heat;
        }
        double celsius = trial.celsius[node];
        return new FaceLook(celsius, base.relativeHumidity(node, celsius), water, heat);
    }

    private boolean stageState(int i) {
        trial.copyFrom(state);
        for (int j = 0; j < i; j++) {
            add(Rodas3.a(i, j), stages[j]);
        }
        return invert(WallMesh.LOOKED_AT);
    }

    private void add(double weight, double[] stage) {
        for (int node = 0; weight != 0.0 && node <= last; node++) {
            trial.waterKgPerM2[node] += weight * storeByLog[node] * stage[2 * node];
            trial.celsius[node] += weight * stage[2 * node + 1];
            trial.logSuction[node] += weight * stage[2 * node];
        }
    }

    private boolean invert(double accuracy) {
        held.forEach(node -> node.follow(trial));
        for (int node = 0; node <= last; node++) {
            double u = isHeld(node)
                    ? trial.logSuction[node]
                    : mesh.logSuction(node, trial.waterKgPerM2[node], trial.logSuction[node], accuracy);
            if (!(Math.abs(trial.celsius[node]) < 100.0) || Double.isNaN(u)) {
                return false;
            }
            trial.logSuction[node] = u;
        }
        return true;
    }

    private boolean isHeld(int node) {
        for (HeldNode given : held) {
            if (given.index() == node) {
                return true;
            }
        }
        return false;
    }

    private void faces(WallProperties p, WallState at) {
        outer.flows(p.vapourPa[0], at.celsius[0], mesh.filmKgPerM2(0, at.logSuction[0]));
        inner.flows(p.vapourPa[last], at.celsius[last], mesh.filmKgPerM2(last, at.logSuction[last]));
    }

    private void balance(WallProperties p) {
        for (int node = 0; node <= last; node++) {
            double water = source[node];
            double heat = 0.0;
            if (node > 0) {
                water += links.water[node - 1];
                heat += links.heat[node - 1];
            }
            if (node < last) {
                water -= links.water[node];
                heat -= links.heat[node];
            }
            residual[2 * node] = water;
            residual[2 * node + 1] = heat;
        }
        residual[0] += outer.vapourKgPerM2S() - outer.runOff();
        residual[1] += outer.heatWPerM2();
        residual[2 * last] += inner.vapourKgPerM2S() - inner.runOff();
        residual[2 * last + 1] += inner.heatWPerM2();
        for (int node = 0; p != base && node <= last; node++) {
            // The heat row is scaled by the capacity at the start of the step.
            residual[2 * node + 1] *= base.capacity[node] / p.capacity[node];
        }
    }

    private void fillMatrix(double perGammaStep) {
        stepMatrix.stores(perGammaStep, storeByLog, base.capacity);
        stepMatrix.heatByLog(residual, base.capacityByLog, base.capacity);
        stepMatrix.links(links.slopes);
        stepMatrix.face(0, outer);
        stepMatrix.face(last, inner);
        for (HeldNode node : held) {
            stepMatrix.hold(node.index());
        }
    }

    private void finish(int i, double[] innerRoom, double[] outerRoom) {
        System.arraycopy(rhs, 0, stages[i], 0, rhs.length);
        own[0] = rhs[2 * last];
        own[1] = rhs[2 * last + 1];
        inner.stage(i, stepS, own, innerRoom);
        own[0] = rhs[0];
        own[1] = rhs[1];
        outer.stage(i, stepS, own, outerRoom);
        for (HeldNode node : held) {
            node.stage(i, stepS, links, stages[i]);
        }
    }
}
