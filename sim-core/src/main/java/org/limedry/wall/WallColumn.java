package org.limedry.wall;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
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
    private final double gridFactor;
    private final Map<Material, TransportTable> tables = new HashMap<>();
    private final int oldLayers;
    private WallMesh mesh;
    private WallState state;
    private WallStep step;
    private WallProperties look;

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
        this.gridFactor = gridFactor;
        oldLayers = plan.layers().size();
        boolean film = !(plan.outside() instanceof Side.Sealed || plan.outside() instanceof Side.Soil);
        mesh = WallMesh.empty(film);
        for (int k = 0; k < oldLayers; k++) {
            LayerPlan layer = plan.layers().get(k);
            Grid.End start = k == 0 ? outerEnd(plan.outside()) : Grid.End.OUTER;
            Grid.End end = k == oldLayers - 1 ? Grid.End.FACE : Grid.End.OUTER;
            mesh = mesh.with(Grid.layer(layer.thicknessM(), gridFactor, start, end), table(layer.material()));
        }
        state = new WallState(mesh.nodes());
        start(plan.layers());
        rebuild();
    }

    private static Grid.End outerEnd(Side outside) {
        if (outside instanceof Side.Sealed || outside instanceof Side.Soil) {
            return Grid.End.STILL;
        }
        return outside instanceof Side.Room ? Grid.End.FACE : Grid.End.OUTER;
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
        TransportTable table = table(material);
        int contact = mesh.nodes() - 1;
        double contactCapacity = capacity(contact);
        double film = innerFilmKgPerM2();
        mesh = mesh.with(Grid.coat(thicknessM, gridFactor), table);
        WallState before = state;
        state = new WallState(mesh.nodes());
        System.arraycopy(before.waterKgPerM2, 0, state.waterKgPerM2, 0, contact + 1);
        System.arraycopy(before.celsius, 0, state.celsius, 0, contact + 1);
        System.arraycopy(before.logSuction, 0, state.logSuction, 0, contact + 1);
        double logSuction = Math.log(suctionPa);
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
    public double waterKgPerM2() {
        double sum = 0.0;
        for (int node = 0; node < mesh.nodes(); node++) {
            sum += state.waterKgPerM2[node];
        }
        return sum - outerFilmKgPerM2() - innerFilmKgPerM2();
    }

    /** Returns the water in the coats, kg/m2. */
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
        double sum = 0.0;
        for (int node = mesh.firstNode(layer); node <= mesh.lastNode(layer); node++) {
            if (node > mesh.firstNode(layer)) {
                sum += mesh.halfBeforeM(node) * mesh.table(node - 1).waterKgPerM3(state.logSuction[node]);
            }
            if (node < mesh.lastNode(layer)) {
                sum += mesh.halfAfterM(node) * mesh.table(node).waterKgPerM3(state.logSuction[node]);
            }
        }
        return sum;
    }

    /** Returns the geometric mean of the suction over a coat, Pa. */
    public double coatMeanSuctionPa(int coat) {
        return Math.exp(coatMean(state.logSuction, coat));
    }

    /** Returns the mean temperature of a coat, C. */
    public double coatMeanCelsius(int coat) {
        return coatMean(state.celsius, coat);
    }

    private double coatMean(double[] values, int coat) {
        int layer = oldLayers + coat - 1;
        double sum = 0.0;
        double thickness = 0.0;
        for (int link = mesh.firstNode(layer); link < mesh.lastNode(layer); link++) {
            sum += mesh.linkM(link) * 0.5 * (values[link] + values[link + 1]);
            thickness += mesh.linkM(link);
        }
        return sum / thickness;
    }

    /**
     * Returns where a point of a coat lies, as the nearest node.
     *
     * @param coat the coat
     * @param depthM depth under its inner face, m
     */
    public int nodeInCoat(int coat, double depthM) {
        int layer = oldLayers + coat - 1;
        int node = mesh.lastNode(layer);
        double reach = 0.0;
        while (node > mesh.firstNode(layer) && reach + 0.5 * mesh.linkM(node - 1) < depthM) {
            reach += mesh.linkM(node - 1);
            node--;
        }
        return node;
    }

    /** Returns the pore saturation at a node, as a share of what its material (the inner one at a contact) can hold. */
    public double saturation(int node) {
        TransportTable table = mesh.table(Math.min(node, mesh.nodes() - 2));
        return Math.min(1.0, table.waterKgPerM3(state.logSuction[node]) / table.waterKgPerM3(0.0));
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
        return Math.exp(at(state.logSuction, depthM));
    }

    @Override
    public double celsiusAt(double depthM) {
        return at(state.celsius, depthM);
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
        TransportTable table = mesh.table(link);
        return table.waterKgPerM3(wetter) < FULL_SHARE * table.waterKgPerM3(0.0);
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

    private void start(List<LayerPlan> layers) {
        for (int node = 0; node < mesh.nodes(); node++) {
            LayerPlan before = layers.get(mesh.layerOfLink(Math.max(0, node - 1)));
            LayerPlan after = layers.get(mesh.layerOfLink(Math.min(node, mesh.nodes() - 2)));
            double logBefore = Math.log(before.startSuctionPa());
            double logAfter = Math.log(after.startSuctionPa());
            double water = mesh.filmKgPerM2(node, node == 0 ? logAfter : logBefore);
            double heatBefore = 0.0;
            double heatAfter = 0.0;
            if (node > 0) {
                water += mesh.halfBeforeM(node) * mesh.table(node - 1).waterKgPerM3(logBefore);
                heatBefore = mesh.halfBeforeM(node) * mesh.table(node - 1).dryHeatCapacityJPerM3K();
            }
            if (node < mesh.nodes() - 1) {
                water += mesh.halfAfterM(node) * mesh.table(node).waterKgPerM3(logAfter);
                heatAfter = mesh.halfAfterM(node) * mesh.table(node).dryHeatCapacityJPerM3K();
            }
            state.celsius[node] =
                    (heatBefore * before.startCelsius() + heatAfter * after.startCelsius()) / (heatBefore + heatAfter);
            put(node, water, Math.min(logBefore, logAfter));
        }
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

    private double at(double[] values, double depthM) {
        double reach = 0.0;
        int link = 0;
        while (link < mesh.nodes() - 2 && reach + mesh.linkM(link) < depthM) {
            reach += mesh.linkM(link);
            link++;
        }
        double share = Math.min(1.0, Math.max(0.0, (depthM - reach) / mesh.linkM(link)));
        return values[link] + share * (values[link + 1] - values[link]);
    }

    private TransportTable table(Material material) {
        return tables.computeIfAbsent(material, TransportTable::new);
    }

    private void rebuild() {
        step = new WallStep(mesh, state, constants);
        look = new WallProperties(mesh, constants);
    }
}
