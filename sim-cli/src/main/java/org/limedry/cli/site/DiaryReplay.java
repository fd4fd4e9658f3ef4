package org.limedry.cli.site;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.readings.diary.Amount;
import org.limedry.cli.readings.diary.Column;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.climate.Schedule;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.units.Units;

/**
 * A day of the diary in place of what was planned for it.
 *
 * <p>Where the doors are written, a door that is not named was shut. Hours of heaters and dehumidifiers begin when the
 * timetable first turns them on that day, else with the work: the diary has no clock for them. What is left blank goes by
 * the timetable.
 */
final class DiaryReplay {
    /** What people write for a whole day, also on the two days of the year that have 23 and 25. */
    private static final double WHOLE_DAY_HOURS = 24.0;

    private final DiaryDay day;
    private final ZoneId zone;
    private final Instant begins;
    private final Instant ends;

    DiaryReplay(DiaryDay day, ZoneId zone) {
        this.day = day;
        this.zone = zone;
        this.begins = day.date().atStartOfDay(zone).toInstant();
        this.ends = day.date().plusDays(1).atStartOfDay(zone).toInstant();
    }

    RoomPlan on(RoomPlan room) {
        return room.withOpenings(room.openings().stream()
                        .map(opening -> opening(room.name(), opening))
                        .toList())
                .withPlant(room.plant().stream()
                        .map(plant -> plant(room.name(), plant))
                        .toList());
    }

    private Opening opening(String room, Opening opening) {
        if (!day.written().contains(Column.DOORS)) {
            return opening;
        }
        String name = SitePlaces.openingName(room, opening.name());
        List<Schedule.Span> spans = day.doors().stream()
                .filter(spell -> spell.opening().equals(name))
                .map(spell -> new Schedule.Span(spell.from(day.date(), zone), spell.until(day.date(), zone)))
                .toList();
        return opening.openAt(replaced(opening.open(), new Schedule(spans)));
    }

    private Plant plant(String room, Plant plant) {
        if (plant instanceof Plant.Heater heater) {
            return ran(day.plant().heaterHours(), room, heater.on())
                    .map(heater::onAt)
                    .orElse(plant);
        } else if (plant instanceof Plant.Dehumidifier dehumidifier) {
            return ran(day.plant().dehumidifierHours(), room, dehumidifier.on())
                    .map(dehumidifier::onAt)
                    .orElse(plant);
        } else if (plant instanceof Plant.Misting misting && day.written().contains(Column.MISTED)) {
            return misting.onAt(replaced(misting.on(), misted()));
        }
        return plant;
    }

    private Schedule misted() {
        List<Schedule.Span> spans = new ArrayList<>();
        for (LocalTime time : day.care().misted()) {
            Instant from = day.date().atTime(time).atZone(zone).toInstant();
            spans.add(new Schedule.Span(from, from.plus(RoomPlans.MISTING)));
        }
        return new Schedule(spans);
    }

    /** Returns when something ran if the diary says for how long; an amount without a room is of all rooms. */
    private Optional<Schedule> ran(List<Amount> hours, String room, Schedule planned) {
        return hours.stream()
                .filter(amount -> amount.of().isEmpty() || amount.of().equals(room))
                .findFirst()
                .map(amount -> replaced(planned, hours(amount.value(), planned)));
    }

    private Schedule hours(double hours, Schedule planned) {
        Duration length = Duration.ofSeconds(Math.round(hours * Units.SECONDS_PER_HOUR));
        if (length.isZero()) {
            return Schedule.never();
        } else if (hours >= WHOLE_DAY_HOURS) {
            return Schedule.always(begins, ends);
        }
        Instant work = day.date().atTime(RunDays.START_OF_WORK).atZone(zone).toInstant();
        Instant start = planned.spans().stream()
                .filter(span -> span.until().isAfter(begins) && span.from().isBefore(ends))
                .map(span -> span.from().isBefore(begins) ? begins : span.from())
                .findFirst()
                .orElse(work);
        Instant latest = ends.minus(length);
        Instant from = start.isAfter(latest) ? latest : start;
        Schedule ran = new Schedule(List.of(new Schedule.Span(from, from.plus(length))));
        return Schedule.never().between(begins, ends, ran);
    }

    private Schedule replaced(Schedule planned, Schedule written) {
        return planned.between(begins, ends, written);
    }
}
