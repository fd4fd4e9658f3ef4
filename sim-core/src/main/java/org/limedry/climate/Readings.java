package org.limedry.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.limedry.units.Check;

/**
 * Readings of one logger, in time order. Gaps stay gaps: nothing is filled in.
 *
 * @param all the readings, each later than the one before; at least one
 */
public record Readings(List<LoggedReading> all) {
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

    /** Returns the time from one reading to the next, as it is most of the time: the median; zero for one reading. */
    public Duration interval() {
        List<Duration> steps = IntStream.range(1, all.size())
                .mapToObj(i -> Duration.between(all.get(i - 1).at(), all.get(i).at()))
                .sorted()
                .toList();
        return steps.isEmpty() ? Duration.ZERO : steps.get(steps.size() / 2);
    }
}
