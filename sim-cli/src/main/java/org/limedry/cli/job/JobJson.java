package org.limedry.cli.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.limedry.cli.chart.Weeks;

/** A job in a JSON file. */
public final class JobJson {
    private JobJson() {}

    /** Puts how many weeks a job takes: likely, and its range if that is known; null past the end of the runs. */
    public static void putWeeks(ObjectNode node, Job job) {
        Weeks weeks = job.weeks();
        ObjectNode target = node.putObject("weeks");
        if (weeks.ranged()) {
            put(target, "earliest", weeks.earliest());
        }
        put(target, "likely", weeks.likely());
        if (weeks.ranged()) {
            put(target, "latest", weeks.latest());
        }
    }

    private static void put(ObjectNode node, String key, Optional<Double> weeks) {
        weeks.ifPresentOrElse(known -> node.put(key, known), () -> node.putNull(key));
    }
}
