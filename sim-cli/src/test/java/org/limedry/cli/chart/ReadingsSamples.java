package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** Charts of logger files, all figures invented, each with gaps. */
final class ReadingsSamples {
    private ReadingsSamples() {}

    static ReadingsChart chart(Timeline timeline, boolean humid, boolean wall) {
        List<LoggedReading> all = Stream.iterate(
                        timeline.from(), at -> !at.isAfter(timeline.to()), at -> at.plus(Duration.ofHours(1)))
                .map(at -> reading(timeline, at, humid, wall))
                .filter(reading -> hours(timeline, reading.at()) % 61 > 7)
                .toList();
        return new ReadingsChart(
                "readings", "The air was at 90 % or damper for 29 % of the time", timeline, new Readings(all));
    }

    static ReadingsChart temperatureAlone(Timeline timeline) {
        return chart(timeline, false, false);
    }

    private static long hours(Timeline timeline, Instant at) {
        return Duration.between(timeline.from(), at).toHours();
    }

    private static LoggedReading reading(Timeline timeline, Instant at, boolean humid, boolean wall) {
        double days = hours(timeline, at) / 24.0;
        double celsius = 8.3 + 2.1 * Math.sin(6.28 * days) - 6.0 * Math.sin(days / 30);
        return new LoggedReading(
                at,
                OptionalDouble.of(celsius),
                humid ? OptionalDouble.of(0.85 + 0.14 * Math.sin(days * 2.3)) : OptionalDouble.empty(),
                wall ? OptionalDouble.of(celsius - 1.4) : OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
