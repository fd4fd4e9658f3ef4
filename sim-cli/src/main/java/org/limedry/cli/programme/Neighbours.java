package org.limedry.cli.programme;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.limedry.cli.job.Job;
import org.limedry.cli.page.Figures;
import org.limedry.room.Opening;
import org.limedry.simulation.Outcome;
import org.limedry.study.EnsembleResult;
import org.limedry.study.job.NextDoor;
import org.limedry.units.Units;

/**
 * What plastered rooms that share a door do to each other.
 *
 * @param alone for each room, what its own plaster did without that of the others
 * @param shut the whole job with the doors between rooms kept shut
 */
record Neighbours(Map<String, Outcome> alone, Optional<EnsembleResult> shut) {
    private static final double WORTH_TELLING_DAYS = 1.0;

    Neighbours {
        alone = Map.copyOf(alone);
    }

    /** Returns what there is to tell, a sentence each. */
    List<String> sentences(Job job) {
        List<String> sentences = new ArrayList<>();
        for (String room : job.site().rooms()) {
            Optional.ofNullable(alone.get(room)).ifPresent(outcome -> sentences.add(sentence(job, room, outcome)));
        }
        shut.ifPresent(kept -> sentences.add(doors(job, kept)));
        return sentences;
    }

    private String sentence(Job job, String room, Outcome outcome) {
        String others = job.site().rooms().stream()
                .filter(other -> !other.equals(room) && alone.containsKey(other))
                .collect(Collectors.joining(" and the ", "the ", ""));
        Optional<NextDoor.Delay> longest = longest(job, outcome);
        if (longest.isEmpty()) {
            return "The wet plaster of " + others + " makes no difference of a day to the " + room + ".";
        }
        NextDoor.Delay delay = longest.get();
        String days = Figures.count(Math.abs(delay.days()), "day");
        String coat = Job.name(job.site(), delay.wall(), delay.coat());
        return delay.days() > 0
                ? "The wet plaster of " + others + " keeps the " + coat + " waiting " + days + " longer."
                : "The wet plaster of " + others + " does not delay the " + room + ": the " + coat + " is ready " + days
                        + " sooner with it.";
    }

    /** Returns the delay that is furthest from none, if it is worth telling. */
    static Optional<NextDoor.Delay> longest(Job job, Outcome alone) {
        return NextDoor.delays(job.result().likely(), alone).stream()
                .max(Comparator.comparing(delay -> Math.abs(delay.days())))
                .filter(delay -> Math.abs(delay.days()) >= WORTH_TELLING_DAYS);
    }

    private static String doors(Job job, EnsembleResult kept) {
        String names = job.scenario().rooms().stream()
                .flatMap(room -> room.openings().stream())
                .filter(opening -> !opening.leadsOutdoors())
                .map(Opening::name)
                .distinct()
                .collect(Collectors.joining(" and the "));
        Optional<Instant> open = job.result().jobReady();
        Optional<Instant> shut = kept.jobReady();
        String with = "With the " + names + " kept shut all is ready ";
        if (open.isEmpty() || shut.isEmpty()) {
            return with
                    + (shut.isPresent() ? "on " + job.days().table(job.date(shut.get())) : "after the end of the runs")
                    + ".";
        }
        double days =
                Units.daysFromSeconds(Duration.between(open.get(), shut.get()).toMillis() / 1000.0);
        if (Math.abs(days) < WORTH_TELLING_DAYS) {
            return with + "on the same day, within a day.";
        }
        return with + Figures.count(Math.abs(days), "day") + (days > 0 ? " later" : " sooner") + ".";
    }
}
