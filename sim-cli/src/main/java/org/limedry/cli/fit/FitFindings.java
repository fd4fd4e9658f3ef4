package org.limedry.cli.fit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.issue.IssueWords;
import org.limedry.cli.page.Days;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.Site;
import org.limedry.reference.Estimate;
import org.limedry.simulation.Scenario;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.FitResult;

/**
 * What the page of a fit is made from.
 *
 * @param site the site as its file has it
 * @param scenario its likely scenario
 * @param readings the readings
 * @param fit what they say
 * @param dates the dates that follow; empty if the fit is too bad to draw any
 */
record FitFindings(Site site, Scenario scenario, ReadingsToFit readings, FitResult fit, Optional<Dates> dates) {
    /**
     * The dates that follow.
     *
     * @param file what is kept of them
     * @param wide of each coat the dates between which it is ready with four chances in five
     */
    record Dates(FittedFile file, List<Wide> wide) {
        Dates {
            wide = List.copyOf(wide);
        }
    }

    /**
     * A range that holds four in five.
     *
     * @param oneInTen date by which one member in ten is ready
     * @param nineInTen date by which nine in ten are
     */
    record Wide(Optional<Instant> oneInTen, Optional<Instant> nineInTen) {}

    Days days() {
        return Days.of(site.zone(), scenario.from(), scenario.until());
    }

    /** Returns the words for the dates, coat by coat. */
    IssueWords issue(Dates of) {
        return new IssueWords(site, of.file());
    }

    /** Tells whether the likely run says a date for every coat. */
    boolean allLikelyDatesKnown() {
        return dates.isPresent()
                && dates.get().file().issue().coats().stream()
                        .allMatch(coat -> coat.likely().isPresent());
    }

    /** Returns where an unknown lies now. */
    Estimate now(Uncertain unknown) {
        return FittedFile.undated(site.name(), fit.unknowns(), fit.fitted(), readings.until())
                .now(unknown)
                .orElseThrow();
    }

    /** Returns the last day of which readings are known. */
    String untilWords() {
        Days days = days();
        return days.brief(days.lastDay(readings.until()));
    }
}
