package org.limedry.cli.report;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import org.limedry.lime.CoatPlan;
import org.limedry.simulation.Outcome;
import org.limedry.study.ReadyRange;

/**
 * A coat as planned and as found.
 *
 * @param index its place in the site file, counted from 0
 * @param wall what its wall is called
 * @param plan what was planned
 * @param result what the likely run found
 * @param range the spread of its ready date, if that was asked for
 */
record Coat(int index, String wall, CoatPlan plan, Outcome.CoatResult result, Optional<ReadyRange> range) {
    /** Returns "north wall, coat 1". */
    String label() {
        return wall + ", coat " + plan.number();
    }

    /** Returns the first date that is known: the earliest, without ranges the likely. */
    Optional<Instant> firstDate() {
        return range.flatMap(ReadyRange::earliest).or(result::ready);
    }

    /** Returns whether the end of the run came before the likely date. */
    boolean isUnready() {
        return result.ready().isEmpty();
    }

    /** Returns from when until when the coat was waited for: to the end of the run if it never was ready. */
    Duration wait(Instant reached) {
        return result.laid()
                .map(laid -> Duration.between(laid, result.ready().orElse(reached)))
                .orElse(Duration.ZERO);
    }

    /**
     * Returns the order "worst first": coats that were waited for in vain, then coats that could not be laid, then by
     * the time waited; equal ones stay in the order of the site file.
     */
    static Comparator<Coat> worstFirst(Instant reached) {
        return Comparator.comparing((Coat coat) -> !coat.isUnready())
                .thenComparing(coat -> coat.result.laid().isEmpty())
                .thenComparing((Coat coat) -> coat.wait(reached), Comparator.reverseOrder());
    }
}
