package org.limedry.wall;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import org.limedry.material.Material;

/**
 * One wall with its present state: what it holds, how it is stepped, and how coats are laid on it.
 *
 * <p>Mutable on purpose: the coupled solver owns one for every wall of a run and nobody else sees it. Depths count from
 * the outer face.
 */
public final class WallColumn implements WallView {
    /** As full as a cell is made by a film that is covered. */
    private static final double SOAKED_LOG_SUCTION = Math.log(10.0);

    /** As full as prewetting makes a cell: a share of that. */
    private static final double WET_SHARE = 0.95;

    /** Share of what it can hold above which a part of a wall takes no more rising damp. */
    private static final double FULL_SHARE = 0.98;

    private final WallPlan plan;
    private final Constants constants;
    private final Layout layout;
    private final Map<Material, Transport> tables = new HashMap<>();
    private final int oldLayers;
    private WallMesh mesh;
    private WallState state;
    private WallStep step;
    private WallProperties look;
    private WallReading reading;

    /**
     * Builds a wall as planned.
     *
     * @param plan the wall
     * @param constants constants of moist materials
     * @param gridFactor 1 for the ordinary grid, 2 for half of every cell
     */
    public WallColumn(WallPlan plan, Constants constants, double gridFactor) {
        this.plan = plan;
        this.constants = constants;
        layout = new Layout(plan, gridFactor);
        oldLayers = plan.startLayers().size();
        boolean film = !(plan.outside() instanceof Side.Sealed || plan.outside() instanceof Side.Soil);
        mesh = plan.isTabulated() ? WallMesh.emptyTabulated() : WallMesh.empty(film);
        for (int k = 0; k < oldLayers; k++) {
            mesh = mesh.with(layout.layer(k), table(plan.layers().get(k).material()));
        }
        state = new WallState(mesh.nodes());
        WallStart.fill(plan.startLayers(), mesh, state);
        for (int node = 0; node < mesh.nodes(); node++) {
            put(node, state.waterKgPerM2[node], state.logSuction[node]);
        }
        rebuild();
    }

    /**
     * Returns how many cells a wall has when all its later layers are laid.
     *
     * @param plan the wall
     * @param gridFactor 1 for the ordinary grid, 2 for half of every cell
     */
    public static int cells(WallPlan plan, double gridFactor) {
        return new Layout(plan, gridFactor).links();
    }

    @Override
    public WallPlan plan() {
        return plan;
    }

    /** Returns the wall's share of the present step; a new one after every coat. */
    public WallStep step() {
        return step;
    }

    @Override
    public int coats() {
        return mesh.layers() - oldLayers;
    }

    @Override
    public FaceFlow innerFlow() {
        return step.inner();
    }

    @Override
    public FaceFlow outerFlow() {
        return step.outer();
    }

    /** Returns how many nodes there are. */
    public int nodes() {
        return mesh.nodes();
    }

    /** Tells whether the inner face drinks. */
    public boolean isAbsorbent() {
        return !mesh.table(mesh.nodes() - 2).isClosed();
    }

    /**
     * Lays a coat on the inner face. What the face held as a film goes into the coat, as far as it takes it, and else to the
     * new face.
     *
     * @param material what it is made of
     * @param thicknessM its thickness, m
     * @param suctionPa its suction as laid, Pa
     * @param celsius its temperature as laid, C
     * @return its water as laid, kg/m2
     */
    public double lay(Material material, double thicknessM, double suctionPa, double celsius) {
        Transport table = table(material);
        int contact = mesh.nodes() - 1;
        double contactCapacity = capacity(contact);
        double film = innerFilmKgPerM2();
        mesh = mesh.with(layout.laid(mesh.layers(), thicknessM), table);
        WallState before = state;
        state = new WallState(mesh.nodes());
        System.arraycopy(before.waterKgPerM2, 0, state.waterKgPerM2, 0, contact + 1);
        System.arraycopy(before.celsius, 0, state.celsius, 0, contact + 1);
        System.arraycopy(before.logSuction, 0, state.logSuction, 0, contact + 1);
        double logSuction = mesh.scale().of(suctionPa);
        double fresh = table.waterKgPerM3(logSuction);
        double heat = table.dryHeatCapacityJPerM3K() + constants.waterHeatCapacityJPerKgK() * fresh;
        for (int node = contact + 1; node < mesh.nodes(); node++) {
            state.celsius[node] = celsius;
            put(node, (mesh.halfBeforeM(node) + mesh.halfAfterM(node)) * fresh, logSuction);
        }
        double freshCapacity = mesh.halfAfterM(contact) * heat;
        state.celsius[contact] = (contactCapacity * state.celsius[contact] + freshCapacity * celsius)
                / (contactCapacity + freshCapacity);
        put(
                contact,
                state.waterKgPerM2[contact] - film + mesh.halfAfterM(contact) * fresh,
                Math.min(logSuction, state.logSuction[contact]));
        for (int node = contact; node < mesh.nodes() && film > 0.0; node++) {
            film = pour(film, node, mesh.storedKgPerM2(node, SOAKED_LOG_SUCTION));
        }
        pour(film, mesh.nodes() - 1, Double.POSITIVE_INFINITY);
        rebuild();
        return thicknessM * fresh;
    }

