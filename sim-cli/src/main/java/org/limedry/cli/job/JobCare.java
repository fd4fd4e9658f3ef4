package org.limedry.cli.job;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.cli.page.Caution;
import org.limedry.cli.page.Cautions;
import org.limedry.room.Plant;
import org.limedry.simulation.Warning;

/** What to take care of in jobs. */
public final class JobCare {
    private JobCare() {}

    /** Returns the cautions that any of these jobs calls for. */
    public static List<Caution> of(List<Job> jobs) {
        List<Plant> plant = jobs.stream()
                .flatMap(job -> job.scenario().rooms().stream())
                .flatMap(room -> room.plant().stream())
                .toList();
        Set<Warning.Kind> warned = jobs.stream()
                .flatMap(job -> job.result().likely().warnings().stream())
                .map(Warning::kind)
                .collect(Collectors.toSet());
        return Cautions.of(
                plant, warned, jobs.stream().anyMatch(job -> job.site().hasQuicklime()));
    }
}
