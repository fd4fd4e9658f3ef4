package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.MortarChoice;
import org.limedry.reference.Estimate;
import org.limedry.reference.MaterialRow;
import org.limedry.reference.MaterialTable;
import org.limedry.room.AirExchange;
import org.limedry.room.Surfaces;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;

/** Every figure of the demo that is still from memory, assumed or judged, each with a low and a high run. */
final class MemoryTrials {
    private static final String JUDGED = "range judged";
    private static final String TABLE = "range of the table";

    /**
     * One figure tried low and high.
     *
     * @param words what it is
     * @param value the value taken
     * @param low the low value tried
     * @param high the high value tried
     * @param status how the figure was obtained, and whose range it is
     * @param run makes the demo with the figure at a value
     */
    record Trial(String words, double value, double low, double high, String status, DoubleFunction<Scenario> run) {}

    private final DemoChanges demo = new DemoChanges();
    private final List<Trial> trials = new ArrayList<>();

    private MemoryTrials() {
        wetness();
        walls();
        coats();
        coatTransport();
        coatRest();
        rules();
        room();
        roomSurroundings();
        faces();
        facesByRadiation();
        facesOutdoors();
        openings();
    }

    static List<Trial> all() {
        return new MemoryTrials().trials;
    }

    /** Returns the demo as it is. */
    static Scenario demo() {
        return new DemoChanges().asItIs();
    }

    private void add(String words, Estimate tried, String status, DoubleFunction<Scenario> run) {
        trials.add(new Trial(words, tried.likely(), tried.low(), tried.high(), status, run));
    }

    private static Estimate range(double likely, double low, double high) {
        return new Estimate(likely, low, high);
    }

    private static Estimate within(double likely, double share) {
        return range(likely, likely * (1.0 - share), likely * (1.0 + share));
    }

    private void wetness() {
        add(
                "what \"wet\" means, % of saturation",
                range(50, 30, 70),
                "judgement; " + JUDGED,
                value -> demo.replaced(
                        "wetness: wet", "wetness: {saturationPercent: " + DemoChanges.plain(value) + "}"));
        add(
                "what \"damp\" means, % RH in the pores",
                range(90, 80, 97),
                "judgement; " + JUDGED,
                value -> demo.replaced("wetness: damp", "wetness: {rhPercent: " + DemoChanges.plain(value) + "}"));
        add(
                "how damp floors, ceilings and the rest of the walls begin, % RH",
                range(90, 75, 97), "from memory; " + JUDGED, value -> demo.madeUpFacesAt(value / 100.0));
    }

    private void walls() {
        MaterialTable table = MaterialTable.load();
        wall("old brick", table.named("historic hand-made clay brick"));
        wall("lime-rubble stone", table.named("lime-rubble masonry (effective)"));
        wall("timber lath", table.named("lath and gaps as an 8 mm layer"));
    }

    private void wall(String words, MaterialRow row) {
        String status = row.status().startsWith("MEMORY") ? "from memory; " : "assumed, no source; ";
        row.entrySuctionKPa()
                .ifPresent(range -> own(words, "entrySuctionKPa", range, "entry suction, kPa", "assumed; " + TABLE));
        Estimate absorption = row.absorptionKgPerM2RootS().orElseThrow();
        own(words, "absorptionKgPerM2RootS", open(absorption), "water absorption A", status + ranged(absorption));
        Estimate mu = row.vapourResistanceDry();
        own(words, "vapourResistance", open(mu), "vapour resistance mu", status + ranged(mu));
        double at80 = row.waterAt80PercentKgPerM3().orElseThrow();
        own(words, "waterAt80KgPerM3", within(at80, 0.3), "water at 80 % RH", status + JUDGED);
        double full = row.freeSaturationKgPerM3().orElseThrow();
        own(words, "freeSaturationKgPerM3", within(full, 0.2), "free saturation", status + JUDGED);
        own(words, "dryDensityKgPerM3", within(row.densityKgPerM3(), 0.1), "density", status + JUDGED);
        own(words, "heatCapacityJPerKgK", within(row.heatCapacityJPerKgK(), 0.1), "specific heat", status + JUDGED);
        double dry = row.dryConductivityWPerMK();
        own(words, "conductivityWPerMK", within(dry, 0.3), "thermal conductivity", status + JUDGED);
    }

    private static boolean isRanged(Estimate estimate) {
        return estimate.low() < estimate.high();
    }

    private static Estimate open(Estimate estimate) {
        return isRanged(estimate) ? estimate : within(estimate.likely(), 0.5);
    }

    private static String ranged(Estimate estimate) {
        return isRanged(estimate) ? TABLE : JUDGED;
    }