    /**
     * Wets the inner face before a coat: cell after cell is filled to 95 % of free saturation, from the face inwards; of
     * what is then left the face holds a film, and the rest runs off.
     *
     * @param waterKgPerM2 water put on, kg/m2; at least 0
     * @return what ran off, kg/m2
     */
    public double prewet(double waterKgPerM2) {
        int face = mesh.nodes() - 1;
        double left = waterKgPerM2;
        for (int node = face; node >= 0 && left > 0.0 && isAbsorbent(); node--) {
            left = pour(left, node, WET_SHARE * mesh.storedKgPerM2(node, SOAKED_LOG_SUCTION));
        }
        double roomForFilm = WaterFilm.HELD_KG_PER_M2 - innerFilmKgPerM2();
        return pour(left, face, state.waterKgPerM2[face] + roomForFilm);
    }

    /** Puts water into a node until it holds {@code most} kg/m2; returns what is left. */
    private double pour(double waterKgPerM2, int node, double most) {
        double taken = Math.min(waterKgPerM2, Math.max(0.0, most - state.waterKgPerM2[node]));
        put(node, state.waterKgPerM2[node] + taken, state.logSuction[node]);
        return waterKgPerM2 - taken;
    }

    @Override
    public int layers() {
        return mesh.layers();
    }

    @Override
    public double thicknessM() {
        return reading.thicknessM();
    }

    @Override
    public double waterKgPerM2() {
        return Arrays.stream(state.waterKgPerM2).sum() - outerFilmKgPerM2() - innerFilmKgPerM2();
    }

    @Override
    public double coatsWaterKgPerM2() {
        double sum = 0.0;
        for (int coat = 1; coat <= coats(); coat++) {
            sum += coatWaterKgPerM2(coat);
        }
        return sum;
    }

    @Override
    public double coatWaterKgPerM2(int coat) {
        return layerWaterKgPerM2(oldLayers + coat - 1);
    }

    @Override
    public double layerWaterKgPerM2(int layer) {
        return reading.layerWaterKgPerM2(layer);
    }

    /** Returns the geometric mean of the suction over a coat, Pa. */
    public double coatMeanSuctionPa(int coat) {
        return mesh.scale().suctionPa(coatMean(state.logSuction, coat));
    }

    /** Returns the mean temperature of a coat, C. */
    public double coatMeanCelsius(int coat) {
        return coatMean(state.celsius, coat);
    }

    private double coatMean(double[] values, int coat) {
        return reading.mean(values, oldLayers + coat - 1);
    }

    /**
     * Returns where a point of a coat lies, as the nearest node.
     *
     * @param coat the coat
     * @param depthM depth under its inner face, m
     */
    public int nodeInCoat(int coat, double depthM) {
        return reading.nodeUnder(oldLayers + coat - 1, depthM);
    }

    /** Returns the pore saturation at a node, as a share of what its material (the inner one at a contact) can hold. */
    public double saturation(int node) {
        Transport table = mesh.table(Math.min(node, mesh.nodes() - 2));
        return Math.min(1.0, table.waterKgPerM3(state.logSuction[node]) / table.fullKgPerM3());
    }

    /** Returns the relative humidity in the pores at a node, fraction. */
    public double relativeHumidity(int node) {
        look.evaluate(node, state);
        return look.relativeHumidity(node, state.celsius[node]);
    }

