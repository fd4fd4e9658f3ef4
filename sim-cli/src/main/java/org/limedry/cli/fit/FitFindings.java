package org.limedry.cli.fit;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.Site;
import org.limedry.lime.CoatPlan;
import org.limedry.reference.Estimate;
import org.limedry.simulation.Scenario;
import org.limedry.study.FitResult;
import org.limedry.study.Uncertain;

/**
 * What the page of a fit is made from.
 *
 * @param site the site as its file has it
 * @param scenario its likely scenario
 * @param readings the readings
 * @param fit what they say
 * @param dates the dates that follow; empty if the fit is too bad to draw any
 */
public record FitFindings(Site site, Scenario scenario, ReadingsToFit readings, FitResult fit, Optional<Dates> dates) {
    /**
     * The dates that follow.
     *
     * @param file what is kept of them
     * @param wide of each coat the dates between which it is ready with four chances in five
     */
    public record Dates(FittedFile file, List<Wide> wide) {
        public Dates {
            wide = List.copyOf(wide);
        }

        FittedFile.CoatDates of(int coat) {
            return file.issue().coats().get(coat);
        }

        FittedFile.CoatDates before(int coat) {
            return file.before().orElseThrow().coats().get(coat);
        }
    }

    /**
     * A range that holds four in five.
     *
     * @param oneInTen date by which one member in ten is ready
     * @param nineInTen date by which nine in ten are
     */
    public record Wide(Optional<Instant> oneInTen, Optional<Instant> nineInTen) {}

    Days days() {
        return Days.of(site.zone(), scenario.from(), scenario.until());
    }

    /** Returns what a coat is called: "store north wall, coat 2". */
    String name(int coat) {
        CoatPlan plan = scenario.coats().get(coat);
        return Names.wall(site.wallWords(plan.wall())) + ", coat " + plan.number();
    }

    /** Returns the coat that the end of the job waits for. */
    int lastCoat(Dates dates) {
        return IntStream.range(0, scenario.coats().size())
                .boxed()
                .max(Comparator.comparing(coat -> dates.of(coat).likely().orElse(Instant.MAX)))
                .orElseThrow();
    }

    /** Tells whether the likely run says a date for every coat. */
    public boolean allLikelyDatesKnown() {
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
