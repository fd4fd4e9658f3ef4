package org.limedry.cli.site;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.reference.Estimate;
import org.limedry.study.Fitted;
import org.limedry.study.Uncertain;

/**
 * What a fit found, as it is kept between two issues of the page.
 *
 * @param site name of the site
 * @param unknowns what was fitted, with the ranges from which it started
 * @param fitted where they lie now
 * @param issue the dates that go with it
 * @param before the issue before this, if there was one
 * @param changes what moved the dates since
 */
public record FittedFile(
        String site,
        List<Uncertain> unknowns,
        Fitted fitted,
        Issue issue,
        Optional<Issue> before,
        List<Change> changes) {
    /** Normal deviate of which one in ten lies above. EXACT to the digits: the inverse normal of 0.9. */
    private static final double ONE_IN_TEN = 1.2815515655446004;

    public FittedFile {
        unknowns = List.copyOf(unknowns);
        changes = List.copyOf(changes);
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

    /** Returns where an unknown lies now: 1 in 10 below the low, 1 in 10 above the high value. */
    public Estimate now(int unknown) {
        return new Estimate(value(unknown, 0.0), value(unknown, -ONE_IN_TEN), value(unknown, ONE_IN_TEN));
    }

    private double value(int unknown, double sigmas) {
        return unknowns.get(unknown).in(fitted.at(unknown, sigmas));
    }

    /** Returns what does not hold any more since the site file says something else, each in a sentence. */
    List<String> outdated(String siteName, List<Uncertain> now) {
        List<String> all = new ArrayList<>();
        if (!site.equals(siteName)) {
            all.add("it is of \"" + site + "\"");
        }
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
