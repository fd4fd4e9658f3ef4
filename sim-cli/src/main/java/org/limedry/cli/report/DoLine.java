package org.limedry.cli.report;

import java.util.List;
import org.limedry.cli.safety.Advised;

/**
 * One thing to do.
 *
 * @param what verb, thing and time, without a full stop
 * @param why what in the run asks for it, to follow a colon
 * @param advised what it has people do: cautions ride on it
 */
record DoLine(String what, String why, List<Advised> advised) {
    DoLine {
        advised = List.copyOf(advised);
    }

    /** Makes a line that has people do these things. */
    DoLine(String what, String why, Advised... advised) {
        this(what, why, List.of(advised));
    }
}
