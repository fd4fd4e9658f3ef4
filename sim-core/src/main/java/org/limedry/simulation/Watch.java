package org.limedry.simulation;

import java.time.Instant;
import java.util.List;

/** Looks out for what the user must be told. */
final class Watch {
    Watch(SiteModel model, Scenario scenario) {}

    void take(Instant now, double stepS) {}

    List<Warning> warnings(Instant end) {
        return List.of();
    }
}