    private void own(String wall, String key, Estimate tried, String words, String status) {
        add(
                words + " of " + wall,
                tried,
                status,
                value -> demo.withLine("own", "{" + wall + ": {" + key + ": " + DemoChanges.plain(value) + "}}"));
    }

    private void coats() {
        add(
                "free water of the mixes, factor",
                range(1.0, 0.85, 1.16),
                "computed from assumed figures; " + TABLE,
                factor -> demo.mortars(choice -> new MortarChoice(
                        OptionalDouble.of(choice.usual().freeWaterKgPerM3() * factor), NONE, NONE, NONE, NONE)));
        add(
                "entry suction of the coats, factor",
                range(1.0, 1.0 / 3.0, 3.0),
                "assumed; " + TABLE,
                factor -> demo.mortars(choice -> new MortarChoice(
                        NONE,
                        OptionalDouble.of(choice.sheet().storage().entrySuctionPa() * factor),
                        NONE,
                        NONE,
                        NONE)));
    }

    private void coatTransport() {
        add(
                "water absorption A of the coats, factor",
                range(1.0, 0.5, 2.0),
                "from memory; " + TABLE,
                factor -> demo.mortars(choice -> new MortarChoice(
                        NONE,
                        NONE,
                        OptionalDouble.of(choice.sheet().transport().absorptionKgPerM2SqrtS() * factor),
                        NONE,
                        NONE)));
        add(
                "vapour resistance mu of the coats, factor",
                range(1.0, 0.67, 1.67),
                "from memory; " + TABLE,
                factor -> demo.mortars(choice -> new MortarChoice(
                        NONE,
                        NONE,
                        NONE,
                        OptionalDouble.of(choice.sheet().transport().vapourResistance() * factor),
                        NONE)));
        add(
                "depth coefficient of hardening, factor",
                range(1.0, 0.43, 1.43),
                "computed from assumed figures; " + TABLE,
                factor -> demo.coats(plan -> DemoChanges.withMortar(
                        plan,
                        DemoChanges.with(
                                plan.mortar(),
                                plan.mortar().boundWaterKgPerM3(),
                                plan.mortar().carbonationMPerSqrtS() * factor))));
    }

    private void coatRest() {
        add(
                "water bound by slag in the end, factor",
                range(1.0, 0.5, 2.0),
                "from memory; " + TABLE,
                factor -> demo.coats(plan -> DemoChanges.withMortar(
                        plan,
                        DemoChanges.with(
                                plan.mortar(),
                                plan.mortar().boundWaterKgPerM3() * factor,
                                plan.mortar().carbonationMPerSqrtS()))));
        add(
                "temperature of the mortar when laid, C",
                range(10, 5, 15),
                "from memory; " + JUDGED,
                value -> demo.coats(plan -> new CoatPlan(
                        plan.wall(),
                        plan.number(),
                        plan.mortar(),
                        plan.thicknessM(),
                        value,
                        plan.prewettingKgPerM2(),
                        plan.laying())));
        add(
                "true thickness of the coats, factor",
                range(1.0, 0.85, 1.15),
                "judgement; " + TABLE,
                value -> demo.assumed("coatThicknessFactor", value));
    }

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private void rules() {
        add(
                "ready rule: suction, kPa",
                range(300, 100, 1000),
                "fitted to loose practice; " + TABLE,
                value -> demo.assumed("readySuctionKPa", value));
        add(
                "ready rule: age at 20 C, days",
                range(2, 1, 3),
                "fitted to loose practice; " + TABLE,
                value -> demo.assumed("readyAgeDays", value));
        add(
                "the year's weather, days later",
                range(0, -21, 21),
                "one year stands for all; " + JUDGED,
                value -> demo.assumed("weatherShiftDays", value));
    }

    private void room() {
        add(
                "leakage if it were not stated, 1/h",
                range(0.6, 0.2, 2.0),
                "from memory; " + TABLE,
                value -> demo.replaced(
                        "leakagePerHour: {low: 0.2, likely: 0.5, high: 1.0}",
                        "leakagePerHour: " + DemoChanges.plain(value)));
        add(
                "humidity as the run begins, % RH",
                range(85, 70, 95),
                "from memory; " + JUDGED,
                value -> demo.replaced(
                        "    floor: flags", "    startRhPercent: " + DemoChanges.plain(value) + "\n    floor: flags"));
        add(
                "heat held by what stands in a room, factor",
                range(1.0, 0.5, 2.0),
                "from memory; " + JUDGED,
                factor -> demo.rooms(
                        room -> DemoChanges.with(room, room.fittingsJPerK() * factor, room.earthFloorKgPerM2S())));
        add(
                "water given by the earth floor, factor",
                range(1.0, 1.0 / 3.0, 2.0),
                "estimate; " + TABLE,
                factor -> demo.rooms(
                        room -> DemoChanges.with(room, room.fittingsJPerK(), room.earthFloorKgPerM2S() * factor)));
    }

