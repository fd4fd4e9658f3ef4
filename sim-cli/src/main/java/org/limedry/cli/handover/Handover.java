package org.limedry.cli.handover;

import java.util.List;
import org.limedry.cli.page.Days;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.care.CareRecord;

/**
 * What is handed over.
 *
 * @param site the site
 * @param scenario its likely run
 * @param result what was found
 * @param ladders the plastered rooms
 * @param care what was held in every room
 */
record Handover(Site site, Scenario scenario, EnsembleResult result, List<RoomLadder> ladders, CareRecord care) {
    Handover {
        ladders = List.copyOf(ladders);
    }

    /**
     * Returns what is handed over.
     *
     * @param result the runs of the site, with at least one coat
     * @param limits what was to be held
     */
    static Handover of(Site site, EnsembleResult result, CareRecord.Limits limits) {
        Scenario scenario = site.scenario(Draw.likely());
        return new Handover(
                site,
                scenario,
                result,
                RoomLadder.of(site, scenario, result),
                CareRecord.of(result.likely().history(), limits));
    }

    /** Tells whether every room has a date. */
    boolean isComplete() {
        return ladders.stream().allMatch(ladder -> ladder.readyDay().isPresent());
    }

    /** Returns the last day of the run, in full. */
    String lastDay() {
        return Days.full(days().lastDay(scenario.until()));
    }

    Days days() {
        return Days.of(site.zone(), scenario.from(), result.likely().reached());
    }

    Outcome likely() {
        return result.likely();
    }

    boolean hasRanges() {
        return !result.members().isEmpty();
    }

    /** Returns what the site has; the sheets have the owner heat gently, air, and paint. */
    Situation situation() {
        return Situation.at(site)
                .with(scenario, site.zone())
                .with(likely())
                .advising(Advised.HEAT, Advised.OPEN, Advised.FINISH, Advised.TOUCH);
    }
}
