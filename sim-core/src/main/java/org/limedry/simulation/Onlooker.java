package org.limedry.simulation;

import java.time.Instant;

/** Looks at the site as a run begins and after every step taken: for what no outcome tells. */
@FunctionalInterface
public interface Onlooker {
    /**
     * Called with the state reached.
     *
     * @param now the simulated time
     * @param site the site as it then is
     */
    void look(Instant now, SiteView site);
}