    /** Returns the temperature of a node, C. */
    public double celsius(int node) {
        return state.celsius[node];
    }

    @Override
    public double innerCelsius() {
        return state.celsius[mesh.nodes() - 1];
    }

    @Override
    public double outerCelsius() {
        return state.celsius[0];
    }

    @Override
    public double innerRelativeHumidity() {
        return relativeHumidity(mesh.nodes() - 1);
    }

    @Override
    public double innerFilmKgPerM2() {
        return mesh.filmKgPerM2(mesh.nodes() - 1, state.logSuction[mesh.nodes() - 1]);
    }

    @Override
    public double outerFilmKgPerM2() {
        return mesh.filmKgPerM2(0, state.logSuction[0]);
    }

    @Override
    public double suctionPaAt(double depthM) {
        return mesh.scale().suctionPa(reading.at(state.logSuction, depthM));
    }

    @Override
    public double celsiusAt(double depthM) {
        return reading.at(state.celsius, depthM);
    }

    @Override
    public double waterKgPerM3At(double depthM) {
        return reading.waterKgPerM3At(depthM);
    }

    @Override
    public double relativeHumidityAt(double depthM) {
        return constants.relativeHumidity(suctionPaAt(depthM), celsiusAt(depthM));
    }

    @Override
    public double stepHeatStoredJPerM2() {
        return step.heatStoredJPerM2();
    }

    @Override
    public double wettestSuctionPa() {
        return mesh.scale().suctionPa(Arrays.stream(state.logSuction).min().orElseThrow());
    }

    @Override
    public FaceLook outerFace() {
        return step.look(0);
    }

    @Override
    public FaceLook innerFace() {
        return step.look(mesh.nodes() - 1);
    }

    /** Takes all water sources away. */
    public void clearSources() {
        Arrays.fill(step.source(), 0.0);
    }

    /** Adds a water source at a node, kg/(m2 s), constant until cleared. */
    public void addSource(int node, double kgPerM2S) {
        step.source()[node] += kgPerM2S;
    }

    /** Adds a water source spread over the thickness of a coat, kg/(m2 s); negative takes water. */
    public void addSourceInCoat(int coat, double kgPerM2S) {
        int layer = oldLayers + coat - 1;
        addSpread(mesh.firstNode(layer), mesh.lastNode(layer), kgPerM2S, link -> true);
    }

    /**
     * Adds a water source spread over the old wall, kg/(m2 s); parts that are full are left out.
     *
     * @return what was added, kg/(m2 s)
     */
    public double addSourceInWall(double kgPerM2S) {
        return addSpread(0, mesh.lastNode(oldLayers - 1), kgPerM2S, this::hasRoom);
    }

    private boolean hasRoom(int link) {
        double wetter = Math.min(state.logSuction[link], state.logSuction[link + 1]);
        Transport table = mesh.table(link);
        return table.waterKgPerM3(wetter) < FULL_SHARE * table.fullKgPerM3();
    }

    private double addSpread(int first, int last, double kgPerM2S, IntPredicate takes) {
        double thickness = 0.0;
        for (int link = first; link < last; link++) {
            thickness += mesh.linkM(link);
        }
        double added = 0.0;
        for (int link = first; link < last; link++) {
            double share = takes.test(link) ? kgPerM2S * mesh.linkM(link) / thickness : 0.0;
            step.source()[link] += 0.5 * share;
            step.source()[link + 1] += 0.5 * share;
            added += share;
        }
        return added;
    }

    private void put(int node, double waterKgPerM2, double guess) {
        state.waterKgPerM2[node] = waterKgPerM2;
        double u = mesh.logSuction(node, waterKgPerM2, guess, WallMesh.KEPT);
        if (Double.isNaN(u)) {
            throw new IllegalStateException(
                    "no suction holds " + waterKgPerM2 + " kg/m2 in node " + node + " of " + plan.name());
        }
        state.logSuction[node] = u;
    }

    private double capacity(int node) {
        look.evaluate(node, state);
        return look.capacity[node];
    }

    private Transport table(Material material) {
        return tables.computeIfAbsent(material, Transport::of);
    }

    private void rebuild() {
        step = new WallStep(mesh, state, constants, plan);
        look = new WallProperties(mesh, constants);
        reading = new WallReading(mesh, state);
    }
}
