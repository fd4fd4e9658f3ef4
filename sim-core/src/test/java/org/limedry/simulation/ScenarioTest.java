package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.Refusal;
import org.limedry.lime.HandTest;
import org.limedry.lime.HandTest.Result;
import org.limedry.proof.benchmarks.Lab;

/** EXACT: hand tests that cannot all be right are no scenario, for a run would have to choose between them. */
final class ScenarioTest {
    private static final HandTest READY = tried(24.0, Result.NAIL_NOT_KNUCKLE);

    private static HandTest tried(double hour, Result result) {
        Instant at = Lab.at(hour);
        return new HandTest("plastered", 1, at, result);
    }

    private static Scenario with(HandTest... tests) {
        Scenario site = AccountSite.scenario();
        return new Scenario(
                site.site(),
                site.from(),
                site.until(),
                site.outdoors(),
                site.courses(),
                site.rooms(),
                site.walls(),
                site.coats(),
                site.rule(),
                List.of(tests),
                site.physics(),
                site.accuracy());
    }

    @Test
    void handTests_dentsAfterReady_areRefused() {
        Refusal.of("handTests", () -> with(READY, tried(48.0, Result.DENTS)));
        Refusal.of("handTests", () -> with(tried(24.0, Result.DENTS), READY));
    }

    @Test
    void handTests_dentsBeforeReady_areKept() {
        List<HandTest> tests = List.of(tried(12.0, Result.DENTS), READY, tried(48.0, Result.HARD));

        assertEquals(tests, with(tests.toArray(HandTest[]::new)).handTests());
    }
}
