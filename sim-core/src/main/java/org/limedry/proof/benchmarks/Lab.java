package org.limedry.proof.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Outdoors;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.ReadinessRule;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.room.AirExchange;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.room.VapourExchange;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.simulation.SiteView;
import org.limedry.units.Units;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;
import org.limedry.wall.WallView;

/**
 * A bench for one case: puts it together as a scenario, runs it by the time loop of sites and looks on.
 *
 * <p>Mutable while a case is put together; a run changes nothing in it.
 */
public final class Lab {
    public static final Instant START = Instant.parse("2001-01-01T00:00:00Z");
    private static final double NANOS_PER_HOUR = 3.6e12;

    private final List<RoomPlan> rooms = new ArrayList<>();
    private final List<WallPlan> walls = new ArrayList<>();
    private final List<CoatPlan> coats = new ArrayList<>();
    private final Map<String, Outdoors> courses = new HashMap<>();
    private Outdoors outdoors = Course.steady(START, 10.0, 800.0);
    private Constants constants = sheetConstants();
    private Surfaces surfaces = Surfaces.ordinary();
    private AirExchange air = AirExchange.ordinary();
    private VapourExchange.HeatCapacity airHeat = new VapourExchange.HeatCapacity.OfIncomingAir();
    private Accuracy accuracy = Accuracy.ordinary();

    /** Returns the constants that the benchmark sheets share. */
    public static Constants sheetConstants() {
        return new Constants(MagnusForm.ISO_WATER, 461.5, 1000.0, 2.5e6, 4187.0, OptionalDouble.empty(), 0.0);
    }

    /** Returns the same without latent heat, so that nothing but air warms or cools. */
    public static Constants isothermal() {
        return new Constants(MagnusForm.ISO_WATER, 461.5, 1000.0, 0.0, 4187.0, OptionalDouble.empty(), 0.0);
    }

    /** Returns the suction that stands for a relative humidity, Pa. */
    public static double suctionPa(double relativeHumidity, double celsius) {
        return -1000.0 * 461.5 * Units.kelvin(celsius) * Math.log(relativeHumidity);
    }

    /** Returns the relative humidity that stands for a suction, fraction. */
    public static double relativeHumidity(double suctionPa, double celsius) {
        return Math.exp(-suctionPa / (1000.0 * 461.5 * Units.kelvin(celsius)));
    }

    /** Returns a material that neither holds nor passes water. */
    public static Material closed(double conductivityWPerMK, double heatCapacityJPerM3K) {
        Closed none = Closed.instance();
        return new Material("closed", none, none, none, water -> conductivityWPerMK, heatCapacityJPerM3K);
    }

    public static Instant at(double hours) {
        return START.plus(Duration.ofNanos(Math.round(hours * NANOS_PER_HOUR)));
    }

    public static double hours(Instant instant) {
        return Duration.between(START, instant).toNanos() / NANOS_PER_HOUR;
    }

    public Lab outdoors(Outdoors next) {
        outdoors = next;
        return this;
    }

    public Lab course(String name, Outdoors next) {
        courses.put(name, next);
        return this;
    }

    public Lab constants(Constants next) {
        constants = next;
        return this;
    }

    public Lab surfaces(Surfaces next) {
        surfaces = next;
        return this;
    }

    public Lab air(AirExchange next, VapourExchange.HeatCapacity heat) {
        air = next;
        airHeat = heat;
        return this;
    }

    public Lab accuracy(double tolerance, double gridFactor) {
        accuracy = new Accuracy(tolerance, gridFactor, accuracy.maxStepS());
        return this;
    }

    /** Sets the longest step, s; with a loose tolerance all steps are that long. */
    public Lab longestStep(double longestS) {
        accuracy = new Accuracy(accuracy.tolerance(), accuracy.gridFactor(), longestS);
        return this;
    }

    public Lab room(RoomPlan next) {
        rooms.add(next);
        return this;
    }

    public Lab wall(WallPlan next) {
        walls.add(next);
        return this;
    }

    /** Adds a wall of 1 m2. */
    public Lab wall(String name, List<LayerPlan> layers, Side outside, Side inside) {
        return wall(new WallPlan(name, WallPlan.Kind.LISTED, 1.0, layers, outside, inside, 0.0));
    }

    /** Adds a coat on a wall, numbered on. */
    public Lab coat(String wall, CoatMortar mortar, double thicknessM, double celsius, double hour) {
        int number = 1 + (int) coats.stream().filter(c -> c.wall().equals(wall)).count();
        coats.add(new CoatPlan(wall, number, mortar, thicknessM, celsius, 0.0, new Laying.On(at(hour))));
        return this;
    }

    public Lab coat(CoatPlan next) {
        coats.add(next);
        return this;
    }

    public Scenario scenario(double hours) {
        ReadinessRule never = new ReadinessRule(
                "never",
                OptionalDouble.of(1.0e12),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Physics physics = new Physics(constants, surfaces, air, airHeat, 420.0, false);
        return new Scenario(
                "benchmark",
                START,
                at(hours),
                outdoors,
                courses,
                rooms,
                walls,
                coats,
                never,
                List.of(),
                physics,
                accuracy);
    }

    /** Runs and shows the site with the hours reached at the start and after every step. */
    public Outcome run(double hours, BiConsumer<Double, SiteView> look) {
        Outcome outcome =
                Simulation.run(scenario(hours), Progress.none(), (now, site) -> look.accept(hours(now), site));
        if (!(outcome.ending() instanceof Outcome.Ending.Complete)) {
            throw new IllegalStateException("the solver gave up at " + outcome.reached() + ": " + outcome.ending());
        }
        return outcome;
    }

    /** Runs and returns the first wall as it then is. */
    public WallView wallAfter(double hours) {
        List<WallView> last = new ArrayList<>();
        run(hours, (hour, site) -> {
            if (last.isEmpty()) {
                last.addAll(site.walls());
            }
        });
        return last.get(0);
    }
}
