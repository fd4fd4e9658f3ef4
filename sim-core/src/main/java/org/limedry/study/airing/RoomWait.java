package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.study.ReadyRange;
import org.limedry.units.Units;

/**
 * How long a room keeps its plasterer waiting: from its first coat until all its coats are ready.
 *
 * @param earliestDays one time in five it is shorter, days; empty if past the end of the run or not asked for
 * @param likelyDays likely, days; empty if past the end of the run
 * @param latestDays one time in five it is longer, days; empty if past the end of the run or not asked for
 * @param memberDays the wait of each member, infinity if past the end of the run; none if no range was asked for
 */
public record RoomWait(
        OptionalDouble earliestDays, OptionalDouble likelyDays, OptionalDouble latestDays, List<Double> memberDays) {

    /** No wait is longer than one that does not end. */
    private static final Comparator<OptionalDouble> ENDLESS_LAST =
            Comparator.comparing(days -> days.orElse(Double.POSITIVE_INFINITY));

    public RoomWait {
        memberDays = List.copyOf(memberDays);
    }

    /** Tells whether earliest and latest were asked for. */
    public boolean isRanged() {
        return !memberDays.isEmpty();
    }

    /**
     * Tells whether this wait differs from another one in the same way for most members: the one-in-five and the four-in-five
     * value of the difference, member by member, lie on the same side of zero. Without members any difference does.
     */
    boolean differsClearlyFrom(RoomWait other) {
        double[] differences = IntStream.range(0, Math.min(memberDays.size(), other.memberDays.size()))
                .mapToDouble(i -> difference(memberDays.get(i), other.memberDays.get(i)))
                .sorted()
                .toArray();
        int n = differences.length;
        int below = (int) Math.floor(MemberQuantile.ONE_IN_FIVE * n);
        return n == 0 || differences[below] > 0.0 || differences[n - 1 - below] < 0.0;
    }

    /** Two waits that do not end do not differ. */
    private static double difference(double one, double other) {
        return one == other ? 0.0 : one - other;
    }

    /** Returns a wait without a range. */
    static RoomWait likely(OptionalDouble days) {
        return new RoomWait(OptionalDouble.empty(), days, OptionalDouble.empty(), List.of());
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
        OptionalDouble oneInFive = days(ReadyRange.quantile(dates, MemberQuantile.ONE_IN_FIVE), firstLaid);
        OptionalDouble fourInFive = days(ReadyRange.quantile(dates, MemberQuantile.FOUR_IN_FIVE), firstLaid);
        return new RoomWait(
                ENDLESS_LAST.compare(likely, oneInFive) < 0 ? likely : oneInFive,
                likely,
                ENDLESS_LAST.compare(likely, fourInFive) > 0 ? likely : fourInFive,
                dates.stream()
                        .map(date -> days(date, firstLaid).orElse(Double.POSITIVE_INFINITY))
                        .toList());
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
        return ready.map(at -> OptionalDouble.of(
                        Units.daysFromSeconds(Duration.between(firstLaid, at).toMillis() / 1000.0)))
                .orElse(OptionalDouble.empty());
    }
}
