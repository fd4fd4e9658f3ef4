package org.limedry.cli.report;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.limedry.cli.safety.Situation;
import org.limedry.units.Check;

/**
 * What the site file says beside the scenario.
 *
 * @param zone time zone of the site
 * @param invented whether the site is an invented scenario
 * @param bucketLitres size of a bucket, litres; above 0
 * @param work what the mixes and the walls call for in the way of care
 * @param backgrounds what walls are made of and how wet they began, by the name of the wall: "damp old brick"
 * @param weather whose weather it is, and what was mended in it
 * @param assumptions what the user did not say, or could not know
 * @param moved what moved the dates since the page was given out before, coat by coat; empty if nothing was fitted
 * @param attribution statements owed to the sources of data, in order
 */
record SiteNotes(
        ZoneId zone,
        boolean invented,
        double bucketLitres,
        Situation work,
        Map<String, String> backgrounds,
        String weather,
        List<Assumption> assumptions,
        List<Moved> moved,
        List<String> attribution) {
    SiteNotes {
        Check.positive(bucketLitres, "bucketLitres", "litres");
        backgrounds = Map.copyOf(backgrounds);
        assumptions = List.copyOf(assumptions);
        moved = List.copyOf(moved);
        attribution = List.copyOf(attribution);
    }

    /**
     * What moved the dates.
     *
     * @param heading which date, from when to when
     * @param lines what moved it, a line each
     */
    record Moved(String heading, List<String> lines) {
        Moved {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line of "what we assumed".
     *
     * @param what what it is
     * @param value value of the likely run, with its unit
     * @param range range tried for the earliest and latest dates, or empty if it was not varied
     * @param from source, or "from memory", or the words of the site file
     */
    record Assumption(String what, String value, String range, String from) {
        boolean isVaried() {
            return !range.isEmpty();
        }
    }
}
