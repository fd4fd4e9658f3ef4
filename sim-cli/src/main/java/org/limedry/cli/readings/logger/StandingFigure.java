package org.limedry.cli.readings.logger;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.limedry.climate.LoggedReading;

/** A figure that a sensor may stand still at: stuck, or full of water. */
enum StandingFigure {
    TEMPERATURE("temperature", 1.0, "C"),
    HUMIDITY("humidity", 100.0, "%"),
    WALL_SURFACE("wall surface", 1.0, "C");

    /** Cellars are steady, but not to the last digit for a day. Judgement, without a source. */
    private static final Duration STUCK_FOR = Duration.ofHours(24);

    private static final int STUCK_READINGS = 12;

    /** Judgement, without a source: fog in a room lasts less. */
    private static final Duration FULL_FOR = Duration.ofHours(6);

    private static final double FULL = 0.995;

    private final String words;
    private final double scale;
    private final String unit;

    StandingFigure(String words, double scale, String unit) {
        this.words = words;
        this.scale = scale;
        this.unit = unit;
    }

    /**
     * A stretch over which it stood still for too long.
     *
     * @param first index of its first reading
     * @param last index of its last
     * @param value what it stood at, as printed
     * @param full whether that is 100 %
     */
    record Stretch(int first, int last, double value, boolean full) {}

    String words() {
        return words;
    }

    String unit() {
        return unit;
    }

    /** Returns where it stood still for too long. */
    List<Stretch> stretches(List<LoggedReading> readings) {
        List<Stretch> stretches = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= readings.size(); i++) {
            if (i == readings.size() || !at(readings.get(start)).equals(at(readings.get(i)))) {
                addIfLong(readings, start, i - 1, stretches);
                start = i;
            }
        }
        return stretches;
    }

    private void addIfLong(List<LoggedReading> readings, int first, int last, List<Stretch> to) {
        Instant from = readings.get(first).at();
        Duration length = Duration.between(from, readings.get(last).at());
        OptionalDouble value = at(readings.get(first));
        boolean full = isFull(value);
        boolean longEnough = full
                ? length.compareTo(FULL_FOR) >= 0
                : length.compareTo(STUCK_FOR) >= 0 && last - first + 1 >= STUCK_READINGS;
        if (value.isPresent() && longEnough) {
            to.add(new Stretch(first, last, value.getAsDouble() * scale, full));
        }
    }

    /** Returns the figure; humidities that are full are all the same. */
    private OptionalDouble at(LoggedReading reading) {
        OptionalDouble value = of(reading);
        return isFull(value) ? OptionalDouble.of(1.0) : value;
    }

    private OptionalDouble of(LoggedReading reading) {
        return switch (this) {
            case TEMPERATURE -> reading.celsius();
            case HUMIDITY -> reading.relativeHumidity();
            case WALL_SURFACE -> reading.surfaceCelsius();
        };
    }

    private boolean isFull(OptionalDouble value) {
        return this == HUMIDITY && value.orElse(0.0) >= FULL;
    }

    /** Returns the reading without this figure. */
    LoggedReading takenFrom(LoggedReading reading) {
        return new LoggedReading(
                reading.at(),
                this == TEMPERATURE ? OptionalDouble.empty() : reading.celsius(),
                this == HUMIDITY ? OptionalDouble.empty() : reading.relativeHumidity(),
                this == WALL_SURFACE ? OptionalDouble.empty() : reading.surfaceCelsius(),
                reading.windMPerS());
    }
}
