package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.util.List;

/** Leaves out the few readings at either end that lie more than a year from all others: the clock was not set yet. */
final class StrayClock {
    private static final Duration FAR = Duration.ofDays(366);

    /** Judgement, no source: more than this is a second stretch of readings and no clock that was not set. */
    private static final int LEAST_OTHERS_TO_STRAY = 3;

    private StrayClock() {}

    static List<Ordered> without(List<Ordered> rows, ClockWords clock, List<Found> found) {
        int from = 0;
        int until = rows.size();
        for (int i = 1; i < rows.size(); i++) {
            Duration step = Duration.between(
                    rows.get(i - 1).reading().at(), rows.get(i).reading().at());
            boolean far = step.compareTo(FAR) > 0;
            if (far && isStray(i, rows.size() - i)) {
                from = i;
            } else if (far && until == rows.size() && isStray(rows.size() - i, i)) {
                until = i;
            }
        }
        for (int i = 0; i < rows.size(); i++) {
            if (i < from || i >= until) {
                Ordered stray = rows.get(i);
                found.add(Found.on(
                        stray.line(),
                        Found.Kind.STRAY_CLOCK,
                        clock.words(stray.reading().at())));
            }
        }
        return rows.subList(from, until);
    }

    private static boolean isStray(int few, int others) {
        return others >= LEAST_OTHERS_TO_STRAY * few;
    }
}
