package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Outdoors;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;

/** The same job in another season, or for longer. */
final class MovedSiteTest {
    private final Site site = Examples.good(SiteReader.read(Examples.good().get(0)));

    private static Outdoors.Piece hour(Scenario scenario, Instant from) {
        return scenario.outdoors().over(from, from.plus(Duration.ofHours(1)));
    }

    // EXACT: the weather of the moved run on a day is that of the run itself as many days later. No tolerance: same
    // rows.
    @Test
    void movedSite_hasTheWeatherOfAsManyDaysLater() {
        Scenario asItIs = site.scenario(Draw.likely());
        Scenario moved = site.moved(20).orElseThrow().scenario(Draw.likely());

        Instant day = asItIs.from().plus(Duration.ofDays(3));

        Outdoors.Piece expected = hour(asItIs, day.plus(Duration.ofDays(20)));
        assertEquals(expected.startCelsius(), hour(moved, day).startCelsius(), 1e-9);
        assertEquals(expected.endVapourPressurePa(), hour(moved, day).endVapourPressurePa(), 1e-9 * 1000.0);
        assertEquals(asItIs.from(), moved.from());
        assertEquals(List.of(), moved.handTests());
        assertEquals(20, site.moved(20).orElseThrow().movedDays());
    }

    // EXACT: half a year on, and back again, is the site itself.
    @Test
    void movedSite_byNoDays_isTheSiteItself() {
        Scenario asItIs = site.scenario(Draw.likely());

        Scenario back = site.moved(180).orElseThrow().moved(0).orElseThrow().scenario(Draw.likely());

        assertEquals(asItIs.handTests(), back.handTests());
        assertEquals(hour(asItIs, asItIs.from()), hour(back, back.from()));
    }

    // EXACT: the file's own weather has only the days of its run.
    @Test
    void site_whoseWeatherDoesNotReach_isNotMoved() {
        Site own = Examples.site(FullFile.TEXT);

        assertTrue(own.moved(20).isEmpty());
        assertTrue(own.lasting(1000).isEmpty());
        assertEquals(
                own.scenario(Draw.likely()).handTests(),
                own.moved(0).orElseThrow().scenario(Draw.likely()).handTests());
    }

    // EXACT: days as asked for.
    @Test
    void lastingSite_endsAfterItsDays() {
        Site longer = site.lasting(200).orElseThrow();

        assertEquals(
                200, Math.round(Duration.between(longer.from(), longer.until()).toHours() / 24.0));
    }

    // EXACT: the dates of a run that ends when all is ready are those of the whole run.
    @Test
    void run_untilAllIsReady_findsTheDatesOfTheWholeRunAndEndsThen() {
        Scenario scenario = Examples.good(SiteReader.read(Examples.good().get(1)))
                .scenario(Draw.likely())
                .with(Accuracy.quick());

        Outcome whole = Simulation.run(scenario);
        Outcome untilReady = Simulation.run(scenario, Simulation.Until.ALL_READY, Progress.none());

        List<Instant> ready = untilReady.coats().stream()
                .map(coat -> coat.ready().orElseThrow())
                .toList();
        assertEquals(
                whole.coats().stream().map(coat -> coat.ready().orElseThrow()).toList(), ready);
        Duration after = Duration.between(ready.get(ready.size() - 1), untilReady.reached());
        assertTrue(!after.isNegative() && after.compareTo(Duration.ofHours(1)) <= 0, after.toString());
        assertTrue(
                untilReady.reached().isBefore(whole.reached()),
                untilReady.reached().toString());
    }
}
