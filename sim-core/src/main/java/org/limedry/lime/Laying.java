package org.limedry.lime;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Set;

/** When a coat goes on. */
public sealed interface Laying {
    /**
     * On a stated day.
     *
     * @param instant when it is laid
     */
    record On(Instant instant) implements Laying {}

    /**
     * When the coat under it is ready: at {@code time} of the next working day on which the room air is above the cold
     * line.
     *
     * @param zone time zone of the site
     * @param workingDays days on which the gang works; not empty
     * @param time local time at which work starts
     * @param coldLineCelsius air temperature that must be exceeded, C
     */
    record WhenReady(ZoneId zone, Set<DayOfWeek> workingDays, LocalTime time, double coldLineCelsius)
            implements Laying {
        public WhenReady {
            workingDays = Set.copyOf(workingDays);
            if (workingDays.isEmpty()) {
                throw new IllegalArgumentException("workingDays: must not be empty");
            }
        }
    }
}
