package org.limedry.simulation;

import java.time.Instant;

/** Told how far a run has come. */
@FunctionalInterface
public interface Progress {
    /** Returns a progress that nobody looks at. */
    static Progress none() {
        return now -> {};
    }

    /**
     * Called once for each simulated hour.
     *
     * @param now the simulated time reached
     */
    void reached(Instant now);
}
