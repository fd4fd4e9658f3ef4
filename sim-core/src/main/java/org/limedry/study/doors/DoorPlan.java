package org.limedry.study.doors;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.limedry.climate.Schedule;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;

/**
 * When to open and shut the doors of a room, day after day.
 *
 * <p>Each day in turn is simulated twice from the plan so far: with doors shut from morning to evening, and with doors
 * open. The shut room is what outdoor air is compared with, since an open room soon has the air of outdoors and would
 * always seem to make no difference; the open run tells what the walls really give off or take up, with all that cold or
 * mild air does to their temperature in the course of the day.
 *
 * <p>Does not look past the evening: what a cold open day costs on the next is found only when the whole plan is run
 * against other ways.
 *
 * @param question what was asked
 * @param days one entry for each day
 */
public record DoorPlan(DoorQuestion question, List<DoorDay> days) {
    public DoorPlan {
        days = List.copyOf(days);
    }

    /**
     * Finds the plan.
     *
     * @param question what is asked
     * @param runs runs scenarios to their end, in any order, and returns what came of each in theirs; called once for each
     *     day with two of them
     * @return the plan; empty if the solver gave up a run before its evening
     */
    public static Optional<DoorPlan> find(DoorQuestion question, Function<List<Scenario>, List<Outcome>> runs) {
        DoorWindow window = question.window();
        List<DoorDay> days = new ArrayList<>();
        for (LocalDate date : window.dates()) {
            Schedule soFar = open(days);
            Instant end = question.endOf(date);
            Schedule today = Schedule.always(window.morning(date), end);
            Scenario shut = question.with(soFar).endingAt(end);
            Scenario opened = question.with(joined(soFar, today)).endingAt(end);
            List<Outcome> outcomes = runs.apply(List.of(shut, opened));
            if (!outcomes.stream().allMatch(outcome -> outcome.ending() instanceof Outcome.Ending.Complete)) {
                return Optional.empty();
            }
            DoorRuns pair = new DoorRuns(question, outcomes.get(0), outcomes.get(1));
            days.add(DoorDay.of(
                    date,
                    pair.hours(window.morning(date), window.evening(date)),
                    pair.hours(window.evening(date), end)));
        }
        return Optional.of(new DoorPlan(question, days));
    }

    /** Returns when the doors stand open. */
    public Schedule open() {
        return open(days);
    }

    /**
     * Returns the nights.
     *
     * @param run a run by this plan that reaches the last of them
     */
    public List<DoorNight> nights(Outcome run) {
        RoomView room = new RoomView(question, run);
        return days.stream().map(day -> night(day, room)).toList();
    }

    private DoorNight night(DoorDay day, RoomView room) {
        Instant end = question.window().morning(day.date().plusDays(1));
        boolean frost = false;
        boolean fumes = false;
        Instant hour = question.window().evening(day.date());
        for (; hour.isBefore(end) && hour.isBefore(question.until()); hour = hour.plus(Duration.ofHours(1))) {
            frost |= room.mayFreeze(hour, question.errors().temperatureK());
            fumes |= room.isFumed(hour);
        }
        return new DoorNight(day.openAtNight(), frost, fumes);
    }

    private static Schedule open(List<DoorDay> days) {
        Schedule open = Schedule.never();
        boolean openBefore = false;
        for (DoorDay day : days) {
            open = joined(open, day.open(openBefore));
            openBefore = day.openAtNight();
        }
        return open;
    }

    private static Schedule joined(Schedule one, Schedule other) {
        List<Schedule.Span> spans = new ArrayList<>(one.spans());
        spans.addAll(other.spans());
        return new Schedule(spans);
    }
}
