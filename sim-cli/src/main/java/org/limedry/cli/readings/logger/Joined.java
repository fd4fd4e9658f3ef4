package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/**
 * Files of one logger put together: temperature and humidity from files of their own, or one month after another.
 *
 * @param readings all readings; two that lie no further apart than the tolerance are one, at the time of the first file's
 * @param matched readings that found their other half
 * @param alone readings that stand by themselves
 * @param repeated readings that say again what is there
 * @param contradicting readings that say something else at the same time: the first file was kept
 */
public record Joined(Readings readings, int matched, int alone, int repeated, int contradicting) {
    /**
     * Puts files together.
     *
     * @param parts readings of each file, at least one
     * @param tolerance how far apart two readings may lie to be one
     */
    public static Joined of(List<Readings> parts, Duration tolerance) {
        Joining joining = new Joining(tolerance);
        parts.forEach(joining::add);
        return joining.joined();
    }

    /** The work in progress. */
    private static final class Joining {
        private final Duration tolerance;
        private final NavigableMap<Instant, LoggedReading> all = new TreeMap<>();
        private int matched;
        private int repeated;
        private int contradicting;

        Joining(Duration tolerance) {
            this.tolerance = tolerance;
        }

        void add(Readings part) {
            // Only what earlier files said can be the other half.
            NavigableMap<Instant, LoggedReading> before = new TreeMap<>(all);
            part.all().forEach(reading -> add(reading, Pair.nearest(before, reading.at(), tolerance)));
        }

        private void add(LoggedReading reading, Optional<LoggedReading> other) {
            if (other.isEmpty()) {
                all.put(reading.at(), reading);
                return;
            }
            Instant at = other.get().at();
            LoggedReading there = all.getOrDefault(at, reading);
            LoggedReading both = filled(there, reading);
            if (!both.equals(there)) {
                matched++;
                all.put(at, both);
            } else if (agrees(there, reading)) {
                repeated++;
            } else {
                contradicting++;
            }
        }

        private static LoggedReading filled(LoggedReading there, LoggedReading other) {
            return new LoggedReading(
                    there.at(),
                    first(there.celsius(), other.celsius()),
                    first(there.relativeHumidity(), other.relativeHumidity()),
                    first(there.surfaceCelsius(), other.surfaceCelsius()),
                    first(there.windMPerS(), other.windMPerS()));
        }

        private static boolean agrees(LoggedReading there, LoggedReading again) {
            return Stream.<Function<LoggedReading, OptionalDouble>>of(
                            LoggedReading::celsius,
                            LoggedReading::relativeHumidity,
                            LoggedReading::surfaceCelsius,
                            LoggedReading::windMPerS)
                    .allMatch(of -> of.apply(again).isEmpty() || of.apply(again).equals(of.apply(there)));
        }

        private static OptionalDouble first(OptionalDouble one, OptionalDouble other) {
            return one.isPresent() ? one : other;
        }

        Joined joined() {
            Collection<LoggedReading> values = all.values();
            return new Joined(
                    new Readings(List.copyOf(values)),
                    matched,
                    values.size() - Math.min(matched, values.size()),
                    repeated,
                    contradicting);
        }
    }
}
