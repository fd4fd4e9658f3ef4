package org.limedry.study;

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
    private final Map<String, History.RoomHours> rooms = new HashMap<>();
    private final Map<String, History.FaceHours> faces = new HashMap<>();

    Predictions(Scenario scenario, Outcome outcome) {
        this.scenario = scenario;
        this.history = outcome.history();
        history.rooms().forEach(room -> rooms.put(room.room(), room));
        history.faces().forEach(face -> faces.putIfAbsent(face.wall(), face));
    }

    /**
     * Returns how far a reading lies from the run, in sigma; offsets of loggers not taken off.
     *
     * @throws IllegalArgumentException if the reading names a room, wall or coat that is not there, or lies outside the run
     */
    double misfit(Reading reading, ReadingErrors errors) {
        if (reading instanceof Reading.RoomCelsius air) {
            return (air.celsius() - at(room(air.room()).airCelsius(), air.at())) / errors.celsius();
        } else if (reading instanceof Reading.RoomHumidity air) {
            double predicted = Math.min(1.0, at(room(air.room()).relativeHumidity(), air.at()));
            return (air.relativeHumidity() - predicted) / errors.relativeHumidity();
        } else if (reading instanceof Reading.FaceCelsius face) {
            return (face.celsius() - at(face(face.wall()).celsius(), face.at())) / errors.faceCelsius();
        } else if (reading instanceof Reading.Bucket bucket) {
            double sigma = Math.hypot(errors.bucketLitres(), errors.bucketShare() * bucket.litres());
            return (bucket.litres() - caughtKg(bucket)) / sigma;
        }
        return handMisfit(((Reading.ByHand) reading).test()) / errors.handLogs();
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
        Check.inClosed(hour, 0.0, series.size() - 1.0, "reading", "h from the start of the run");
        int before = Math.min((int) hour, series.size() - 2);
        double share = hour - before;
        return series.at(before) + share * (series.at(before + 1) - series.at(before));
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

    /** Returns by how many e-folds the coat is on the wrong side of the rule; 0 on the right side. */
    private double handMisfit(HandTest test) {
        for (int coat = 0; coat < scenario.coats().size(); coat++) {
            History.CoatHours hours = history.coats().get(coat);
            if (hours.wall().equals(test.wall()) && hours.number() == test.coat()) {
                double margin = margin(hours, test.instant());
                return test.result().passes() ? -Math.min(0.0, margin) : -Math.max(0.0, margin);
            }
        }
        throw new IllegalArgumentException("handTest: must be of a coat of the site, was " + test);
    }

    /** Returns how far past the nearest limit of the rule a coat is, in e-folds; limits at the face are left out. */
    private double margin(History.CoatHours coat, Instant instant) {
        ReadinessRule rule = scenario.rule();
        double margin = Double.POSITIVE_INFINITY;
        margin = Math.min(margin, log(at(coat.meanSuctionPa(), instant), rule.suctionPa()));
        margin = Math.min(margin, log(at(coat.equivalentAgeDays(), instant), rule.equivalentAgeDays()));
        return margin == Double.POSITIVE_INFINITY ? 0.0 : margin;
    }

    private static double log(double value, OptionalDouble limit) {
        double least = 1e-3; // a coat not laid yet has no suction; far enough below any limit
        return limit.isPresent() && limit.getAsDouble() > 0.0
                ? Math.log(Math.max(least, value / limit.getAsDouble()))
                : Double.POSITIVE_INFINITY;
    }
}
