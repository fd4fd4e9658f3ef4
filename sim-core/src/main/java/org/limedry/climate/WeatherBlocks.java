package org.limedry.climate;

import java.time.Duration;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Weather that might have been: blocks of days of a record, each taken from about the same time of the year and put one
 * after the other, so that spells keep their length and hours their place in the day.
 *
 * <p><b>Source:</b> moving-block bootstrap, Kuensch 1989, The jackknife and the bootstrap for general stationary
 * observations, Annals of Statistics 17, 1217-1241, FROM MEMORY; length of a block and reach are judgement. Joints are
 * cross-faded over six hours, so that no temperature jumps.
 *
 * <p>Does not model spells longer than a block, nor a year colder or wetter than the record: ranges are rather too narrow.
 */
final class WeatherBlocks {
    static final int BLOCK_HOURS = 5 * 24;

    private static final int FADE_HOURS = 3;

    private WeatherBlocks() {}

    /**
     * Returns hours along a run.
     *
     * @param run the hours wanted
     * @param course gives the record's hours along an axis; missing where it has none
     * @param reachDays most days between a block and the time of the year from which it is taken
     * @param seed the same seed gives the same weather
     */
    static Hours along(HourAxis run, Function<HourAxis, Hours> course, int reachDays, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Hours weather = Hours.missing(run.count());
        for (int start = 0; start < run.count(); start += BLOCK_HOURS) {
            int shiftDays = random.nextInt(-reachDays, reachDays + 1);
            int from = Math.max(0, start - FADE_HOURS);
            int until = Math.min(run.count(), start + BLOCK_HOURS + FADE_HOURS);
            HourAxis source = new HourAxis(run.firstHour() + from, until - from).later(Duration.ofDays(shiftDays));
            blend(weather, course.apply(source), from, start);
        }
        return weather;
    }

    private static void blend(Hours weather, Hours block, int from, int start) {
        for (int i = 0; i < block.size(); i++) {
            int hour = from + i;
            double share = Math.min(1.0, (hour - start + FADE_HOURS + 0.5) / (2.0 * FADE_HOURS));
            if (from == 0 || share == 1.0) {
                weather.copyHour(hour, block, i);
            } else {
                weather.mixHour(hour, block, i, share);
            }
        }
    }
}
