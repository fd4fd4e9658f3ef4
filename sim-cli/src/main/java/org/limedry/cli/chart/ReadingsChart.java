package org.limedry.cli.chart;

import java.util.List;
import org.limedry.climate.Readings;
import org.limedry.units.Check;

/**
 * What a logger read: temperature above, humidity below, gaps left open.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param readings what was read; at least two, one of them with a temperature or a humidity
 */
public record ReadingsChart(String id, String title, Timeline timeline, Readings readings) implements Chart {
    public ReadingsChart {
        Chart.check(id, title);
        Check.that(
                readings.all().size() >= 2,
                "readings",
                "at least 2 readings",
                readings.all().size());
        boolean some = readings.all().stream()
                .anyMatch(one -> List.of(one.celsius(), one.surfaceCelsius(), one.relativeHumidity()).stream()
                        .anyMatch(value -> value.isPresent()));
        Check.that(some, "readings", "with a temperature or a humidity", "none");
    }
}
