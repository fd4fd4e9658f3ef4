package org.limedry.cli.job;

import java.util.Optional;
import org.limedry.cli.chart.Weeks;
import org.limedry.cli.page.Columns;

/** A job in the files. */
public final class JobColumns {
    private JobColumns() {}

    /** Returns how many weeks a job takes: likely, and its range if that is known. */
    public static Columns<Job> weeks() {
        return Columns.<Job>of()
                .key("weeksEarliest", job -> ranged(job).flatMap(Weeks::earliest))
                .key("weeksLikely", job -> job.weeks().likely())
                .key("weeksLatest", job -> ranged(job).flatMap(Weeks::latest))
                .key("readyLikely", job -> job.result().jobReady().map(job::date));
    }

    private static Optional<Weeks> ranged(Job job) {
        return Optional.of(job.weeks()).filter(Weeks::ranged);
    }
}
