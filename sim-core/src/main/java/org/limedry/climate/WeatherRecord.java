package org.limedry.climate;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;
import org.limedry.units.Check;

/**
 * Hours of weather without a gap, as a station reported them, made from a file by {@link #check}.
 *
 * <p>Serves a run on its own dates where it has them, and otherwise by month, day and hour UTC: "if this winter is like
 * 2017". 29 February repeats the 28th where the record has none.
 */
public final class WeatherRecord {
    /** Longest run of missing hours that is bridged by a straight line. */
    public static final int LONGEST_BRIDGE_HOURS = 6;

    /** Wind at the station taken where none is reported, m/s. Judgement, without a source. */
    public static final double BLANK_WIND_M_PER_S = 0.5;

    /** Most days by which weather may be shifted to stand for another year; beyond that the season is another. */
    public static final int MOST_SHIFT_DAYS = 21;

    /** Most days by which a run may be moved to another season or year: a century. */
    private static final int MOST_MOVE_DAYS = 36_600;

    private final HourAxis axis;
    private final Hours hours;
    private final CalendarYear calendar;

    WeatherRecord(HourAxis axis, Hours hours) {
        this.axis = axis;
        this.hours = hours;
        this.calendar = CalendarYear.of(axis, hours);
    }

    /** What became of a weather file. */
    public sealed interface Checked {}

    /**
     * The file serves.
     *
     * @param weather its hours
     * @param quality what was found and done
     */
    public record Sound(WeatherRecord weather, WeatherQuality quality) implements Checked {}

    /**
     * The file does not serve.
     *
     * @param problems every problem, each one line with its dates
     */
    public record Refused(List<String> problems) implements Checked {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** What became of a run's wish for weather. */
    public sealed interface Cover {}

    /**
     * The run is covered.
     *
     * @param outdoors weather over the run
     */
    public record Covered(WeatherSeries outdoors) implements Cover {}

    /**
     * The run needs hours that the record does not have.
     *
     * @param problems every hole, each one line with its dates
     */
    public record Uncovered(List<String> problems) implements Cover {
        public Uncovered {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Checks the rows of a weather file and bridges what may be bridged.
     *
     * <p>Refused: no rows, times off the hour, twice or out of order, more than {@link #LONGEST_BRIDGE_HOURS} hours on
     * end without temperature or humidity. Set aside and bridged: humidity outside 1 to 100.5 %, temperature outside -60
     * to 60 C, a single temperature more than 15 K off both its neighbours. Kept and listed: a lasting jump of more than
     * 15 K in an hour.
     *
     * @param readings rows in the order of the file
     */
    public static Checked check(List<WeatherReading> readings) {
        return new WeatherAudit(readings).verdict();
    }

    /** Returns the first hour. */
    public Instant start() {
        return axis.instant(0);
    }

    /** Returns the last hour. */
    public Instant end() {
        return axis.instant(axis.count() - 1);
    }

    /** Returns the mean temperature of its hours, C: what soil at depth settles to, if they make whole years. */
    public double meanCelsius() {
        return hours.meanCelsius();
    }

    /**
     * Returns the weather over a run.
     *
     * @param from start of the run
     * @param until end of the run, later than {@code from}
     * @param shiftDays whole days by which the weather is taken later than the run's dates (negative: earlier), to stand
     *     for other years or for another season; in [-36600, 36600]
     * @param shelter how much of the wind reaches the building
     */
    public Cover over(Instant from, Instant until, int shiftDays, Shelter shelter) {
        Check.that(from.isBefore(until), "until", "after " + from, until);
        Check.that(Math.abs(shiftDays) <= MOST_MOVE_DAYS, "shiftDays", "in [-36600, 36600] days", shiftDays);
        HourAxis run = HourAxis.spanning(from, until);
        return cover(run, courseAlong(run.later(Duration.ofDays(shiftDays))), shelter);
    }

    /**
     * Returns weather that might have been over a run: blocks of five days, each taken from up to {@link
     * #MOST_SHIFT_DAYS} days before or after the same time of the year, put one after the other.
     *
     * @param from start of the run
     * @param until end of the run, later than {@code from}
     * @param movedDays whole days by which the run is in another season; in [-36600, 36600]
     * @param seed the same seed gives the same weather
     * @param shelter how much of the wind reaches the building
     */
    public Cover resampled(Instant from, Instant until, int movedDays, long seed, Shelter shelter) {
        Check.that(from.isBefore(until), "until", "after " + from, until);
        Check.that(Math.abs(movedDays) <= MOST_MOVE_DAYS, "movedDays", "in [-36600, 36600] days", movedDays);
        HourAxis run = HourAxis.spanning(from, until);
        Duration moved = Duration.ofDays(movedDays);
        Hours course = WeatherBlocks.along(run, axis -> courseAlong(axis.later(moved)), MOST_SHIFT_DAYS, seed);
        return cover(run, course, shelter);
    }

    /**
     * Returns the shifts, in days, that put a run on the same dates of each year of the record's own hours; the year that
     * the run's own dates lie in is one of them. Empty for a record too short to hold such a run.
     *
     * @param from start of the run
     * @param until end of the run, later than {@code from}
     */
    public List<Integer> yearShiftsDays(Instant from, Instant until) {
        HourAxis run = HourAxis.spanning(from, until);
        LocalDateTime first = LocalDateTime.ofInstant(from, ZoneOffset.UTC);
        int firstYear = start().atOffset(ZoneOffset.UTC).getYear();
        int lastYear = end().atOffset(ZoneOffset.UTC).getYear();
        return IntStream.rangeClosed(firstYear, lastYear)
                .mapToObj(year -> Math.toIntExact(ChronoUnit.DAYS.between(
                        first.toLocalDate(), first.withYear(year).toLocalDate())))
                .filter(days -> axis.contains(run.later(Duration.ofDays(days))))
                .toList();
    }

    private Cover cover(HourAxis run, Hours course, Shelter shelter) {
        List<String> holes = course.holes(run).stream()
                .map(hole -> "weather: must cover the run, has nothing for " + hole)
                .toList();
        if (!holes.isEmpty()) {
            return new Uncovered(holes);
        }
        return new Covered(new WeatherSeries(run, course.withWind(shelter.windFactor())));
    }

    private Hours courseAlong(HourAxis wanted) {
        if (axis.contains(wanted)) {
            return hours.slice(Math.toIntExact(wanted.firstHour() - axis.firstHour()), wanted.count());
        }
        return calendar.along(wanted);
    }
}
