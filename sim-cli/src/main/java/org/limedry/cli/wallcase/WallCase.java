package org.limedry.cli.wallcase;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.limedry.climate.AirSeries;
import org.limedry.climate.Outdoors;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.AirExchange;
import org.limedry.room.Surfaces;
import org.limedry.room.VapourExchange;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.units.Units;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/**
 * A wall case that can be run.
 *
 * @param layers outside to inside, in the order in which they are laid
 * @param outside what the first layer looks at
 * @param inside what the last layer looks at
 * @param constants constants of the case
 * @param hours length of the run, h
 * @param outputHours hours to be written, rising, the last one included
 * @param positionsMm depths to be written, mm, rising
 * @param relative relative tolerance of a step
 * @param cells cells asked for; 0 leaves it to the grading
 * @param notes what the reader of the answer must know about how the file was understood
 */
record WallCase(
        List<LayerPlan> layers,
        CaseSide outside,
        CaseSide inside,
        Constants constants,
        double hours,
        List<Double> outputHours,
        List<Double> positionsMm,
        double relative,
        int cells,
        List<String> notes) {
    /** Hour 0 of every run: a wall case has hours but no dates. */
    static final Instant START = Instant.parse("2001-01-01T00:00:00Z");

    private static final double NANOS_PER_HOUR = 1.0e9 * Units.SECONDS_PER_HOUR;
    private static final double LONGEST_STEP_S = 3600.0;
    private static final String OUTSIDE = "outside";
    private static final String INSIDE = "inside";

    /** Anything outdoors: no face of a wall case looks at it. */
    private static final double UNUSED_CELSIUS = 10.0;

    WallCase {
        layers = List.copyOf(layers);
        outputHours = List.copyOf(outputHours);
        positionsMm = List.copyOf(positionsMm);
        notes = List.copyOf(notes);
    }

    /** Returns the instant of an hour of the run. */
    static Instant instant(double hour) {
        return START.plus(Duration.ofNanos(Math.round(hour * NANOS_PER_HOUR)));
    }

    /** Returns the hour of an instant of the run. */
    static double hour(Instant instant) {
        return Duration.between(START, instant).toNanos() / NANOS_PER_HOUR;
    }

    /** Returns the instants at which a step must end: output hours, and bends of the climates. */
    List<Instant> stops() {
        List<Instant> stops = new ArrayList<>();
        outputHours.forEach(hour -> stops.add(instant(hour)));
        courses().values().forEach(course -> stops.addAll(course.bends()));
        return stops;
    }

    /** Returns the wall as planned. */
    WallPlan plan() {
        return new WallPlan(
                "wall", WallPlan.Kind.LISTED, 1.0, layers, side(outside, OUTSIDE), side(inside, INSIDE), 0.0);
    }

    /** Returns the run on a grid and tolerance. */
    Scenario scenario(double gridFactor, double tolerance) {
        Physics physics = new Physics(
                constants,
                Surfaces.ordinary(),
                AirExchange.ordinary(),
                new VapourExchange.HeatCapacity.OfIncomingAir(),
                Physics.ordinary().outdoorCarbonDioxidePpm(),
                false);
        OptionalDouble none = OptionalDouble.empty();
        return new Scenario(
                "wall case",
                START,
                instant(hours),
                AirSeries.steady(UNUSED_CELSIUS, 0.5, constants.saturation()),
                Map.<String, Outdoors>copyOf(courses()),
                List.of(),
                List.of(plan()),
                List.of(),
                new ReadinessRule("none", none, none, OptionalDouble.of(1.0), none),
                List.of(),
                physics,
                new Accuracy(tolerance, gridFactor, LONGEST_STEP_S));
    }

    private Map<String, AirSeries> courses() {
        Map<String, AirSeries> courses = new HashMap<>();
        addCourse(courses, outside, OUTSIDE);
        addCourse(courses, inside, INSIDE);
        return courses;
    }

    private static void addCourse(Map<String, AirSeries> courses, CaseSide side, String name) {
        if (side instanceof CaseSide.Film film) {
            courses.put(name, film.air());
        } else if (side instanceof CaseSide.Fixed fixed) {
            courses.put(name, fixed.state());
        }
    }

    private static Side side(CaseSide side, String name) {
        if (side instanceof CaseSide.Film film) {
            return new Side.Course(name, film.heatTransferWPerM2K(), film.vapourTransferSPerM());
        }
        return side instanceof CaseSide.Fixed ? new Side.Held(name) : new Side.Sealed();
    }
}
