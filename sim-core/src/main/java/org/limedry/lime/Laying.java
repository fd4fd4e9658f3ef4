package org.limedry.lime;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Set;
import org.limedry.units.Check;

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

        /** Tells whether {@code instant} is a morning on which work begins. */
        public boolean isMorning(Instant instant) {
            ZonedDateTime local = instant.atZone(zone);
            return local.toLocalTime().equals(time) && workingDays.contains(local.getDayOfWeek());
        }
    }

    /**
     * When a gang gets to it: as {@link WhenReady}, but only once a gang is free, and laid on the last of the days that the
     * gang needs for it. Several coats may wait for the same gang; it goes to the one listed first.
     *
     * <p>A coat that needs a day or less is begun only where it can be finished the same day; one that needs more is begun
     * only by a gang with the whole day before it. What is left of a last day serves the next coat.
     *
     * @param when working mornings and cold line
     * @param earliest no gang begins before this instant
     * @param gangs gangs that may lay it, the preferred one first; at least one
     */
    record ByGang(WhenReady when, Instant earliest, List<Gang> gangs) implements Laying {
        public ByGang {
            Check.notEmpty(gangs, "gangs");
            gangs = List.copyOf(gangs);
        }
    }

    /**
     * A gang, for one coat.
     *
     * @param name its name, which is the same for all coats that it may lay
     * @param days working days that it needs for this coat; above 0
     */
    record Gang(String name, double days) {
        public Gang {
            Check.notBlank(name, "name");
            Check.positive(days, "days", "days");
        }
    }
}
