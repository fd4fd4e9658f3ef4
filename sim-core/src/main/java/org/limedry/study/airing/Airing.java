package org.limedry.study.airing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.limedry.climate.Schedule;
import org.limedry.units.Check;

/**
 * How a room is aired: its openings to outdoors stand open together around midday, a fan runs day and night, or both.
 *
 * @param doorHours hours a day, the middle of them at one o'clock; 0 to 24
 * @param fanM3PerS air that a fan exchanges with outdoors, m3/s; at least 0
 */
public record Airing(double doorHours, double fanM3PerS) {
    /** Doors shut and no fan: cracks only. */
    public static final Airing SHUT = new Airing(0.0, 0.0);

    /** The air outside is driest shortly after noon. */
    private static final LocalTime MIDDLE = LocalTime.of(13, 0);

    /** Doors that never shut, h. */
    public static final double WHOLE_DAY_HOURS = 24.0;

    private static final double MINUTES_EACH_SIDE_PER_HOUR = 30.0;

    public Airing {
        Check.inClosed(doorHours, 0.0, WHOLE_DAY_HOURS, "doorHours", "h");
        Check.nonNegative(fanM3PerS, "fanM3PerS", "m3/s");
    }

    /** Returns airing by openings alone. */
    public static Airing doors(double hours) {
        return new Airing(hours, 0.0);
    }

    /** Returns airing by a fan alone, the doors shut. */
    public static Airing fan(double m3PerS) {
        return new Airing(0.0, m3PerS);
    }

    /** Tells whether nothing is opened and nothing runs. */
    public boolean isShut() {
        return doorHours == 0.0 && fanM3PerS == 0.0;
    }

    /** Returns the time of day at which the doors are opened. */
    public LocalTime opened() {
        return MIDDLE.minusMinutes(halfMinutes());
    }

    /** Returns the time of day at which the doors are shut. */
    public LocalTime shut() {
        return MIDDLE.plusMinutes(halfMinutes());
    }

    /**
     * Returns when the doors stand open.
     *
     * @param zone time zone of the site
     * @param from start of the run
     * @param until end of the run
     * @param shutDays days on which they stay shut; of no effect on doors that never shut
     */
    public Schedule openings(ZoneId zone, Instant from, Instant until, Set<LocalDate> shutDays) {
        if (doorHours == WHOLE_DAY_HOURS) {
            return Schedule.always(from, until);
        }
        Duration half = Duration.ofMinutes(halfMinutes());
        List<Schedule.Span> spans = new ArrayList<>();
        LocalDate last = until.atZone(zone).toLocalDate();
        for (LocalDate day = from.atZone(zone).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            Instant middle = day.atTime(MIDDLE).atZone(zone).toInstant();
            Instant opened = later(middle.minus(half), from);
            Instant shut = earlier(middle.plus(half), until);
            if (opened.isBefore(shut) && !shutDays.contains(day)) {
                spans.add(new Schedule.Span(opened, shut));
            }
        }
        return new Schedule(spans);
    }

    private long halfMinutes() {
        return Math.round(MINUTES_EACH_SIDE_PER_HOUR * doorHours);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}
