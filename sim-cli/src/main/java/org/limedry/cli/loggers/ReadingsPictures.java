package org.limedry.cli.loggers;

import java.time.Duration;
import java.time.ZoneId;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.chart.ReadingsChart;
import org.limedry.cli.chart.Timeline;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** The chart of what a logger read, with the sentence over it. */
final class ReadingsPictures {
    /** Above this plaster can give next to nothing to the air. Judgement, without a source. */
    private static final double DAMP = 0.90;

    private ReadingsPictures() {}

    /** Returns the chart; nothing where there are not two readings of air or wall. */
    static Optional<ReadingsChart> chart(Readings readings, ZoneId zone) {
        List<LoggedReading> shown = readings.all().stream()
                .filter(one -> one.celsius().isPresent()
                        || one.relativeHumidity().isPresent()
                        || one.surfaceCelsius().isPresent())
                .toList();
        if (shown.size() < 2) {
            return Optional.empty();
        }
        Readings kept = new Readings(shown);
        Timeline timeline = new Timeline(kept.from(), kept.until(), zone);
        return Optional.of(new ReadingsChart("readings", title(kept, timeline), timeline, kept));
    }

    private static String title(Readings readings, Timeline timeline) {
        String span = Duration.between(timeline.from(), timeline.to()).toHours() < 24
                ? "on "
                        + DateWords.shortDay(
                                timeline.from().atZone(timeline.zone()).toLocalDate())
                : "from "
                        + DateWords.shortDay(
                                timeline.from().atZone(timeline.zone()).toLocalDate()) + " to "
                        + DateWords.shortDay(
                                timeline.to().atZone(timeline.zone()).toLocalDate());
        DoubleSummaryStatistics humidity = readings.all().stream()
                .flatMapToDouble(reading -> reading.relativeHumidity().stream())
                .summaryStatistics();
        if (humidity.getCount() > 0) {
            long damp = readings.all().stream()
                    .filter(reading -> reading.relativeHumidity().orElse(0.0) >= DAMP)
                    .count();
            return String.format(
                    Locale.ROOT,
                    "The air was at 90 %% or damper for %.0f %% of the time %s",
                    100.0 * damp / humidity.getCount(),
                    span);
        }
        DoubleSummaryStatistics celsius = readings.all().stream()
                .flatMapToDouble(reading ->
                        (reading.celsius().isPresent() ? reading.celsius() : reading.surfaceCelsius()).stream())
                .summaryStatistics();
        return String.format(Locale.ROOT, "It was %.1f \u00b0C on the mean %s", celsius.getAverage(), span);
    }
}
