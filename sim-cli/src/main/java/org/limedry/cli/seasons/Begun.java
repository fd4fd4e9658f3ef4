package org.limedry.cli.seasons;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.limedry.cli.job.Job;
import org.limedry.cli.job.WeekWords;
import org.limedry.study.job.JobFigures;

/**
 * The job begun on one day, and what it goes through.
 *
 * @param start the day
 * @param job the job
 * @param figures what it goes through
 */
record Begun(Start start, Job job, JobFigures figures) {
    /** Shorter first; one that is not ready by the end of its run counts as longest. */
    static final Comparator<Begun> BY_WEEKS =
            Comparator.comparing(begun -> begun.job().weeks().likely().orElse(Double.POSITIVE_INFINITY));

    /** Returns the job with its figures. */
    static Begun of(Start start, Job job) {
        return new Begun(
                start,
                job,
                JobFigures.of(job.scenario(), job.result().likely(), job.site().zone()));
    }

    /** Returns "Start in May: 4 weeks". */
    String headline() {
        return "Start " + start.words() + ": " + WeekWords.likely(job);
    }

    /** Returns the two to look at more closely, the quicker first: those nearest to the days asked for, or best and worst. */
    static List<Begun> pair(List<Begun> all, List<LocalDate> compared, Starts starts) {
        List<Begun> pair = compared.isEmpty()
                ? List.of(
                        all.stream().min(BY_WEEKS).orElseThrow(),
                        all.stream().max(BY_WEEKS).orElseThrow())
                : compared.stream()
                        .map(day -> starts.near(day).movedDays())
                        .flatMap(moved ->
                                all.stream().filter(begun -> begun.start().movedDays() == moved))
                        .toList();
        return pair.stream().distinct().sorted(BY_WEEKS).toList();
    }
}
