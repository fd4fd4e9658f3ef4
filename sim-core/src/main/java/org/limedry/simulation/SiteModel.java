package org.limedry.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.limedry.climate.Outdoors;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.Laying;
import org.limedry.room.RoomPlan;
import org.limedry.room.VapourExchange;
import org.limedry.simulation.Ledger.Term;
import org.limedry.units.Check;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.WallColumn;
import org.limedry.wall.WallPlan;
import org.limedry.wall.WallView;

/** A site in motion: walls, rooms, coats and books, made from a scenario and changed only by the time loop. */
final class SiteModel implements SiteView {
    private final Scenario scenario;
    private final List<WallColumn> columns = new ArrayList<>();
    private final List<CoatCourse> coats = new ArrayList<>();
    private final List<String> roomNames;
    private final FaceAir air;
    private final SiteFlows flows;
    private final CoupledSystem system;
    private final Chemistry chemistry;
    private final Books books;
    private final Gangs gangs;
    private final double[] mistKgPerM2S;
    private final double[] risingKgPerS;
    private double heldBackKg;

    SiteModel(Scenario scenario) {
        this.scenario = scenario;
        Physics physics = scenario.physics();
        for (WallPlan wall : scenario.walls()) {
            columns.add(new WallColumn(
                    wall, physics.constants(), scenario.accuracy().gridFactor()));
        }
        scenario.coats().forEach(coat -> coats.add(course(coat)));
        List<RoomPlan> rooms = scenario.rooms();
        roomNames = rooms.stream().map(RoomPlan::name).toList();
        air = new FaceAir(columns, roomNames, physics.surfaces(), physics.constants());
        checkFaces(air, roomNames);
        VapourExchange exchange = new VapourExchange(
                physics.air().balance(),
                physics.air().pressurePa(),
                physics.constants().gasConstantVapourJPerKgK(),
                physics.airHeat());
        flows = new SiteFlows(rooms, physics, exchange);
        double[] volumeM3 = rooms.stream().mapToDouble(RoomPlan::volumeM3).toArray();
        boolean radiates = physics.surfaces().radiantWPerM2K() > 0.0;
        ZoneStep zone = new ZoneStep(heatCapacities(rooms, exchange), volumeM3, radiates);
        system = new CoupledSystem(columns, air, flows, zone, startRooms(rooms));
        chemistry = new Chemistry(coats, air, flows, physics.outdoorCarbonDioxidePpm(), volumeM3);
        books = new Books(columns, air, system, volumeM3, faceBooks());
        gangs = new Gangs(coats);
        mistKgPerM2S = new double[columns.size()];
        risingKgPerS = new double[columns.size()];
    }

    private CoatCourse course(CoatPlan coat) {
        int wall = wallIndex(coat.wall());
        Check.that(
                columns.get(wall).plan().laterLayers().isEmpty(),
                "laterLayers",
                "none on a wall with coats",
                coat.wall());
        List<HandTest> tests = scenario.handTests().stream()
                .filter(test -> test.wall().equals(coat.wall()) && test.coat() == coat.number())
                .toList();
        return new CoatCourse(coat, scenario.rule(), tests, columns.get(wall), wall);
    }

    @Override
    public List<WallView> walls() {
        return List.copyOf(columns);
    }

    @Override
    public double airCelsius(int room) {
        return system.rooms().airCelsius(room);
    }

    @Override
    public double radiantCelsius(int room) {
        return system.rooms().radiantCelsius(room);
    }

    @Override
    public double vapourKgPerM3(int room) {
        return system.rooms().vapourKgPerM3(room);
    }

    @Override
    public double vapourPa(int room) {
        return system.rooms().vapourPa(room, physics().constants().gasConstantVapourJPerKgK());
    }

    @Override
    public double stepOutByAirKg(int room) {
        return system.zone().overStep(room, ZoneTerms.OUT_BY_AIR);
    }

    Physics physics() {
        return scenario.physics();
    }

    List<String> roomNames() {
        return roomNames;
    }

    List<WallColumn> columns() {
        return columns;
    }

    List<CoatCourse> coats() {
        return coats;
    }

    FaceAir air() {
        return air;
    }

