package org.limedry.simulation;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.limedry.lime.Laying;
import org.limedry.units.Check;

/**
 * The gangs of a site: how much of the day each has left, and how much work on the coats they have begun.
 *
 * <p>Settled morning by morning inside the run, since each waits for the other: a coat is laid when a gang is free, a gang is
 * free when its coats were laid, and when a coat is ready depends on what was laid next door. Running the site again and
 * again with the dates of the run before need not come to rest.
 */
final class Gangs {
    /** Work left that is no work but rounding, days. */
    private static final double NOTHING_DAYS = 1.0e-9;

    private final List<CoatCourse> coats;
    private final Map<CoatCourse, Double> leftOfCoat = new HashMap<>();
    private final Map<String, Double> leftOfDay = new HashMap<>();

    /** Makes the gangs for these coats: those that gangs lay must agree on the mornings. */
    Gangs(List<CoatCourse> coats) {
        this.coats = coats.stream()
                .filter(coat -> coat.plan().laying() instanceof Laying.ByGang)
                .toList();
        long mornings = this.coats.stream()
                .map(coat -> calendar(coat).when())
                .map(when -> List.of(when.zone(), when.workingDays(), when.time()))
                .distinct()
                .count();
        Check.that(mornings <= 1, "coats", "of gangs that all begin on the same mornings", mornings + " kinds");
    }

    private static Laying.ByGang calendar(CoatCourse coat) {
        return (Laying.ByGang) coat.plan().laying();
    }

    /** Begins a morning, if it is one: each gang goes on with what it has begun. */
    void goOn(Instant now) {
        if (coats.isEmpty() || !calendar(coats.get(0)).when().isMorning(now)) {
            return;
        }
        leftOfDay.clear();
        for (CoatCourse coat : coats) {
            if (!coat.isLaid()) {
                coat.work().ifPresent(work -> work(coat, work.gang()));
            }
        }
    }

    /** Takes a coat on by the first gang that can begin it today; tells whether one could. */
    boolean takeOn(CoatCourse coat, Laying.ByGang laying, Instant now) {
        for (Laying.Gang gang : laying.gangs()) {
            double left = leftOfDay.getOrDefault(gang.name(), 1.0);
            if (left >= Math.min(1.0, gang.days()) - NOTHING_DAYS) {
                coat.begin(gang, now);
                leftOfCoat.put(coat, gang.days());
                work(coat, gang.name());
                return true;
            }
        }
        return false;
    }

    /** Tells whether a coat was begun and is finished today. */
    boolean isDone(CoatCourse coat) {
        return leftOfCoat.getOrDefault(coat, 1.0) <= NOTHING_DAYS;
    }

    private void work(CoatCourse coat, String gang) {
        double left = leftOfDay.getOrDefault(gang, 1.0);
        double ofCoat = leftOfCoat.getOrDefault(coat, 0.0);
        double done = Math.min(left, ofCoat);
        leftOfDay.put(gang, left - done);
        leftOfCoat.put(coat, ofCoat - done);
    }
}
