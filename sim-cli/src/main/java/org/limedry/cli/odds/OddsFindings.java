package org.limedry.cli.odds;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.Site;
import org.limedry.lime.CoatPlan;
import org.limedry.reference.Estimate;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.EnsembleResult;
import org.limedry.study.Uncertain;
import org.limedry.study.odds.Odds;

/**
 * What the page of odds is made from.
 *
 * @param site the site
 * @param scenario the likely scenario
 * @param unknowns the unknowns that were drawn, but for the weather
 * @param result the likely run and the members
 * @param weatherOnly runs in which nothing but the weather varied; without members if it could not
 * @param weather how other weather was made, or why it was not
 * @param seed seed of the draws
 * @param odds one for each coat of the scenario
 */
record OddsFindings(
        Site site,
        Scenario scenario,
        List<Uncertain> unknowns,
        EnsembleResult result,
        EnsembleResult weatherOnly,
        String weather,
        int seed,
        List<Odds> odds) {
    OddsFindings {
        unknowns = List.copyOf(unknowns);
        odds = List.copyOf(odds);
    }

    /** Judges every coat of the members, once. */
    static List<Odds> odds(Scenario scenario, List<Uncertain> unknowns, EnsembleResult result, Odds.Drawn drawn) {
        return IntStream.range(0, scenario.coats().size())
                .mapToObj(coat -> Odds.of(result.members(), coat, unknowns, scenario.until(), drawn))
                .toList();
    }

    /** Returns the odds of a coat, counted from 0. */
    Odds odds(int coat) {
        return odds.get(coat);
    }

    private Instant end() {
        return scenario.until();
    }

    /** Returns the range of an unknown: as a fit left it, or as it is before any. */
    Estimate range(Uncertain unknown) {
        return site.fitted()
                .flatMap(file -> file.now(unknown))
                .orElseGet(() -> new Estimate(unknown.likely(), unknown.low(), unknown.high()));
    }

    /** Returns the coat whose middle date is last: the one that the end of the job waits for. */
    int lastCoat() {
        return IntStream.range(0, scenario.coats().size())
                .boxed()
                .max(Comparator.comparing(coat -> odds(coat).median().orElse(Instant.MAX)))
                .orElseThrow();
    }

    /** Returns what a coat is called: "store north wall, coat 2". */
    String name(int coat) {
        CoatPlan plan = scenario.coats().get(coat);
        return Names.wall(site.wallWords(plan.wall())) + ", coat " + plan.number();
    }

    Days days() {
        return Days.of(site.zone(), scenario.from(), scenario.until());
    }

    /** Returns the days between the 1-in-5 and the 4-in-5 date of a coat. */
    double widthDays(int coat) {
        return Odds.widthDays(odds(coat).members(), end());
    }

    /** Returns how wide the range would be if nothing but the weather were unknown, days. */
    Optional<Double> weatherWidthDays(int coat) {
        List<EnsembleResult.Member> members = weatherOnly.members();
        return members.isEmpty()
                ? Optional.empty()
                : Optional.of(Odds.widthDays(
                        members.stream()
                                .map(member -> member.coats().get(coat))
                                .map(Outcome.CoatResult::ready)
                                .toList(),
                        end()));
    }

    /** Returns the likely date of a coat. */
    Optional<Instant> likely(int coat) {
        return result.likely().coats().get(coat).ready();
    }

    /** Tells whether a hand test settles the date of a coat. */
    boolean byHand(int coat) {
        return result.coats().get(coat).byHand();
    }

    /** Tells whether the likely run says a date for every coat. */
    boolean allLikelyDatesKnown() {
        return result.likely().coats().stream().allMatch(coat -> coat.ready().isPresent());
    }
}
