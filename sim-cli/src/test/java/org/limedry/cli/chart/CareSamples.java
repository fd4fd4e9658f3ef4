package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.limedry.simulation.Series;

/** Records of care, all figures invented. */
final class CareSamples {
    private CareSamples() {}

    static CareChart chart(Timeline timeline) {
        List<Instant> times = Stream.iterate(
                        timeline.from(), at -> !at.isAfter(timeline.to()), at -> at.plus(Duration.ofHours(1)))
                .toList();
        return new CareChart(
                "care",
                "Kiln: a limit was passed 2 times",
                timeline,
                List.of(
                        panel(
                                "warmer than a day before, K",
                                CareChart.Unit.DEGREES,
                                times,
                                5,
                                h -> 9 * Math.sin(h / 40)),
                        panel("air temperature, degrees C", CareChart.Unit.DEGREES, times, -2.5, h -> 8 - h / 500),
                        panel(
                                "relative humidity, percent",
                                CareChart.Unit.PERCENT,
                                times,
                                40,
                                h -> 71 - 32 * Math.cos(h))));
    }

    private static CareChart.Panel panel(
            String name, CareChart.Unit unit, List<Instant> times, double limit, DoubleUnaryOperator byHour) {
        double[] values = new double[times.size()];
        for (int hour = 0; hour < values.length; hour++) {
            values[hour] = byHour.applyAsDouble(hour);
        }
        List<CareChart.Outside> outside = List.of(
                new CareChart.Outside(times.get(5), times.get(5)), new CareChart.Outside(times.get(20), times.get(40)));
        return new CareChart.Panel(name, unit, times, Series.of(values), limit, outside);
    }
}
