package org.limedry.cli.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.limedry.cli.page.Figures;
import org.limedry.cli.site.GangPlan;
import org.limedry.cli.site.Site;

/** How a programme is found, for the foot of a page. */
public final class JobBasis {
    private JobBasis() {}

    /**
     * Returns the paragraphs.
     *
     * @param members runs behind the ranges; 0 for likely dates only
     */
    public static List<String> of(Site site, int members) {
        List<String> basis = new ArrayList<>();
        String gangs = site.gangs().stream().map(JobBasis::gang).collect(Collectors.joining("; "));
        basis.add("Who lays what: " + gangs
                + ". A gang goes where a coat may be laid: on a working morning at 8, when the"
                + " coat under it is ready (rule: " + site.ruleName() + ") and the air of the room is above "
                + Figures.plain(site.coldLineCelsius())
                + " \u00b0C; of several it takes the one listed first. A date in the"
                + " site file is the day before which nobody begins. A coat of a day or less is begun only where it can be"
                + " finished that day; a longer one counts as laid on its last day. Gang and drying are worked out together,"
                + " morning by morning.");
        basis.add("Weather " + site.weatherName()
                + ", taken as one possible year. Runs on the quick grid: a date may lie a"
                + " day or two off that of limedry run, which also lays dated coats on their dates whether a gang is free"
                + " or not.");
        basis.add(
                members == 0
                        ? "Likely dates only, from one run; limedry gives ranges with --ranges."
                        : String.format(
                                Locale.ROOT,
                                "Ranges from %d runs over what nobody can know, weather up to 21 days earlier or later"
                                        + " where it reaches among it; each run lays its coats on its own days.",
                                members));
        return basis;
    }

    private static String gang(GangPlan gang) {
        String output = Figures.plain(gang.m2PerDay()) + " m\u00b2 of one coat a day";
        return gang.name() + ", " + Figures.count(gang.people(), "person").replace("persons", "people") + ", " + output
                + (gang.outputGiven() ? "" : " (common practice, no source: set gangs in the site file)");
    }
}
