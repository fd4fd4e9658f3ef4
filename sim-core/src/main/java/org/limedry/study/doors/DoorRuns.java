package org.limedry.study.doors;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;

/**
 * Two runs of the same day from the same morning, one with doors shut and one with doors open, hour by hour.
 *
 * @param question what was asked
 * @param shut the run with doors shut
 * @param open the run with doors open
 */
record DoorRuns(DoorQuestion question, Outcome shut, Outcome open) {
    /** Returns the hours between two instants, none if the second is not later. */
    List<DoorHour> hours(Instant from, Instant until) {
        RoomView still = new RoomView(question, shut);
        RoomView airy = new RoomView(question, open);
        List<DoorHour> hours = new ArrayList<>();
        for (Instant hour = from; hour.isBefore(until); hour = hour.plus(Duration.ofHours(1))) {
            hours.add(hour(hour, still, airy));
        }
        return hours;
    }

    private DoorHour hour(Instant from, RoomView still, RoomView airy) {
        int at = still.indexOf(from);
        History history = shut.history();
        AirReading outside = RoomView.mean(history.outdoorCelsius(), history.outdoorRelativeHumidity(), at);
        AirReading inside =
                RoomView.mean(still.hours().airCelsius(), still.hours().relativeHumidity(), at);
        double coldest = still.coldestFaceCelsius(at);
        return new DoorHour(
                from,
                outside,
                inside,
                coldest,
                DoorPower.ofRoom(inside, outside, question.errors()),
                DoorPower.ofFace(coldest, outside, question.errors()),
                airy.driedKg(at),
                still.driedKg(at),
                airy.ontoWallsKg(at),
                dangers(from, airy));
    }

    private Set<DoorReason> dangers(Instant from, RoomView airy) {
        Set<DoorReason> dangers = EnumSet.noneOf(DoorReason.class);
        if (airy.isFumed(from)) {
            dangers.add(DoorReason.FUMES);
        }
        if (airy.mayFreeze(from, question.errors().temperatureK())) {
            dangers.add(DoorReason.FROST);
        }
        if (airy.driesTooFast(from)) {
            dangers.add(DoorReason.TOO_FAST);
        }
        return dangers;
    }
}
