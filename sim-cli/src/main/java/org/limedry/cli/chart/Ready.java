package org.limedry.cli.chart;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.units.Check;

/** When a coat is ready for the next one, as far as is known. */
public sealed interface Ready {
    /** Returns the one date that stands for all, if it lies within the run. */
    Optional<Instant> likely();

    /**
     * A forecast with its spread. A date that is empty lies past the end of the run.
     *
     * @param earliest one case in five is earlier
     * @param likely the likely date
     * @param latest one case in five is later
     */
    record Range(Optional<Instant> earliest, Optional<Instant> likely, Optional<Instant> latest) implements Ready {
        public Range {
            Check.that(inOrder(earliest, likely), "likely", "no earlier than " + earliest, likely);
            Check.that(inOrder(likely, latest), "latest", "no earlier than " + likely, latest);
        }

        private static boolean inOrder(Optional<Instant> first, Optional<Instant> second) {
            return second.isEmpty() || (first.isPresent() && !first.get().isAfter(second.get()));
        }
    }

    /**
     * A forecast from one run, its spread not asked for.
     *
     * @param likely the likely date; empty if it lies past the end of the run
     */
    record LikelyOnly(Optional<Instant> likely) implements Ready {}

    /**
     * The plasterer's own test: it overrules any forecast.
     *
     * @param passed when the coat passed it
     */
    record ByHand(Instant passed) implements Ready {
        @Override
        public Optional<Instant> likely() {
            return Optional.of(passed);
        }
    }

    /** Returns the dates that are known, in order. */
    default Stream<Instant> dates() {
        if (this instanceof Range range) {
            return Stream.of(range.earliest(), range.likely(), range.latest()).flatMap(Optional::stream);
        }
        return likely().stream();
    }
}
