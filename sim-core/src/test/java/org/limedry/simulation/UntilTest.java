package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.proof.benchmarks.Lab;

/** EXACT: two coats, laid in hours 1 and 30, each ready by rule after a day. */
final class UntilTest {
    private static final Instant BOTH_READY = Lab.at(54.0);

    @Test
    void allReady_endsWithTheLastCoat() {
        assertEquals(BOTH_READY, reached(Simulation.Until.ALL_READY));
    }

    @Test
    void readyOn_wallWithTheCoats_endsWithItsLastCoat() {
        assertEquals(BOTH_READY, reached(Simulation.Until.readyOn(Set.of("plastered"))));
    }

    @Test
    void readyOn_otherWall_waitsForNothing() {
        assertEquals(Lab.START, reached(Simulation.Until.readyOn(Set.of("partition"))));
    }

    private static Instant reached(Simulation.Until until) {
        return Simulation.run(AccountSite.scenario().with(Accuracy.quick()), until, Progress.none())
                .reached();
    }
}