    SiteFlows flows() {
        return flows;
    }

    CoupledSystem system() {
        return system;
    }

    Chemistry chemistry() {
        return chemistry;
    }

    Books books() {
        return books;
    }

    /** Returns rising damp that found its wall full, kg. */
    double heldBackKg() {
        return heldBackKg;
    }

    int cells() {
        return columns.stream().mapToInt(WallColumn::nodes).sum();
    }

    /**
     * Does what falls due at an instant: lays coats and takes over what is open and on.
     *
     * @return whether a coat was laid
     */
    boolean event(Instant now) {
        if (!roomNames.isEmpty()) {
            flows.update(now);
            for (int room = 0; room < roomNames.size(); room++) {
                air.convection(room, flows.convectionWPerM2K(room));
            }
        }
        coats.forEach(coat -> coat.judge(now));
        gangs.goOn(now);
        boolean any = false;
        for (CoatCourse coat : coats) {
            if (isDue(coat, now)) {
                lay(coat, now);
                any = true;
            }
        }
        for (int wall = 0; wall < columns.size(); wall++) {
            any |= layLater(wall, now);
        }
        return any;
    }

    /** Lays the layers without lime that are due on a wall. */
    private boolean layLater(int wall, Instant now) {
        WallColumn column = columns.get(wall);
        List<LayerPlan> later = column.plan().laterLayers();
        boolean any = false;
        while (column.coats() < later.size()
                && !now.isBefore(later.get(column.coats()).laid())) {
            LayerPlan layer = later.get(column.coats());
            double water =
                    column.lay(layer.material(), layer.thicknessM(), layer.startSuctionPa(), layer.startCelsius());
            books.ofWall(wall).add(Term.LAID, column.plan().areaM2() * water);
            any = true;
        }
        return any;
    }

    /** Shows every face the air at the start of a stretch of time, for an onlooker before the first step. */
    void showAir(Outdoors.Piece weather, Map<String, Outdoors.Piece> courses, double stepS) {
        air.begin(weather, courses, stepS);
        air.set(system.rooms(), 0.0);
    }

    /** Sets what stays constant over the next step: mist, rising damp, set, carbonation and earth floors. */
    void prepare(Weather weather, double stepS) {
        for (int wall = 0; wall < columns.size(); wall++) {
            WallColumn column = columns.get(wall);
            column.clearSources();
            mistKgPerM2S[wall] = 0.0;
            for (int room = 0; room < roomNames.size(); room++) {
                mistKgPerM2S[wall] +=
                        flows.plant(room).mistOnKgPerM2S(column.plan().name());
            }
            column.addSource(column.nodes() - 1, mistKgPerM2S[wall]);
            double area = column.plan().areaM2();
            double rising = column.plan().risingDampKgPerS();
            risingKgPerS[wall] = rising > 0.0 ? area * column.addSourceInWall(rising / area) : 0.0;
            if (column.plan().kind() == WallPlan.Kind.FLOOR && air.innerRoom(wall) >= 0) {
                double face = column.innerCelsius();
                flows.earthSaturation(
                        air.innerRoom(wall), physics().constants().saturation().pressurePa(face));
            }
        }
        chemistry.prepare(system.rooms(), weather, stepS);
    }

    /** Takes a step that has been accepted. */
    void take(Instant now, double stepS) {
        books.take(stepS, physics().constants().gasConstantVapourJPerKgK());
        for (int wall = 0; wall < columns.size(); wall++) {
            WallPlan plan = columns.get(wall).plan();
            books.ofWall(wall).add(Term.WETTING, mistKgPerM2S[wall] * plan.areaM2() * stepS);
            books.ofWall(wall).add(Term.GROUND, risingKgPerS[wall] * stepS);
            heldBackKg += (plan.risingDampKgPerS() - risingKgPerS[wall]) * stepS;
        }
        chemistry.accept(now, stepS, books);
        for (CoatCourse coat : coats) {
            coat.judge(now);
        }
    }

