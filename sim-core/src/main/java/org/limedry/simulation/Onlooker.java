package org.limedry.simulation;

import java.time.Instant;
import java.util.List;

/** Looks at the site as the run begins and after every step taken, for what an outcome does not tell. */
@FunctionalInterface
public interface Onlooker {
    /**
     * Looks at the site.
     *
     * @param now the time reached; what falls due at it, such as a coat, is not done yet
     * @param site the site, to be read at once: it moves on
     */
    void look(Instant now, SiteView site);

    /** Returns the instants that a step must reach exactly, besides full hours and events. */
    default List<Instant> stops() {
        return List.of();
    }

    /** Returns one that looks at nothing. */
    static Onlooker none() {
        return (now, site) -> {};
    }
}
