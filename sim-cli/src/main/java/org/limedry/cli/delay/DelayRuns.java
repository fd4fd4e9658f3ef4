package org.limedry.cli.delay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.limedry.cli.site.PlannedJob;
import org.limedry.cli.site.PlannedJob.Cause;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.delay.Delay;

/**
 * The runs behind a delay: one for each set of causes, and one by the record where dates or tests of the record overrule
 * a run.
 *
 * @param site the site
 * @param job both its sides
 * @param causes in what they differ; bit i of the place of a run stands for cause i
 */
public record DelayRuns(Site site, PlannedJob job, List<Cause> causes) {
    public DelayRuns {
        causes = List.copyOf(causes);
    }

    /** Returns the runs of a job. */
    public static DelayRuns of(Site site, PlannedJob job) {
        return new DelayRuns(site, job, job.causes());
    }

    /** Returns how many runs share out the delay. */
    public int sets() {
        return 1 << causes.size();
    }

    /** Returns the causes that went as they did in a run. */
    Set<Cause> happened(int set) {
        EnumSet<Cause> happened = EnumSet.allOf(Cause.class);
        IntStream.range(0, causes.size())
                .filter(i -> (set & (1 << i)) == 0)
                .forEach(i -> happened.remove(causes.get(i)));
        return happened;
    }

    /** Returns what makes the scenario of each run. */
    public List<Function<Draw, Scenario>> ways() {
        List<Function<Draw, Scenario>> ways = new ArrayList<>();
        for (int set = 0; set < sets(); set++) {
            ways.add(job.site(happened(set))::scenario);
        }
        if (job.recordOverrules()) {
            ways.add(site::scenario);
        }
        return ways;
    }

    /** Returns the wall that was ready last, by the record; one that was not ready counts as last. */
    public String lastWall(List<EnsembleResult> results) {
        Outcome recorded = recorded(results).likely();
        return job.plasteredWalls().stream()
                .max(Comparator.comparing(
                        wall -> JobSide.ready(recorded.coats(), wall).orElse(Instant.MAX)))
                .orElseThrow();
    }

    EnsembleResult recorded(List<EnsembleResult> results) {
        return results.get(results.size() - 1);
    }

    /** Returns the delay of a wall in the likely runs. */
    Delay delay(List<EnsembleResult> results, String wall) {
        return delay(results, result -> JobSide.ready(result.likely().coats(), wall));
    }

    /** Returns the delay of a wall in every reckoning, the likely one first, then each member. */
    List<Delay> reckonings(List<EnsembleResult> results, String wall) {
        List<Delay> reckonings = new ArrayList<>(List.of(delay(results, wall)));
        for (int i = 0; i < results.get(0).members().size(); i++) {
            int member = i;
            reckonings.add(delay(
                    results,
                    result -> JobSide.ready(result.members().get(member).coats(), wall)));
        }
        return List.copyOf(reckonings);
    }

    private Delay delay(List<EnsembleResult> results, Function<EnsembleResult, Optional<Instant>> ready) {
        List<Optional<Instant>> dates =
                results.subList(0, sets()).stream().map(ready).toList();
        return Delay.of(dates, ready.apply(recorded(results)), site.until());
    }
}
