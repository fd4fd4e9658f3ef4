package org.limedry.study;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.units.Check;

/**
 * How much longer one way of doing a job takes than another, run on the same members. Empty where it leans on a job that was
 * not ready by the end of its run.
 *
 * @param low one case in five it is less; empty also without members
 * @param likely by the likely runs
 * @param high one case in five it is more; empty also without members
 */
public record Longer(Optional<Duration> low, Optional<Duration> likely, Optional<Duration> high) {
    private static final double ONE_IN_FIVE = 0.20;
    private static final double FOUR_IN_FIVE = 0.80;

    /** Returns how much later the last coat of {@code slow} is ready than that of {@code quick}. */
    public static Longer of(EnsembleResult quick, EnsembleResult slow) {
        int members = quick.members().size();
        Check.that(
                slow.members().size() == members,
                "slow",
                "of the same members",
                slow.members().size());
        List<Optional<Instant>> longer = new ArrayList<>();
        for (int i = 0; i < members; i++) {
            longer.add(between(last(quick.members().get(i)), last(slow.members().get(i)))
                    .map(Instant.EPOCH::plus));
        }
        Optional<Duration> likely = between(quick.jobReady(), slow.jobReady());
        return members == 0
                ? new Longer(Optional.empty(), likely, Optional.empty())
                : new Longer(share(longer, ONE_IN_FIVE), likely, share(longer, FOUR_IN_FIVE));
    }

    /** Tells whether the one case in five either side lies on both sides of none: no telling which is longer. */
    public boolean isTooCloseToCall() {
        return low.isPresent()
                && low.get().compareTo(Duration.ZERO) <= 0
                && high.map(most -> most.compareTo(Duration.ZERO) >= 0).orElse(true);
    }

    private static Optional<Instant> last(EnsembleResult.Member member) {
        return ReadyRange.lastOf(member.coats()).ready();
    }

    private static Optional<Duration> between(Optional<Instant> quick, Optional<Instant> slow) {
        return quick.flatMap(from -> slow.map(to -> Duration.between(from, to)));
    }

    private static Optional<Duration> share(List<Optional<Instant>> longer, double share) {
        return ReadyRange.quantile(longer, share).map(at -> Duration.between(Instant.EPOCH, at));
    }
}
