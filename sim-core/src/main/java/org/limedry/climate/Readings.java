package org.limedry.climate;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.units.Check;

/**
 * Readings of one logger, in time order. Gaps stay gaps: nothing is filled in.
 *
 * @param all the readings, each later than the one before; at least one
 */
public record Readings(List<LoggedReading> all) {
    private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

    public Readings {
        Check.notEmpty(all, "all");
        all = List.copyOf(all);
        for (int i = 1; i < all.size(); i++) {
            Check.that(
                    all.get(i).at().isAfter(all.get(i - 1).at()),
                    "all[" + i + "].at",
                    "after " + all.get(i - 1).at(),
                    all.get(i).at());
        }
    }

    /** Returns the time of the first reading. */
    public Instant from() {
        return all.get(0).at();
    }

    /** Returns the time of the last reading. */
    public Instant until() {
        return all.get(all.size() - 1).at();
    }

    /**
     * Returns full hours, one after the other: each the mean of what was read within half an hour of it, blank where nothing
     * was.
     */
    public List<LoggedReading> hourly() {
        SortedMap<Instant, LoggedReading> byTime = new TreeMap<>();
        all.forEach(reading -> byTime.put(reading.at(), reading));
        Instant last = nearestHour(until());
        return Stream.iterate(nearestHour(from()), hour -> !hour.isAfter(last), hour -> hour.plus(1, ChronoUnit.HOURS))
                .map(hour -> mean(hour, byTime.subMap(hour.minus(HALF_AN_HOUR), hour.plus(HALF_AN_HOUR))))
                .toList();
    }

    private static Instant nearestHour(Instant at) {
        return at.plus(HALF_AN_HOUR).truncatedTo(ChronoUnit.HOURS);
    }

    private static LoggedReading mean(Instant hour, SortedMap<Instant, LoggedReading> near) {
        return new LoggedReading(
                hour,
                mean(near, LoggedReading::celsius),
                mean(near, LoggedReading::relativeHumidity),
                mean(near, LoggedReading::surfaceCelsius),
                mean(near, LoggedReading::windMPerS));
    }

    private static OptionalDouble mean(
            SortedMap<Instant, LoggedReading> near, Function<LoggedReading, OptionalDouble> of) {
        return near.values().stream()
                .flatMapToDouble(reading -> of.apply(reading).stream())
                .average();
    }

    /** Returns the time from one reading to the next, as it is most of the time: the median; zero for one reading. */
    public Duration interval() {
        List<Duration> steps = IntStream.range(1, all.size())
                .mapToObj(i -> Duration.between(all.get(i - 1).at(), all.get(i).at()))
                .sorted()
                .toList();
        return steps.isEmpty() ? Duration.ZERO : steps.get(steps.size() / 2);
    }
}
