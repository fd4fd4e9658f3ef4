package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** Two readings of two loggers at the same time. */
record Pair(LoggedReading one, LoggedReading other) {
    /** Pairs each reading of the first with the nearest of the second, if that is near enough. */
    static List<Pair> of(Readings first, Readings second, Duration tolerance) {
        NavigableMap<Instant, LoggedReading> others = new TreeMap<>();
        second.all().forEach(reading -> others.put(reading.at(), reading));
        List<Pair> pairs = new ArrayList<>();
        for (LoggedReading one : first.all()) {
            nearest(others, one.at(), tolerance).ifPresent(at -> pairs.add(new Pair(one, at)));
        }
        return pairs;
    }

    /** Returns what lies nearest to a moment, if that is near enough. */
    static Optional<LoggedReading> nearest(
            NavigableMap<Instant, LoggedReading> readings, Instant at, Duration tolerance) {
        return Stream.of(Optional.ofNullable(readings.floorEntry(at)), Optional.ofNullable(readings.ceilingEntry(at)))
                .flatMap(entry -> entry.map(Map.Entry::getValue).stream())
                .filter(reading -> apart(reading, at).compareTo(tolerance) <= 0)
                .min((a, b) -> apart(a, at).compareTo(apart(b, at)));
    }

    private static Duration apart(LoggedReading reading, Instant at) {
        return Duration.between(reading.at(), at).abs();
    }
}
