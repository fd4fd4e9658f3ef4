package org.limedry.climate;

import java.time.Instant;

/**
 * Weather that gives way to a forecast from one full hour to another and takes over again after it.
 *
 * <p>At the joints the air may jump; a step that crosses one sees the weather of its start. Runs end a step at every full
 * hour of theirs, so none does.
 *
 * @param usual before and after
 * @param forecast between; covers the time from {@code from} to {@code until}
 * @param from first instant of the forecast
 * @param until end of the forecast, later than {@code from}
 */
public record JoinedWeather(Outdoors usual, Outdoors forecast, Instant from, Instant until) implements Outdoors {
    public JoinedWeather {
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("until: must be after " + from + ", was " + until);
        }
    }

    @Override
    public Piece over(Instant start, Instant end) {
        boolean foreseen = !start.isBefore(from) && !end.isAfter(until);
        return (foreseen ? forecast : usual).over(start, end);
    }
}