    private boolean isDue(CoatCourse coat, Instant now) {
        if (coat.isLaid() || coat.column().coats() != coat.plan().number() - 1) {
            return false;
        }
        Laying laying = coat.plan().laying();
        if (laying instanceof Laying.ByGang gang) {
            return gangs.isDone(coat) || isTakenOn(coat, gang, now);
        }
        if (laying instanceof Laying.WhenReady when) {
            return mayGoOn(coat, when, now);
        }
        return laying instanceof Laying.On on && !now.isBefore(on.instant());
    }

    /** Offers a coat to the gangs; tells whether one lays it the same day. */
    private boolean isTakenOn(CoatCourse coat, Laying.ByGang laying, Instant now) {
        if (coat.work().isPresent() || now.isBefore(laying.earliest()) || !mayGoOn(coat, laying.when(), now)) {
            return false;
        }
        coat.offer(now);
        return gangs.takeOn(coat, laying, now) && gangs.isDone(coat);
    }

    private boolean mayGoOn(CoatCourse coat, Laying.WhenReady when, Instant now) {
        return when.isMorning(now) && under(coat, now) && roomCelsius(coat) > when.coldLineCelsius();
    }

    private boolean under(CoatCourse coat, Instant now) {
        for (CoatCourse other : coats) {
            boolean isUnder = other.wall() == coat.wall()
                    && other.plan().number() == coat.plan().number() - 1;
            if (isUnder && !other.ready().map(now::isAfter).orElse(false)) {
                return false;
            }
        }
        return true;
    }

    private double roomCelsius(CoatCourse coat) {
        int room = air.innerRoom(coat.wall());
        return room < 0 ? coat.column().innerCelsius() : system.rooms().airCelsius(room);
    }

    private void lay(CoatCourse coat, Instant now) {
        Ledger ledger = books.ofWall(coat.wall());
        double area = coat.column().plan().areaM2();
        double ranOff = coat.column().prewet(coat.plan().prewettingKgPerM2());
        ledger.add(Term.WETTING, area * coat.plan().prewettingKgPerM2());
        ledger.add(Term.RUN_OFF, area * ranOff);
        coat.lay(now);
        ledger.add(Term.LAID, area * coat.waterLaidKgPerM2());
    }

    /** Refuses a room without a face: its radiant node would have nothing to be in balance with. */
    private static void checkFaces(FaceAir air, List<String> roomNames) {
        for (int room = 0; room < roomNames.size(); room++) {
            int index = room;
            boolean hasFace = air.roomFaces().stream().anyMatch(face -> face.room() == index);
            Check.that(hasFace, "rooms", "each with at least one face", roomNames.get(room));
        }
    }

    private int wallIndex(String name) {
        for (int wall = 0; wall < columns.size(); wall++) {
            if (columns.get(wall).plan().name().equals(name)) {
                return wall;
            }
        }
        throw new IllegalArgumentException("wall: must be a wall of the site, was " + name);
    }

    private List<FaceBook> faceBooks() {
        List<FaceBook> result = new ArrayList<>();
        for (RoomFace face : air.roomFaces()) {
            result.add(new FaceBook(
                    face,
                    columns.get(face.wall()),
                    roomNames.get(face.room()),
                    physics().constants()));
        }
        return result;
    }

    private RoomUnknowns startRooms(List<RoomPlan> rooms) {
        RoomUnknowns start = new RoomUnknowns(new double[RoomUnknowns.PER_ROOM * rooms.size()]);
        Constants constants = physics().constants();
        for (int room = 0; room < rooms.size(); room++) {
            RoomPlan plan = rooms.get(room);
            double celsius = plan.startCelsius();
            double vapourPa =
                    plan.startRelativeHumidity() * constants.saturation().pressurePa(celsius);
            start.put(room, celsius, vapourPa, constants.gasConstantVapourJPerKgK());
        }
        return start;
    }

    private double[] heatCapacities(List<RoomPlan> rooms, VapourExchange exchange) {
        RoomUnknowns start = startRooms(rooms);
        double[] result = new double[rooms.size()];
        for (int room = 0; room < result.length; room++) {
            double perM3 = exchange.moistJPerM3K(start.airCelsius(room), start.vapourKgPerM3(room));
            result[room] = rooms.get(room).volumeM3() * perM3 + rooms.get(room).fittingsJPerK();
        }
        return result;
    }
}
