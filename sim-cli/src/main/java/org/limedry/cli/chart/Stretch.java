package org.limedry.cli.chart;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of time during which something was so.
 *
 * @param from its start
 * @param to its end
 */
record Stretch(Instant from, Instant to) {
    /** Joins stretches that touch; they must come in order. */
    static List<Stretch> joined(List<Stretch> stretches) {
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : stretches) {
            int last = joined.size() - 1;
            if (last >= 0 && !next.from.isAfter(joined.get(last).to)) {
                joined.set(last, new Stretch(joined.get(last).from, next.to));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }
}
