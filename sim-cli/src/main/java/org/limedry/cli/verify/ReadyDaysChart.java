package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.limedry.cli.chart.PlotsChart;
import org.limedry.cli.chart.PlotsChart.Line;
import org.limedry.cli.chart.PlotsChart.Plot;
import org.limedry.cli.chart.PlotsChart.Point;
import org.limedry.cli.chart.PlotsChart.Range;
import org.limedry.proof.trade.ReadyDays;
import org.limedry.proof.trade.ReadyDays.Cell;
import org.limedry.wall.Background;

/** Ready days against room air: a plot for each background, a line for each humidity. */
final class ReadyDaysChart {
    static final String NAME = "trade-ready-days";

    /** Lines that lie closer than this are one line to a plasterer, days. */
    private static final double SAME_DAYS = 0.25;

    private static final double EXAMPLE_CELSIUS = 10.0;
    private static final double EXAMPLE_HUMIDITY = 0.75;

    private ReadyDaysChart() {}

    static PlotsChart of(List<Cell> cells) {
        double longest = cells.stream()
                .mapToDouble(cell -> cell.days().orElse(0.0))
                .max()
                .orElse(1.0);
        List<Plot> plots = ReadyDays.BACKGROUNDS.stream()
                .map(background -> new Plot(
                        "On " + background.words(),
                        "room air, \u00b0C",
                        "days until the next coat",
                        new Range.FromZero(longest),
                        lines(cells, background),
                        List.of()))
                .toList();
        return new PlotsChart(
                NAME,
                title(cells),
                "Base coat of 10 mm, quicklime 1 to sand 2.5, on a damp background, in room air that never changes. At the"
                        + " lines: humidity of the room air.",
                plots);
    }

    static String title(List<Cell> cells) {
        String days = cells.stream()
                .filter(cell -> cell.celsius() == EXAMPLE_CELSIUS && cell.relativeHumidity() == EXAMPLE_HUMIDITY)
                .map(cell -> days(cell) + " on " + cell.background().words())
                .collect(Collectors.joining(", "));
        return "At 10 \u00b0C and 75 % the next coat waits, in days: " + days;
    }

    private static String days(Cell cell) {
        return cell.days().isEmpty()
                ? "over 60"
                : String.format(Locale.ROOT, "%.1f", cell.days().getAsDouble());
    }

    /** Lines that lie on each other are drawn once and named together. */
    private static List<Line> lines(List<Cell> cells, Background background) {
        List<Line> lines = new ArrayList<>();
        List<List<Double>> names = new ArrayList<>();
        List<List<Point>> runs = new ArrayList<>();
        for (double humidity : ReadyDays.HUMIDITIES) {
            List<Point> run = run(cells, background, humidity);
            boolean alone = runs.isEmpty() || apart(runs.get(runs.size() - 1), run) >= SAME_DAYS;
            if (alone) {
                runs.add(run);
                names.add(new ArrayList<>());
            }
            names.get(names.size() - 1).add(humidity);
        }
        for (int k = 0; k < runs.size(); k++) {
            if (runs.get(k).size() > 1) {
                lines.add(new Line(name(names.get(k)), runs.get(k)));
            }
        }
        return lines;
    }

    private static List<Point> run(List<Cell> cells, Background background, double humidity) {
        return cells.stream()
                .filter(cell -> cell.background() == background && cell.relativeHumidity() == humidity)
                .filter(cell -> cell.days().isPresent())
                .map(cell -> new Point(cell.celsius(), cell.days().getAsDouble()))
                .toList();
    }

    private static double apart(List<Point> one, List<Point> other) {
        double most = one.size() == other.size() ? 0.0 : Double.POSITIVE_INFINITY;
        for (int k = 0; k < Math.min(one.size(), other.size()); k++) {
            most = Math.max(most, Math.abs(one.get(k).up() - other.get(k).up()));
        }
        return most;
    }

    private static String name(List<Double> humidities) {
        String first = percent(humidities.get(0));
        String last = percent(humidities.get(humidities.size() - 1));
        return first.equals(last) ? first + " %" : first + " to " + last + " %: the same";
    }

    private static String percent(double humidity) {
        return String.format(Locale.ROOT, "%.0f", 100.0 * humidity);
    }
}
