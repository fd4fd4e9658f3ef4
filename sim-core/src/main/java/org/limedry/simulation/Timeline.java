package org.limedry.simulation;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.Laying;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.wall.WallPlan;

/** The instants at which a step must end: something opens, is switched, laid or tried by hand, or is looked at. */
final class Timeline {
    private final NavigableSet<Instant> instants = new TreeSet<>();
    private final NavigableSet<Instant> stops;

    Timeline(Scenario scenario, Collection<Instant> stops) {
        this.stops = new TreeSet<>(stops);
        for (RoomPlan room : scenario.rooms()) {
            room.openings().stream().map(Opening::open).forEach(this::add);
            room.plant().stream().map(Plant::on).forEach(this::add);
        }
        for (CoatPlan coat : scenario.coats()) {
            if (coat.laying() instanceof Laying.On on) {
                instants.add(on.instant());
            } else if (coat.laying() instanceof Laying.WhenReady when) {
                addMornings(when, scenario);
            } else if (coat.laying() instanceof Laying.ByGang gang) {
                addMornings(gang.when(), scenario);
            }
        }
        for (WallPlan wall : scenario.walls()) {
            wall.laterLayers().forEach(layer -> instants.add(layer.laid()));
        }
        scenario.handTests().stream().map(HandTest::instant).forEach(instants::add);
        instants.add(scenario.until());
    }

    /** Returns the first instant after {@code now}, at the latest the end of the run. */
    Instant after(Instant now, Instant end) {
        Instant next = instants.higher(now);
        return next == null || next.isAfter(end) ? end : next;
    }

    /** Returns the first instant after {@code now} at which nothing falls due but a step must end, or {@code latest}. */
    Instant stopAfter(Instant now, Instant latest) {
        Instant next = stops.higher(now);
        return next == null || next.isAfter(latest) ? latest : next;
    }

    private void add(Schedule schedule) {
        for (Schedule.Span span : schedule.spans()) {
            instants.add(span.from());
            instants.add(span.until());
        }
    }

    private void addMornings(Laying.WhenReady when, Scenario scenario) {
        ZonedDateTime day = scenario.from().atZone(when.zone()).with(when.time());
        while (!day.toInstant().isAfter(scenario.until())) {
            if (when.isMorning(day.toInstant())) {
                instants.add(day.toInstant());
            }
            day = day.plusDays(1).with(when.time());
        }
    }
}
