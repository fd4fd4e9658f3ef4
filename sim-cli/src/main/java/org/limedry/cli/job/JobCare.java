package org.limedry.cli.job;

import java.util.List;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;

/** What to take care of in jobs. */
public final class JobCare {
    private JobCare() {}

    /** Returns what the site has in any of these jobs; it is one site, at least one job. */
    public static Situation of(List<Job> jobs) {
        Situation situation = Situation.at(jobs.get(0).site()).advising(Advised.TOUCH);
        for (Job job : jobs) {
            situation = situation
                    .with(job.scenario(), job.site().zone())
                    .with(job.result().likely());
        }
        return situation;
    }
}
