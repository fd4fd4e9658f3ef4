package org.limedry.study;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.units.Units;

/**
 * How long a room keeps its plasterer waiting: from its first coat until all its coats are ready.
 *
 * @param earliestDays one time in five it is shorter, days; empty if past the end of the run or not asked for
 * @param likelyDays likely, days; empty if past the end of the run
 * @param latestDays one time in five it is longer, days; empty if past the end of the run or not asked for
 * @param isRanged whether earliest and latest were asked for
 */
public record RoomWait(
        OptionalDouble earliestDays, OptionalDouble likelyDays, OptionalDouble latestDays, boolean isRanged) {
    private static final double ONE_IN_FIVE = 0.20;
    private static final double FOUR_IN_FIVE = 0.80;

    /** No wait is longer than one that does not end. */
    private static final Comparator<OptionalDouble> ENDLESS_LAST =
            Comparator.comparing(days -> days.orElse(Double.POSITIVE_INFINITY));

    /** Returns a wait without a range. */
    static RoomWait likely(OptionalDouble days) {
        return new RoomWait(OptionalDouble.empty(), days, OptionalDouble.empty(), false);
    }

    /** Returns the wait for the coats on some walls; the range is widened to take the likely date in. */
    static RoomWait of(EnsembleResult result, Set<String> walls, Instant firstLaid) {
        OptionalDouble likely = days(ready(result.likely().coats(), walls), firstLaid);
        if (result.members().isEmpty()) {
            return likely(likely);
        }
        List<Optional<Instant>> dates = result.members().stream()
                .map(member -> ready(member.coats(), walls))
                .toList();
        OptionalDouble oneInFive = days(ReadyRange.quantile(dates, ONE_IN_FIVE), firstLaid);
        OptionalDouble fourInFive = days(ReadyRange.quantile(dates, FOUR_IN_FIVE), firstLaid);
        return new RoomWait(
                ENDLESS_LAST.compare(likely, oneInFive) < 0 ? likely : oneInFive,
                likely,
                ENDLESS_LAST.compare(likely, fourInFive) > 0 ? likely : fourInFive,
                true);
    }

    /** Returns when the last coat on these walls was ready; empty if any was not. */
    static Optional<Instant> ready(List<CoatResult> coats, Set<String> walls) {
        List<Optional<Instant>> own = coats.stream()
                .filter(coat -> walls.contains(coat.wall()))
                .map(CoatResult::ready)
                .toList();
        return own.stream().allMatch(Optional::isPresent)
                ? own.stream().flatMap(Optional::stream).max(Instant::compareTo)
                : Optional.empty();
    }

    private static OptionalDouble days(Optional<Instant> ready, Instant firstLaid) {
        return ready.map(at -> OptionalDouble.of(Units.daysFromSeconds(
                        Duration.between(firstLaid, at).toMillis() / 1000.0)))
                .orElse(OptionalDouble.empty());
    }
}
