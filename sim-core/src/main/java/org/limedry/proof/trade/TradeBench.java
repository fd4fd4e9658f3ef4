package org.limedry.proof.trade;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.limedry.climate.Outdoors;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatMortars;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.LimeKind;
import org.limedry.lime.Mix;
import org.limedry.lime.MortarChoice;
import org.limedry.lime.ReadinessRules;
import org.limedry.material.Catalogue;
import org.limedry.reference.DefaultsTable;
import org.limedry.reference.MaterialTable;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.simulation.Simulation;
import org.limedry.units.Units;
import org.limedry.wall.Background;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;
import org.limedry.wall.Wetness;

/** One coat on one square metre of wall in air that never changes: what the trade's sayings are about. */
record TradeBench(
        Background background, Wetness wetness, Mix mix, double thicknessMm, double celsius, double humidity) {
    private static final Instant LAID = Instant.parse("2026-11-02T08:00:00Z");
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final CoatMortars MORTARS = CoatMortars.of(DefaultsTable.load(), CATALOGUE);
    private static final double WALL_M = 0.34;
    private static final String WALL = "wall";

    static Mix base(LimeKind lime, double slagPercent) {
        return new Mix(
                "base",
                lime,
                1.0,
                2.5,
                Mix.SandState.DRY,
                Mix.Addition.SLAG,
                slagPercent,
                OptionalDouble.empty(),
                true);
    }

    TradeBench thick(double millimetres) {
        return new TradeBench(background, wetness, mix, millimetres, celsius, humidity);
    }

    TradeBench on(Background other, Wetness otherWetness) {
        return new TradeBench(other, otherWetness, mix, thicknessMm, celsius, humidity);
    }

    TradeBench in(double airCelsius, double airHumidity) {
        return new TradeBench(background, wetness, mix, thicknessMm, airCelsius, airHumidity);
    }

    CoatMortar mortar() {
        return MORTARS.mortar(mix, MortarChoice.likely());
    }

    Outcome run(int days, double prewettingKgPerM2) {
        return run(days, prewettingKgPerM2, Physics.ordinary().surfaces().stillWPerM2K());
    }

    private Outcome run(int days, double prewettingKgPerM2, double convection) {
        CoatPlan coat = new CoatPlan(
                WALL, 1, mortar(), Units.metresFromMm(thicknessMm), celsius, prewettingKgPerM2, new Laying.On(LAID));
        Side outside = background.isOnCavity() ? new Side.Sealed() : new Side.Air(celsius, humidity, 20.0, 1.3e-7);
        return run(days, wall(celsius, outside, inside(convection)), List.of(coat));
    }

    private WallPlan wall(double startCelsius, Side outside, Side inside) {
        List<LayerPlan> layers = background.layers(CATALOGUE::sheet, WALL_M, wetness, startCelsius);
        return new WallPlan(WALL, WallPlan.Kind.LISTED, 1.0, layers, outside, inside, 0.0);
    }

    private Side inside(double convection) {
        double heat = convection + Physics.ordinary().surfaces().radiantWPerM2K();
        double vapour = Physics.ordinary().surfaces().vapourPerConvectionKPerJ() * convection;
        return new Side.Air(celsius, humidity, heat, vapour);
    }

    private Outcome run(int days, WallPlan wall, List<CoatPlan> coats) {
        return Simulation.run(new Scenario(
                "trade bench",
                LAID,
                LAID.plus(Duration.ofDays(days)),
                (from, until) -> new Outdoors.Piece(celsius, celsius, 0.0, 0.0, 0.0, 0.0),
                Map.of(),
                List.of(),
                List.of(wall),
                coats,
                ReadinessRules.named("green-hard"),
                List.of(),
                Physics.ordinary(),
                Accuracy.ordinary()));
    }

    /** Returns the days until the next coat, or NaN if that did not come in 60 days. */
    double readyDays() {
        return run(60, 0.0).coats().get(0).ready().map(TradeBench::days).orElse(Double.NaN);
    }

    /** Returns the share of the coat's water that has left it in the first hour. */
    double shareGoneInFirstHour(double prewettingKgPerM2) {
        Outcome outcome = run(1, prewettingKgPerM2);
        return 1.0
                - outcome.history().coats().get(0).waterKgPerM2().at(1)
                        / outcome.coats().get(0).waterLaidKgPerM2();
    }

    /**
     * Returns the days until all but a share of what will leave in 90 days has left. The sources do not say what "dry
     * through" is.
     */
    double dryThroughDays(double share) {
        Outcome outcome = run(90, 0.0);
        Series water = outcome.history().coats().get(0).waterKgPerM2();
        double laid = outcome.coats().get(0).waterLaidKgPerM2();
        double end = water.at(water.size() - 1);
        int hour = 0;
        while (water.at(hour) > end + share * (laid - end)) {
            hour++;
        }
        return hour / 24.0;
    }

    /** Returns what the face gives to still air on the first day, kg/(m2 day); for a wall closed behind. */
    double dryingOnTheFirstDayKgPerM2() {
        return dryingOnTheFirstDayKgPerM2(Physics.ordinary().surfaces().stillWPerM2K());
    }

    /** The same with another convection, W/(m2 K). */
    double dryingOnTheFirstDayKgPerM2(double convection) {
        return run(1, 0.0, convection).account().throughWallsKg();
    }

    /** Returns what the bare wall, sealed behind, takes up from still air in a day, kg/m2. */
    double takenUpInADayKgPerM2(double wallCelsius) {
        Side inside = inside(Physics.ordinary().surfaces().stillWPerM2K());
        return -run(1, wall(wallCelsius, new Side.Sealed(), inside), List.of())
                .account()
                .throughWallsKg();
    }

    private static double days(Instant ready) {
        return Duration.between(LAID, ready).toMinutes() / (24.0 * 60.0);
    }
}