    private void roomSurroundings() {
        add(
                "radiant share of the heater, %",
                range(30, 0, 60),
                "from memory; " + JUDGED,
                value -> demo.replaced(
                        "thermostatCelsius: 14", "thermostatCelsius: 14, radiantPercent: " + DemoChanges.plain(value)));
        add(
                "conductivity of soil, factor",
                range(1.0, 0.67, 1.5),
                "from memory; " + JUDGED,
                factor -> demo.conductivity("soil", factor));
        add(
                "U value of single glass, by its pane, factor",
                range(1.0, 0.5, 2.0),
                "from memory; " + JUDGED,
                factor -> demo.conductivity("glass", factor));
    }

    private void faces() {
        add(
                "heat taken up by a face in still air, W/m2K",
                range(3, 2, 5),
                "from memory; " + TABLE,
                value -> demo.assumed("stillAirWPerM2K", value));
        add(
                "the same with a door open, W/m2K",
                range(5, 4, 8),
                "from memory; " + JUDGED,
                value -> demo.faces(s -> new Surfaces(
                        s.stillWPerM2K(),
                        value,
                        s.aimedWPerM2K(),
                        s.radiantWPerM2K(),
                        s.vapourPerConvectionKPerJ(),
                        s.outsideStillWPerM2K(),
                        s.outsideWindWPerM2KPerMPerS())));
    }

    private void facesByRadiation() {
        add(
                "long-wave exchange of faces, W/m2K",
                range(5, 4.7, 5.3),
                "from memory; " + TABLE,
                value -> demo.faces(s -> new Surfaces(
                        s.stillWPerM2K(),
                        s.doorOpenWPerM2K(),
                        s.aimedWPerM2K(),
                        value,
                        s.vapourPerConvectionKPerJ(),
                        s.outsideStillWPerM2K(),
                        s.outsideWindWPerM2KPerMPerS())));
        add(
                "Lewis factor, 1e-9 s/m per W/m2K",
                range(7.0, 6.0, 8.0),
                "from memory; " + JUDGED,
                value -> demo.faces(s -> new Surfaces(
                        s.stillWPerM2K(),
                        s.doorOpenWPerM2K(),
                        s.aimedWPerM2K(),
                        s.radiantWPerM2K(),
                        value * 1e-9,
                        s.outsideStillWPerM2K(),
                        s.outsideWindWPerM2KPerMPerS())));
    }

    private void facesOutdoors() {
        add(
                "convection outdoors without wind, W/m2K",
                range(4, 2, 8),
                "from memory; " + JUDGED,
                value -> demo.faces(s -> new Surfaces(
                        s.stillWPerM2K(),
                        s.doorOpenWPerM2K(),
                        s.aimedWPerM2K(),
                        s.radiantWPerM2K(),
                        s.vapourPerConvectionKPerJ(),
                        value,
                        s.outsideWindWPerM2KPerMPerS())));
        add(
                "convection outdoors for each m/s of wind",
                range(4, 2, 6),
                "from memory; " + JUDGED,
                value -> demo.faces(s -> new Surfaces(
                        s.stillWPerM2K(),
                        s.doorOpenWPerM2K(),
                        s.aimedWPerM2K(),
                        s.radiantWPerM2K(),
                        s.vapourPerConvectionKPerJ(),
                        s.outsideStillWPerM2K(),
                        value)));
    }

    private void openings() {
        add(
                "air through openings against the formula, factor",
                range(1, 0.5, 2),
                "formula from memory; " + TABLE,
                value -> demo.assumed("openingFlowFactor", value));
        add(
                "wind pressure across a room, dCp",
                range(0.4, 0.2, 0.8),
                "from memory; " + TABLE,
                value -> demo.physics(p -> new Physics(
                        p.constants(),
                        p.surfaces(),
                        new AirExchange(
                                p.air().balance(),
                                p.air().pressurePa(),
                                p.air().openingFactor(),
                                value,
                                p.air().dischargeCoefficient()),
                        p.airHeat(),
                        p.outdoorCarbonDioxidePpm(),
                        p.fogFalls())));
        add(
                "share of the station's wind at the building",
                range(0.6, 0.3, 1.0),
                "judgement; the words either side",
                value -> demo.replaced("shelter: ordinary", value < 0.6 ? "shelter: sheltered" : "shelter: exposed"));
    }
}
