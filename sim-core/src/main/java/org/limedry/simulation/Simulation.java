package org.limedry.simulation;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.limedry.climate.Outdoors;
import org.limedry.lime.CoatPlan;
import org.limedry.units.Units;

/**
 * The time loop: adaptive implicit steps from event to event and from hour to hour.
 *
 * <p>Deterministic: the same scenario gives the same outcome on any machine and in any thread.
 */
public final class Simulation {
    private static final double NANOS = 1.0e9;

    private final Scenario scenario;
    private final Progress progress;
    private final Onlooker onlooker;
    private final Until until;
    private final SiteModel model;
    private final Timeline timeline;
    private final HistoryWriter history;
    private final Watch watch;
    private final StepSize size;
    private Instant now;
    private Instant lastHour;
    private double smallestS = Double.POSITIVE_INFINITY;
    private long taken;
    private long rejected;

    /** How long a run goes on. */
    public static final class Until {
        /** To its end. */
        public static final Until THE_END = new Until(false, plan -> false);

        /** To the first hour at which every coat is ready, or to its end if that comes first. */
        public static final Until ALL_READY = new Until(true, plan -> true);

        private final boolean mayEndEarly;
        private final Predicate<CoatPlan> awaited;

        private Until(boolean mayEndEarly, Predicate<CoatPlan> awaited) {
            this.mayEndEarly = mayEndEarly;
            this.awaited = awaited;
        }

        /** Returns: to the first hour at which every coat on these walls is ready, or to its end if that comes first. */
        public static Until readyOn(Set<String> walls) {
            Set<String> kept = Set.copyOf(walls);
            return new Until(true, plan -> kept.contains(plan.wall()));
        }

        private boolean isReached(List<CoatCourse> coats) {
            return mayEndEarly
                    && coats.stream().filter(coat -> awaited.test(coat.plan())).allMatch(CoatCourse::isReady);
        }
    }

    private Simulation(Scenario scenario, Until until, Progress progress, Onlooker onlooker) {
        this.scenario = scenario;
        this.until = until;
        this.progress = progress;
        this.onlooker = onlooker;
        model = new SiteModel(scenario);
        timeline = new Timeline(scenario, onlooker.stops());
        long hours = Duration.between(scenario.from(), scenario.until()).toHours();
        history = new HistoryWriter(model, (int) hours + 2);
        watch = new Watch(model, scenario);
        size = new StepSize(scenario.accuracy().maxStepS());
        now = scenario.from();
        lastHour = now;
    }

    /** Runs a scenario to its end. */
    public static Outcome run(Scenario scenario) {
        return run(scenario, Progress.none());
    }

    /**
     * Runs a scenario to its end.
     *
     * @param scenario what to run
     * @param progress told of every simulated hour
     * @return what was found; also when the solver gave up, then with the last state it accepted
     */
    public static Outcome run(Scenario scenario, Progress progress) {
        return run(scenario, Until.THE_END, progress);
    }

    /**
     * Runs a scenario.
     *
     * @param scenario what to run
     * @param until how long; {@link Outcome#reached()} tells when it ended
     * @param progress told of every simulated hour
     * @return what was found; also when the solver gave up, then with the last state it accepted
     */
    public static Outcome run(Scenario scenario, Until until, Progress progress) {
        return new Simulation(scenario, until, progress, Onlooker.none()).run();
    }

    /**
     * Runs a scenario to its end and is looked at on the way.
     *
     * @param scenario what to run
     * @param progress told of every simulated hour
     * @param onlooker shown the site at the start and after every step
     * @return what was found; also when the solver gave up, then with the last state it accepted
     */
    public static Outcome run(Scenario scenario, Progress progress, Onlooker onlooker) {
        return new Simulation(scenario, Until.THE_END, progress, onlooker).run();
    }

