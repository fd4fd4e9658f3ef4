package org.limedry.cli.site;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.readings.logger.ClockWords;
import org.limedry.cli.readings.logger.Spans;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.WeatherRecord;

/**
 * Hours of a run for which nothing was read outdoors, in stretches too long to be bridged: other weather stands in there.
 *
 * @param all the stretches, in time order
 * @param of how many hours were looked at
 */
record OutdoorHoles(List<Hole> all, int of) {
    /** More than one hour in so many missing: a fit to weather of another year says nothing. Judgement, no source. */
    private static final int MOST_MISSING_ONE_IN = 10;

    private static final int MOST_NAMED = 3;

    /** A stretch of full hours. */
    record Hole(Instant from, int hours) {}

    OutdoorHoles {
        all = List.copyOf(all);
    }

    /** Finds the hours without temperature or humidity, from the full hour before {@code from} to that before {@code until}. */
    static OutdoorHoles ofAir(Readings outdoors, Instant from, Instant until) {
        return of(outdoors, from, until, List.of(LoggedReading::celsius, LoggedReading::relativeHumidity));
    }

    /** Finds the hours without wind. */
    static OutdoorHoles ofWind(Readings outdoors, Instant from, Instant until) {
        return of(outdoors, from, until, List.of(LoggedReading::windMPerS));
    }

    private static OutdoorHoles of(
            Readings outdoors, Instant from, Instant until, List<Function<LoggedReading, OptionalDouble>> figures) {
        Map<Instant, LoggedReading> byHour = new HashMap<>();
        outdoors.hourly().forEach(hour -> byHour.put(hour.at(), hour));
        Instant first = from.truncatedTo(ChronoUnit.HOURS);
        int hours = Math.toIntExact(Math.max(0, ChronoUnit.HOURS.between(first, until) + 1));
        boolean[] missing = new boolean[hours];
        for (Function<LoggedReading, OptionalDouble> figure : figures) {
            boolean[] known = new boolean[hours];
            for (int k = 0; k < hours; k++) {
                LoggedReading hour = byHour.get(first.plus(k, ChronoUnit.HOURS));
                known[k] = hour != null && figure.apply(hour).isPresent();
            }
            bridge(known);
            for (int k = 0; k < hours; k++) {
                missing[k] |= !known[k];
            }
        }
        return new OutdoorHoles(holes(missing, first), hours);
    }

    /** As the weather of a run is bridged: only between two hours that are known. */
    private static void bridge(boolean[] known) {
        int before = -1;
        for (int k = 0; k < known.length; k++) {
            if (known[k]) {
                if (before >= 0 && k - before - 1 <= WeatherRecord.LONGEST_BRIDGE_HOURS) {
                    Arrays.fill(known, before, k, true);
                }
                before = k;
            }
        }
    }

    private static List<Hole> holes(boolean[] missing, Instant first) {
        List<Hole> holes = new ArrayList<>();
        int start = 0;
        for (int k = 0; k <= missing.length; k++) {
            if (k == missing.length || !missing[k]) {
                if (k > start) {
                    holes.add(new Hole(first.plus(start, ChronoUnit.HOURS), k - start));
                }
                start = k + 1;
            }
        }
        return holes;
    }

    int hours() {
        return all.stream().mapToInt(Hole::hours).sum();
    }

    /** Tells whether so much is missing that a fit would rest on other weather. */
    boolean areTooMany() {
        return hours() * MOST_MISSING_ONE_IN > of;
    }

    /** Returns "72 of 337 hours (3 days from 24 Oct 2026 00:00)". */
    String words(ClockWords clock) {
        String named = all.stream()
                .limit(MOST_NAMED)
                .map(hole -> Spans.words(Duration.ofHours(hole.hours())) + " from " + clock.words(hole.from()))
                .collect(Collectors.joining(", "));
        String more = all.size() > MOST_NAMED ? " and " + (all.size() - MOST_NAMED) + " more" : "";
        return hours() + " of " + of + " hours (" + named + more + ")";
    }
}
