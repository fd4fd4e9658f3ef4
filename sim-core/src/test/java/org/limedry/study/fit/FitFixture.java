package org.limedry.study.fit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.limedry.lime.HandTest;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.study.Draw;
import org.limedry.study.StudyFixture;
import org.limedry.study.Uncertain;

/** Made-up laws of z itself, so that a straight law has an answer in closed form. Each unknown goes through as a room's start. */
final class FitFixture {
    static final int HOURS = 400;
    static final double LIMIT_PA = 3e5;

    /** Of one reading 0.5 K, of a face 1 K, of a bucket 0.2 litres, of a hand test a quarter of an e-fold. */
    static final ReadingErrors ERRORS = new ReadingErrors(0.5, 0.5, 0.03, 0.03, 1.0, 0.0, 0.2, 0.25);

    private FitFixture() {}

    /** Fits without points. */
    static FitResult fit(List<Uncertain> unknowns, List<Reading> readings, ReadingErrors errors, Fit.Runs runs) {
        return Fit.of(unknowns, readings, errors, runs, 0);
    }

    /**
     * What a made-up run says.
     *
     * @param celsius of the room and of each face, which is named by its number, in the hour
     * @param litresPerDay caught in the room, all through
     * @param marginLogs how far the coat is past the limit, e-folds, all through
     */
    record Said(IntToDoubleFunction celsius, Map<Integer, Double> faces, double litresPerDay, double marginLogs) {
        static Said celsius(IntToDoubleFunction celsius) {
            return new Said(celsius, Map.of(), 0.0, 0.0);
        }

        static Said faces(double... values) {
            Map<Integer, Double> faces = new TreeMap<>();
            IntStream.range(0, values.length).forEach(i -> faces.put(i, values[i]));
            return new Said(hour -> 0.0, faces, 0.0, 0.0);
        }
    }

    static List<Uncertain> unknowns(int count) {
        return IntStream.range(0, count)
                .mapToObj(k -> new Uncertain("u" + k, "unknown " + k, "", -1.0, 0.0, 1.0, false, "", ""))
                .toList();
    }

    static Fit.Runs runs(Function<double[], Said> law) {
        return new Fit.Runs(FitFixture::scenario, scenario -> outcome(scenario, law.apply(z(scenario))), 2);
    }

    static Reading air(int hour, double celsius) {
        return new Reading.RoomCelsius("hall", "store", at(hour), celsius);
    }

    static Reading face(int number, int hour, double celsius) {
        return new Reading.FaceCelsius("w" + number, at(hour), celsius);
    }

    static Reading bucket(int day, double litres) {
        return new Reading.Bucket("store", at(24 * day), at(24 * day + 24), litres);
    }

    static Reading hand(int hour, HandTest.Result result) {
        return new Reading.ByHand(new HandTest("north", 1, at(hour), result));
    }

    static Instant at(int hour) {
        return StudyFixture.FROM.plus(Duration.ofHours(hour));
    }

    /** Returns errors of spread 1 of which each remembers a share of the one before. */
    static double[] errors(int count, double memory, SplittableRandom random) {
        double[] errors = new double[count];
        errors[0] = Fitted.z(random.nextDouble());
        for (int i = 1; i < count; i++) {
            errors[i] = memory * errors[i - 1] + Math.sqrt(1.0 - memory * memory) * Fitted.z(random.nextDouble());
        }
        return errors;
    }

    private static Scenario scenario(Draw draw) {
        List<RoomPlan> rooms = new ArrayList<>();
        for (int k = 0; draw.quantiles().containsKey("u" + k); k++) {
            double z = Fitted.z(draw.quantile("u" + k));
            rooms.add(new RoomPlan("u" + k, 45.0, 18.0, 2.5, 0.0, 0.5, 0.0, List.of(), List.of(), z, 0.85));
        }
        Scenario plain = StudyFixture.scenario(Draw.likely());
        OptionalDouble none = OptionalDouble.empty();
        return new Scenario(
                "made up (invented)",
                plain.from(),
                plain.until(),
                plain.outdoors(),
                Map.of(),
                rooms,
                List.of(),
                List.of(),
                new ReadinessRule("made up", OptionalDouble.of(LIMIT_PA), none, none, none),
                List.of(),
                Physics.ordinary(),
                Accuracy.ordinary());
    }

    private static double[] z(Scenario scenario) {
        return scenario.rooms().stream().mapToDouble(RoomPlan::startCelsius).toArray();
    }

    private static Outcome outcome(Scenario scenario, Said said) {
        Series none = series(hour -> 0.0);
        History.RoomHours store = new History.RoomHours(
                "store", series(said.celsius()), none, none, none, none, none, none, caught(said.litresPerDay()));
        List<History.FaceHours> faces = new ArrayList<>();
        said.faces()
                .forEach((number, celsius) -> faces.add(
                        new History.FaceHours("w" + number, "store", series(hour -> celsius), none, none, none)));
        Series suction = series(hour -> LIMIT_PA * Math.exp(said.marginLogs()));
        History.CoatHours coat = new History.CoatHours("north", 1, none, suction, none, none);
        List<Instant> times = IntStream.range(0, HOURS).mapToObj(FitFixture::at).toList();
        return with(scenario, new History(times, none, none, List.of(store), faces, List.of(coat)));
    }

    private static Outcome with(Scenario scenario, History history) {
        return ended(new Outcome.Ending.Complete(), scenario.until(), history);
    }

    /** Returns what is left of a run that gave up in its first hour. */
    static Outcome gaveUp() {
        Series one = Series.of(0.0);
        History.RoomHours store = new History.RoomHours("store", one, one, one, one, one, one, one, one);
        History.FaceHours face = new History.FaceHours("w0", "store", one, one, one, one);
        return ended(
                new Outcome.Ending.GaveUp(0.1, 3.0),
                at(0),
                new History(List.of(at(0)), one, one, List.of(store), List.of(face), List.of()));
    }

    private static Outcome ended(Outcome.Ending ending, Instant reached, History history) {
        Outcome empty = StudyFixture.outcome(ending);
        return new Outcome(
                ending,
                reached,
                List.of(),
                empty.account(),
                List.of(),
                List.of(),
                history,
                List.of(),
                empty.statistics());
    }

    private static Series caught(double litresPerDay) {
        return series(hour -> litresPerDay / 86_400.0);
    }

    private static Series series(IntToDoubleFunction values) {
        return Series.of(IntStream.range(0, HOURS).mapToDouble(values).toArray());
    }
}
