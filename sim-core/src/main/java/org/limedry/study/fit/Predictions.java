package org.limedry.study.fit;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.lime.HandTest;
import org.limedry.lime.ReadinessRule;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.units.Check;
import org.limedry.units.Units;

/** What a run says each reading should have been. */
final class Predictions {
    private static final double SECONDS_PER_HOUR = Units.SECONDS_PER_HOUR;

    private final Scenario scenario;
    private final History history;
    private final boolean gaveUp;
    private final Map<String, History.RoomHours> rooms = new HashMap<>();
    private final Map<String, History.FaceHours> faces = new HashMap<>();

    Predictions(Scenario scenario, Outcome outcome) {
        this.scenario = scenario;
        this.history = outcome.history();
        this.gaveUp = outcome.ending() instanceof Outcome.Ending.GaveUp;
        history.rooms().forEach(room -> rooms.put(room.room(), room));
        history.faces().forEach(face -> faces.putIfAbsent(face.wall(), face));
    }

    /**
     * Returns what the run says the reading should have been, in the unit of {@link Reading#measured()}; offsets of loggers not
     * put on. Of a hand test how far past the nearest limit of the ready rule the coat is, e-folds. NaN if the solver gave up
     * before the reading.
     *
     * @throws IllegalArgumentException if the reading names a room, wall or coat that is not there, or lies outside the run
     */
    double predicted(Reading reading) {
        if (reading instanceof Reading.RoomCelsius air) {
            return at(room(air.room()).airCelsius(), air.at());
        } else if (reading instanceof Reading.RoomHumidity air) {
            double humidity = at(room(air.room()).relativeHumidity(), air.at());
            return Math.min(1.0, humidity);
        } else if (reading instanceof Reading.FaceCelsius face) {
            return at(face(face.wall()).celsius(), face.at());
        } else if (reading instanceof Reading.Bucket bucket) {
            return caughtKg(bucket); // 1 kg of water is 1 litre
        }
        return marginLogs(((Reading.ByHand) reading).test());
    }

    private History.RoomHours room(String name) {
        return Optional.ofNullable(rooms.get(name))
                .orElseThrow(
                        () -> new IllegalArgumentException("room: must be one of " + rooms.keySet() + ", was " + name));
    }

    private History.FaceHours face(String wall) {
        return Optional.ofNullable(faces.get(wall))
                .orElseThrow(
                        () -> new IllegalArgumentException("wall: must be one of " + faces.keySet() + ", was " + wall));
    }

    private double at(Series series, Instant instant) {
        double hour = hours(instant);
        double last = series.size() - 1.0;
        if (gaveUp && hour > last) {
            return Double.NaN;
        }
        Check.inClosed(hour, 0.0, last, "reading", "h from the start of the run");
        int before = (int) hour;
        int after = Math.min(before + 1, series.size() - 1);
        return series.at(before) + (hour - before) * (series.at(after) - series.at(before));
    }

    private double hours(Instant instant) {
        return Duration.between(scenario.from(), instant).toMillis() / (1000.0 * SECONDS_PER_HOUR);
    }

    /** Returns the water caught between two emptyings, kg; the rate is told on every hour and taken as straight between. */
    private double caughtKg(Reading.Bucket bucket) {
        Series rate = room(bucket.room()).dehumidifierKgPerS();
        double from = hours(bucket.from());
        double until = hours(bucket.at());
        double sum = 0.0;
        for (int hour = (int) from; hour < until; hour++) {
            double start = Math.max(from, hour);
            double end = Math.min(until, hour + 1.0);
            double middle = 0.5 * (start + end);
            sum += (end - start) * at(rate, scenario.from().plusMillis(Math.round(middle * 1000.0 * SECONDS_PER_HOUR)));
        }
        return sum * SECONDS_PER_HOUR;
    }

    /** Returns how far past the nearest limit of the rule a coat is, e-folds; limits at the face are left out. */
    private double marginLogs(HandTest test) {
        for (History.CoatHours coat : history.coats()) {
            if (coat.wall().equals(test.wall()) && coat.number() == test.coat()) {
                ReadinessRule rule = scenario.rule();
                double margin = Math.min(
                        log(at(coat.meanSuctionPa(), test.instant()), rule.suctionPa()),
                        log(at(coat.equivalentAgeDays(), test.instant()), rule.equivalentAgeDays()));
                return margin == Double.POSITIVE_INFINITY ? 0.0 : margin;
            }
        }
        throw new IllegalArgumentException("handTest: must be of a coat of the site, was " + test);
    }

    private static double log(double value, OptionalDouble limit) {
        double least = 1e-3; // a coat not laid yet has no suction; far enough below any limit
        return limit.isPresent() && limit.getAsDouble() > 0.0
                ? Math.log(Math.max(least, value / limit.getAsDouble()))
                : Double.POSITIVE_INFINITY;
    }
}
