package org.limedry.study;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.limedry.climate.Schedule;

/**
 * One day of a plan.
 *
 * @param date the day
 * @param hours its hours from 6 to 20
 * @param blocks what to do, in order, without gaps
 */
public record DoorDay(LocalDate date, List<DoorHour> hours, List<DoorBlock> blocks) {
    public DoorDay {
        hours = List.copyOf(hours);
        blocks = List.copyOf(blocks);
    }

    /** Returns the day with its hours joined into blocks. */
    static DoorDay of(LocalDate date, List<DoorHour> hours) {
        return new DoorDay(
                date, hours, DoorBlock.of(hours.stream().map(DoorHour::reason).toList()));
    }

    /** Returns when the doors stand open. Hours without a difference count as shut. */
    public Schedule open() {
        return new Schedule(blocks.stream()
                .filter(block -> block.word() == DoorReason.Word.OPEN)
                .map(block -> new Schedule.Span(
                        hours.get(block.firstHour()).from(),
                        hours.get(block.endHour() - 1).from().plus(Duration.ofHours(1))))
                .toList());
    }

    /** Returns the word that stands over an hour of the plan. */
    public DoorReason.Word wordAt(int hour) {
        return blocks.stream()
                .filter(block -> hour >= block.firstHour() && hour < block.endHour())
                .map(DoorBlock::word)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("hour: must be one of the day, was " + hour));
    }

    /** Returns how many of its hours have a reason. */
    public long hoursOf(DoorReason reason) {
        return hours.stream().filter(hour -> hour.reason() == reason).count();
    }

    /** Returns what doors open all day would put on the walls in the hours in which the air wets them, kg. */
    public double ontoWallsKg() {
        return hours.stream()
                .filter(hour -> hour.reason() == DoorReason.WETS_WALLS)
                .mapToDouble(DoorHour::ontoWallsKg)
                .sum();
    }

    /** Returns what the plan's open hours are worth on this day, kg off the walls. */
    public double gainKg() {
        double sum = 0.0;
        for (int hour = 0; hour < hours.size(); hour++) {
            sum += wordAt(hour) == DoorReason.Word.OPEN ? hours.get(hour).gainKg() : 0.0;
        }
        return sum;
    }
}
