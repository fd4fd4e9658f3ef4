package org.limedry.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** One pass over the rows of a weather file: collects every problem, and the hours if there is none. */
final class WeatherAudit {
    private static final double LARGEST_JUMP_K = 15.0;
    private static final Column TEMPERATURE = new Column("temperature C", -60.0, 60.0);
    private static final Column HUMIDITY = new Column("relative humidity", 0.01, 1.005);
    private static final Column WIND = new Column("wind m/s", 0.0, Double.MAX_VALUE);
    /** More than that between two rows is a slip in a date, not a record. */
    private static final long LONGEST_RECORD_HOURS = 20L * 366 * 24;

    private final List<WeatherReading> readings;
    private final TreeMap<Long, WeatherReading> byHour = new TreeMap<>();
    private final List<String> problems = new ArrayList<>();
    private final List<String> setAside = new ArrayList<>();
    private final List<String> doubtful = new ArrayList<>();
    private int blankValues;
    private int blankWinds;

    WeatherAudit(List<WeatherReading> readings) {
        this.readings = readings;
    }

    WeatherRecord.Checked verdict() {
        sortTimes();
        if (byHour.isEmpty() || byHour.lastKey() - byHour.firstKey() >= LONGEST_RECORD_HOURS) {
            problems.add("weather: must have hours within 20 years, has "
                    + (byHour.isEmpty() ? "none" : rangeWords(byHour.firstKey(), byHour.lastKey())));
            return new WeatherRecord.Refused(problems);
        }
        HourAxis axis = new HourAxis(byHour.firstKey(), Math.toIntExact(byHour.lastKey() - byHour.firstKey() + 1));
        Hours hours = values(axis);
        int gaps = countGaps();
        setSpikesAside(axis, hours);
        blankValues = countBlanks(axis, hours);
        hours.bridge();
        for (String hole : hours.holes(axis)) {
            problems.add("weather: must have temperature and humidity with at most "
                    + WeatherRecord.LONGEST_BRIDGE_HOURS + " hours missing between two readings, has none for " + hole);
        }
        if (!problems.isEmpty()) {
            return new WeatherRecord.Refused(problems);
        }
        WeatherQuality quality = new WeatherQuality(
                readings.size(), gaps, axis.count() - byHour.size(), blankValues, blankWinds, setAside, doubtful);
        return new WeatherRecord.Sound(new WeatherRecord(axis, hours), quality);
    }

    private void sortTimes() {
        Instant before = Instant.MIN;
        for (WeatherReading reading : readings) {
            Instant time = reading.time();
            if (time.getNano() != 0 || time.getEpochSecond() % HourAxis.SECONDS_PER_HOUR != 0) {
                problems.add("time: must be a full hour UTC, was " + time);
            } else if (byHour.putIfAbsent(HourAxis.hourOf(time), reading) != null) {
                problems.add("time: must occur once, was there again: " + time);
            } else if (time.isBefore(before)) {
                problems.add("time: must be later than the row before (" + before + "), was " + time);
            }
            before = time;
        }
    }

    private Hours values(HourAxis axis) {
        Hours hours = Hours.missing(axis.count());
        byHour.forEach((hour, reading) -> {
            int index = Math.toIntExact(hour - axis.firstHour());
            hours.celsius[index] = TEMPERATURE.plausible(reading.celsius(), reading.time(), setAside);
            double humidity = HUMIDITY.plausible(reading.relativeHumidity(), reading.time(), setAside);
            hours.relativeHumidity[index] = Math.min(humidity, 1.0);
            double wind = WIND.plausible(reading.windMPerS(), reading.time(), setAside);
            if (Double.isNaN(wind)) {
                blankWinds++;
                wind = WeatherRecord.BLANK_WIND_M_PER_S;
            }
            hours.windMPerS[index] = wind;
        });
        return hours;
    }

    /** What a column is called and which of its values are believed. */
    private record Column(String words, double low, double high) {
        /** Returns the value, or NaN for a blank or for one that is set aside. */
        double plausible(OptionalDouble value, Instant time, List<String> setAside) {
            double number = value.orElse(Double.NaN);
            if (value.isPresent() && !(number >= low && number <= high)) {
                setAside.add(time + ": " + words + " " + number);
                return Double.NaN;
            }
            return number;
        }
    }

    private int countGaps() {
        int gaps = 0;
        long before = byHour.firstKey();
        for (long hour : byHour.keySet()) {
            gaps += hour - before > 1 ? 1 : 0;
            before = hour;
        }
        return gaps;
    }

    /** Sets aside single readings far off both neighbours; lists lasting jumps. */
    private void setSpikesAside(HourAxis axis, Hours hours) {
        double[] celsius = hours.celsius;
        for (int i = 1; i < celsius.length; i++) {
            double jump = celsius[i] - celsius[i - 1];
            if (!(Math.abs(jump) > LARGEST_JUMP_K)) {
                continue;
            }
            double back = i + 1 < celsius.length ? celsius[i] - celsius[i + 1] : 0.0;
            String words = axis.instant(i) + ": temperature C " + celsius[i] + " after " + celsius[i - 1];
            if (Math.abs(back) > LARGEST_JUMP_K && back * jump > 0.0) {
                setAside.add(words);
                celsius[i] = Double.NaN;
            } else {
                doubtful.add(words);
            }
        }
    }

    /** Counts values missing in rows that are there, readings set aside included. */
    private int countBlanks(HourAxis axis, Hours hours) {
        int blanks = 0;
        for (long hour : byHour.keySet()) {
            int index = Math.toIntExact(hour - axis.firstHour());
            blanks += Double.isNaN(hours.celsius[index]) ? 1 : 0;
            blanks += Double.isNaN(hours.relativeHumidity[index]) ? 1 : 0;
        }
        return blanks;
    }

    private static String rangeWords(long firstHour, long lastHour) {
        HourAxis ends = new HourAxis(firstHour, 1);
        return ends.instant(0) + " to " + new HourAxis(lastHour, 1).instant(0);
    }
}
