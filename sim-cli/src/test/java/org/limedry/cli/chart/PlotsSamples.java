package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.chart.PlotsChart.Dot;
import org.limedry.cli.chart.PlotsChart.Line;
import org.limedry.cli.chart.PlotsChart.Plot;
import org.limedry.cli.chart.PlotsChart.Point;
import org.limedry.cli.chart.PlotsChart.Range;

/** Invented plots. */
final class PlotsSamples {
    private PlotsSamples() {}

    static PlotsChart lines() {
        List<Plot> plots = List.of(
                plot("brick", line("60 to 90 %", 4.1, 2.1)),
                plot("lath", line("60 %", 4.2, 2.3), line("75 %", 5.3, 2.7), line("90 %", 14.2, 7.0)),
                plot("stone", line("60 %", 4.0, 2.2), line("75 %", 3.9, 2.1), line("90 %", 3.8, 2.0)));
        return new PlotsChart("lines", "At 10 degrees: 3 days on brick, 4 on lath", "", plots);
    }

    private static Plot plot(String heading, Line... lines) {
        return new Plot(heading, "room air, °C", "days", new Range.FromZero(14.2), List.of(lines), List.of());
    }

    private static Line line(String name, double first, double last) {
        return new Line(
                name,
                List.of(
                        new Point(5, first),
                        new Point(10, 0.6 * first + 0.4 * last),
                        new Point(15, 0.2 * first + 0.8 * last),
                        new Point(20, last)));
    }

    static PlotsChart dots() {
        return new PlotsChart(
                "dots",
                "Of 40 figures 39 lie in their band",
                "White: ordinary grid. Black: half of every cell. On the line, found is what was expected.",
                List.of(
                        dots("temperature, °C", -8, 22),
                        dots("humidity", 0.4, 1),
                        dots("water, kg/m²", 0, 4),
                        dots("water, kg", 2, 90)));
    }

    static PlotsChart extremes() {
        return new PlotsChart(
                "extremes",
                "Small and large",
                "",
                List.of(dots("rate, kg/(m² s)", 1.9e-9, 2.1e-4), dots("heat, J/m²", -2.3e7, 6.1e7)));
    }

    private static Plot dots(String heading, double low, double high) {
        List<Dot> dots = new ArrayList<>();
        for (int k = 0; k <= 20; k++) {
            double expected = low + k / 20.0 * (high - low);
            dots.add(new Dot(new Point(expected, expected + (k % 3 - 1) * 0.02 * (high - low)), false));
            dots.add(new Dot(new Point(expected, expected), true));
        }
        return new Plot(heading, "expected", "found", new Range.Same(low, high), List.of(), dots);
    }
}