    private Outcome run() {
        Outcome.Ending ending = new Outcome.Ending.Complete();
        Instant soon = now.plusSeconds(1);
        model.showAir(scenario.outdoors().over(now, soon), coursesOver(now, soon), 1.0);
        onlooker.look(now, model);
        model.event(now);
        history.write(now, weatherAt(now));
        while (goesOn() && ending instanceof Outcome.Ending.Complete) {
            Instant event = timeline.after(now, scenario.until());
            Instant hour = nextHour();
            Instant landing = hour.isBefore(event) ? hour : event;
            Instant target = timeline.stopAfter(now, landing);
            ending = advance(target);
            if (ending instanceof Outcome.Ending.Complete) {
                arrive(target, target.equals(event), target.equals(hour));
            }
        }
        return outcome(ending);
    }

    private boolean goesOn() {
        if (now.equals(lastHour) && until.isReached(model.coats())) {
            return false;
        }
        return now.isBefore(scenario.until());
    }

    private Instant nextHour() {
        long past = Duration.between(scenario.from(), now).toHours();
        return scenario.from().plus(Duration.ofHours(past + 1));
    }

    private void arrive(Instant target, boolean isEvent, boolean isHour) {
        if (isHour || !target.isBefore(scenario.until())) {
            history.write(now, weatherAt(now));
            progress.reached(now);
            lastHour = now;
        }
        if (isEvent) {
            size.restart(model.event(now));
        }
    }

    /** Steps until {@code target} is reached exactly. */
    private Outcome.Ending advance(Instant target) {
        double leftS = seconds(now, target);
        while (leftS > 0.0) {
            double stepS = size.next(leftS);
            boolean last = !(stepS < leftS);
            Instant end = last ? target : now.plusNanos(Math.round(stepS * NANOS));
            double error = tryStep(end, stepS);
            if (error <= 1.0) {
                take(end, stepS);
                leftS = last ? 0.0 : seconds(now, target);
                size.accept(stepS, error, last);
            } else {
                rejected++;
                if (!size.refuse(stepS, error)) {
                    return new Outcome.Ending.GaveUp(stepS, error);
                }
            }
        }
        return new Outcome.Ending.Complete();
    }

    private double tryStep(Instant end, double stepS) {
        Outdoors.Piece piece = scenario.outdoors().over(now, end);
        Map<String, Outdoors.Piece> courses = coursesOver(now, end);
        model.prepare(Weather.at(piece, 0.0), stepS);
        return model.system().tryStep(piece, courses, stepS, scenario.accuracy().tolerance());
    }

    private Map<String, Outdoors.Piece> coursesOver(Instant from, Instant until) {
        Map<String, Outdoors.Piece> courses = new HashMap<>();
        scenario.courses().forEach((name, course) -> courses.put(name, course.over(from, until)));
        return courses;
    }

    private void take(Instant end, double stepS) {
        model.system().accept();
        now = end;
        model.take(now, stepS);
        history.take(stepS);
        watch.take(now);
        onlooker.look(now, model);
        smallestS = Math.min(smallestS, stepS);
        taken++;
    }

    private Weather weatherAt(Instant instant) {
        boolean atEnd = !instant.isBefore(scenario.until());
        Instant from = atEnd ? instant.minusSeconds((long) Units.SECONDS_PER_MINUTE) : instant;
        Instant until = atEnd ? instant : instant.plusSeconds((long) Units.SECONDS_PER_MINUTE);
        return Weather.at(scenario.outdoors().over(from, until), atEnd ? 1.0 : 0.0);
    }

    private Outcome outcome(Outcome.Ending ending) {
        return new Outcome(
                ending,
                now,
                model.coats().stream().map(CoatCourse::result).toList(),
                model.books().ofSite(),
                IntStream.range(0, model.roomNames().size())
                        .mapToObj(room -> new Outcome.RoomAccount(
                                model.roomNames().get(room), model.books().ofRoom(room)))
                        .toList(),
                model.books().faces().stream().map(FaceBook::result).toList(),
                history.history(),
                watch.warnings(now),
                new Outcome.Statistics(
                        taken, rejected, model.system().solves(), model.cells(), taken == 0 ? 0.0 : smallestS));
    }

    private static double seconds(Instant from, Instant until) {
        return Duration.between(from, until).toNanos() / NANOS;
    }
}
