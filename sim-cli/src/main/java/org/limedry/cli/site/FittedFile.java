package org.limedry.cli.site;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.reference.Estimate;
import org.limedry.study.MemberQuantile;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.Fitted;

/**
 * What a fit found, as it is kept between two issues of the page.
 *
 * @param site name of the site
 * @param building rooms and walls with their sizes, a line each, for which it holds
 * @param unknowns what was fitted, with the ranges from which it started
 * @param fitted where they lie now
 * @param issue the dates that go with it
 * @param before the issue before this, if there was one
 * @param changes what moved the dates since, one thing after the other; they add up
 * @param readings what each group of new readings did by itself: the date with it less the date without it
 */
public record FittedFile(
        String site,
        List<String> building,
        List<Uncertain> unknowns,
        Fitted fitted,
        Issue issue,
        Optional<Issue> before,
        List<Change> changes,
        List<Change> readings) {
    public FittedFile {
        building = List.copyOf(building);
        unknowns = List.copyOf(unknowns);
        changes = List.copyOf(changes);
        readings = List.copyOf(readings);
    }

    /**
     * The dates that were given out at one time.
     *
     * @param readingsUntil when the last reading was taken that they know of
     * @param coats dates of each coat in the order of the site file
     */
    public record Issue(Instant readingsUntil, List<CoatDates> coats) {
        public Issue {
            coats = List.copyOf(coats);
        }
    }

    /**
     * When a coat is ready; a date that does not come within the run is empty.
     *
     * @param wall wall, by its name in a scenario
     * @param coat number on that wall, from 1
     * @param earliest one chance in five of being ready by then
     * @param likely the likely run
     * @param latest four chances in five
     */
    public record CoatDates(
            String wall, int coat, Optional<Instant> earliest, Optional<Instant> likely, Optional<Instant> latest) {}

    /**
     * What moved a date.
     *
     * @param cause in words: "the weather since", "bucket, store"
     * @param wall wall of the coat
     * @param coat its number there
     * @param days days by which the likely date is later for it; negative for earlier
     */
    public record Change(String cause, String wall, int coat, double days) {}

    /** Returns a fit without dates: enough to run a job with. */
    public static FittedFile undated(String site, List<Uncertain> unknowns, Fitted fitted, Instant readingsUntil) {
        Issue none = new Issue(readingsUntil, List.of());
        return new FittedFile(site, List.of(), unknowns, fitted, none, Optional.empty(), List.of(), List.of());
    }

    /**
     * Returns where an unknown lies now: 1 in 10 below the low, 1 in 10 above the high value, unless the likely value lies still
     * farther out; empty if it was not fitted.
     */
    public Optional<Estimate> now(Uncertain unknown) {
        int i = fitted.keys().indexOf(unknown.key());
        if (i < 0) {
            return Optional.empty();
        }
        double likely = unknown.in(fitted.likely(i));
        return Optional.of(new Estimate(
                likely,
                Math.min(likely, unknown.in(fitted.below(i, MemberQuantile.ONE_IN_TEN))),
                Math.max(likely, unknown.in(fitted.below(i, MemberQuantile.NINE_IN_TEN)))));
    }

    /** Returns what the readings left open of all unknowns together, as one unknown. */
    Uncertain leftOpen() {
        String basis = fitted.points().size() + " ways in which all of them may lie after the readings";
        return Uncertain.byPlace(Fitted.LEFT_OPEN, "what the readings left open", "fitted", basis);
    }

    /** Returns what does not hold any more since the site file says something else, each in a sentence. */
    List<String> outdated(Site at) {
        List<String> all = new ArrayList<>();
        if (!site.equals(at.name())) {
            all.add("it is of \"" + site + "\"");
        }
        List<String> building = at.building();
        this.building.stream()
                .filter(part -> !building.contains(part))
                .forEach(part -> all.add("it was made with " + part));
        building.stream()
                .filter(part -> !this.building.contains(part))
                .forEach(part -> all.add("it knows of no " + part));
        List<Uncertain> now = at.fittable();
        for (Uncertain unknown : unknowns) {
            Optional<Uncertain> same =
                    now.stream().filter(one -> one.key().equals(unknown.key())).findFirst();
            if (same.isEmpty()) {
                all.add("this site has no unknown " + unknown.key() + " (" + unknown.words() + ")");
            } else if (!sameRange(same.get(), unknown)) {
                all.add("the range of " + unknown.key() + " was " + range(unknown) + " and is now "
                        + range(same.get()));
            }
        }
        return all;
    }

    private static boolean sameRange(Uncertain one, Uncertain other) {
        return one.low() == other.low()
                && one.likely() == other.likely()
                && one.high() == other.high()
                && one.byFactor() == other.byFactor();
    }

    private static String range(Uncertain unknown) {
        return unknown.low() + " to " + unknown.likely() + " to " + unknown.high() + " " + unknown.unit();
    }
}
