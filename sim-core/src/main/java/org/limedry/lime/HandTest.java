package org.limedry.lime;

import java.time.Instant;
import org.limedry.units.Check;

/**
 * The plasterer's own judgement of a coat, which overrules the rule.
 *
 * @param wall name of the wall
 * @param coat number of the coat on that wall
 * @param instant when it was tried
 * @param result what was found
 */
public record HandTest(String wall, int coat, Instant instant, Result result) {
    /** The words of the trade for a hand test. */
    public enum Result {
        /** A finger dents it: not ready. */
        DENTS(false),
        /** The nail marks it, the knuckle does not dent it: ready. */
        NAIL_NOT_KNUCKLE(true),
        /** Neither marks it: ready. */
        HARD(true);

        private final boolean pass;

        Result(boolean pass) {
            this.pass = pass;
        }

        /** Tells whether the next coat may go on. */
        public boolean passes() {
            return pass;
        }
    }

    public HandTest {
        Check.notBlank(wall, "wall");
    }

    /**
     * Tells whether one of the two must be wrong: the same coat was found ready, and at the same time or later not. A coat that
     * was ready once does not go soft again.
     */
    public boolean contradicts(HandTest other) {
        if (!wall.equals(other.wall) || coat != other.coat || result.passes() == other.result.passes()) {
            return false;
        }
        return result.passes() ? !other.instant.isBefore(instant) : !instant.isBefore(other.instant);
    }
}
