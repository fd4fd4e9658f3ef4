package org.limedry.wall;

import org.limedry.numerics.Rodas3;

/**
 * The node of a face whose temperature and suction are given: it follows them, and what the wall takes is the flow over
 * the link behind it with what the node's own half cell takes up.
 *
 * <p>The node is an algebraic row of the step, {@code 0 = given(t) - y}: RODAS3 is stiffly accurate, so it lands on the
 * given state.
 */
final class HeldNode {
    private final int index;
    private final int link;
    private final double sign;
    private final WallMesh mesh;
    private final Constants constants;
    private final FaceExchange exchange;
    private final double[] start = new double[2];
    private final double[] end = new double[2];
    private double jumpKgPerM2;
    private double jumpKelvin;

    HeldNode(int index, WallMesh mesh, Constants constants, FaceExchange exchange) {
        this.index = index;
        this.mesh = mesh;
        this.constants = constants;
        this.exchange = exchange;
        link = index == 0 ? 0 : index - 1;
        sign = index == 0 ? 1.0 : -1.0;
    }

    int index() {
        return index;
    }

    /** Takes the given state at both ends of the next step; a state that begins with a jump is the wall's to pay for. */
    void begin(double stepS, WallState state) {
        Face face = exchange.face();
        given(face.airCelsius, face.airVapourPa, start);
        given(face.airCelsius + stepS * face.airCelsiusPerS, face.airVapourPa + stepS * face.airVapourPaPerS, end);
        double water = state.waterKgPerM2[index];
        double celsius = state.celsius[index];
        impose(state);
        jumpKgPerM2 += state.waterKgPerM2[index] - water;
        jumpKelvin += state.celsius[index] - celsius;
    }

    /** Puts the state now given into a copy of the wall's state. */
    void show(WallState copy) {
        given(exchange.face().airCelsius, exchange.face().airVapourPa, start);
        impose(copy);
    }

    private void impose(WallState state) {
        state.logSuction[index] = start[0];
        state.celsius[index] = start[1];
        follow(state);
    }

    private void given(double celsius, double vapourPa, double[] to) {
        double humidity = vapourPa / constants.saturation().pressurePa(celsius);
        to[0] = mesh.scale().of(constants.suctionPa(humidity, celsius));
        to[1] = celsius;
    }

    /** Sets the water of the node to what belongs to its suction. */
    void follow(WallState state) {
        state.waterKgPerM2[index] = mesh.storedKgPerM2(index, state.logSuction[index]);
    }

    /** Writes the right-hand side of its rows in a stage that looks at {@code state}. */
    void rightHandSide(int i, WallState state, double[] rhs) {
        double[] now = Rodas3.alpha(i) > 0.5 ? end : start;
        double rate = Rodas3.gamma(i);
        rhs[2 * index] = now[0] - state.logSuction[index] + rate * (end[0] - start[0]);
        rhs[2 * index + 1] = now[1] - state.celsius[index] + rate * (end[1] - start[1]);
    }

    /** Records the flow over its link in a stage. */
    void stage(int i, double stepS, Links links, double[] stage) {
        exchange.stageHeld(
                i,
                stepS,
                sign * (links.water[link] + along(links.slopes, 8 * link, stage)),
                sign * (links.heat[link] + along(links.slopes, 8 * link + 4, stage)));
    }

    private double along(double[] slopes, int from, double[] stage) {
        double sum = 0.0;
        for (int k = 0; k < 4; k++) {
            sum += slopes[from + k] * stage[2 * link + k];
        }
        return sum;
    }

    /** Returns the water flow into the wall over its link, kg/(m2 s). */
    double waterKgPerM2S(Links links) {
        return sign * links.water[link];
    }

    /** Returns the heat flow into the wall over its link, W/m2. */
    double heatWPerM2(Links links) {
        return sign * links.heat[link];
    }

    /**
     * Takes the step from {@code before} to {@code after}.
     *
     * @param capacity heat capacity of the node, J/(m2 K)
     * @return the heat of a jump at the start of the step, J/m2
     */
    double accept(WallState before, WallState after, double capacity) {
        double jump = capacity * jumpKelvin;
        exchange.accept(
                jumpKgPerM2 + after.waterKgPerM2[index] - before.waterKgPerM2[index],
                jump + capacity * (after.celsius[index] - before.celsius[index]));
        jumpKgPerM2 = 0.0;
        jumpKelvin = 0.0;
        return jump;
    }
}
