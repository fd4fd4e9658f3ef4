package org.limedry.study.doors;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.limedry.climate.Schedule;

/**
 * One day of a plan.
 *
 * @param date the day
 * @param hours its hours from 6 to 20
 * @param blocks what to do in them, in order, without gaps
 * @param night the hours from 20 to 6; none if doors are shut at night whatever the air
 * @param openAtNight whether the doors stand open all night
 */
public record DoorDay(
        LocalDate date, List<DoorHour> hours, List<DoorBlock> blocks, List<DoorHour> night, boolean openAtNight) {
    public DoorDay {
        hours = List.copyOf(hours);
        blocks = List.copyOf(blocks);
        night = List.copyOf(night);
    }

    /**
     * Returns the day with its hours joined into blocks and one word for its night: open if no hour of it is a danger and
     * it dries as a whole, beyond error.
     *
     * @param date the day
     * @param hours its hours from 6 to 20
     * @param night its hours from 20 to 6, or none
     */
    static DoorDay of(LocalDate date, List<DoorHour> hours, List<DoorHour> night) {
        List<DoorBlock> blocks =
                DoorBlock.of(hours.stream().map(DoorHour::reason).toList());
        return new DoorDay(date, hours, blocks, night, dries(night));
    }

    private static boolean dries(List<DoorHour> night) {
        double powerGPerM3 = 0.0;
        double errorGPerM3 = 0.0;
        double gainKg = 0.0;
        for (DoorHour hour : night) {
            powerGPerM3 += hour.ofRoom().gPerM3();
            errorGPerM3 += hour.ofRoom().errorGPerM3();
            gainKg += hour.gainKg();
        }
        // The errors of one instrument go the same way all night: they add up as they are, not as squares.
        return powerGPerM3 > errorGPerM3
                && gainKg > 0.0
                && night.stream().allMatch(hour -> hour.dangers().isEmpty());
    }

    /**
     * Returns when the doors stand open: where no difference is made they stay as they are, which in the morning is as the
     * night was.
     *
     * @param openBefore whether they stand open as the day begins
     */
    public Schedule open(boolean openBefore) {
        List<Schedule.Span> spans = new ArrayList<>();
        boolean open = openBefore;
        for (DoorBlock block : blocks) {
            open = block.word() == DoorReason.Word.NO_DIFFERENCE ? open : block.word() == DoorReason.Word.OPEN;
            if (open) {
                spans.add(
                        new Schedule.Span(hours.get(block.firstHour()).from(), after(hours.get(block.endHour() - 1))));
            }
        }
        if (openAtNight) {
            spans.add(new Schedule.Span(night.get(0).from(), after(night.get(night.size() - 1))));
        }
        return new Schedule(spans);
    }

    private static Instant after(DoorHour hour) {
        return hour.from().plus(Duration.ofHours(1));
    }

    /** Returns how many of its hours from 6 to 20 have a reason. */
    public long hoursOf(DoorReason reason) {
        return hours.stream().filter(hour -> hour.reason() == reason).count();
    }

    /** Returns how many hours of the plan from 6 to 20 have a word. */
    public int hoursOf(DoorReason.Word word) {
        return blocks.stream()
                .filter(block -> block.word() == word)
                .mapToInt(DoorBlock::hours)
                .sum();
    }

    /** Returns what doors open all day would put on the walls in the hours in which the air wets them, kg. */
    public double ontoWallsKg() {
        return hours.stream()
                .filter(hour -> hour.reason() == DoorReason.WETS_WALLS)
                .mapToDouble(DoorHour::ontoWallsKg)
                .sum();
    }
}
