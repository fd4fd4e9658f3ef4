package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.cli.chart.PlotsChart;
import org.limedry.cli.chart.PlotsChart.Dot;
import org.limedry.cli.chart.PlotsChart.Plot;
import org.limedry.cli.chart.PlotsChart.Point;
import org.limedry.cli.chart.PlotsChart.Range;
import org.limedry.proof.benchmarks.Benchmarks;
import org.limedry.proof.figure.Figure;

/** Found against expected of one benchmark: a plot for each unit. */
final class FoundChart {
    private static final int MOST_DOTS = 40;

    private FoundChart() {}

    static PlotsChart of(CaseRun run) {
        Map<String, List<Figure>> byUnit = run.figures().stream()
                .collect(Collectors.groupingBy(
                        figure -> figure.claim().unit(), LinkedHashMap::new, Collectors.toList()));
        List<Plot> plots = new ArrayList<>();
        byUnit.forEach((unit, figures) -> {
            DoubleSummaryStatistics expected = figures.stream()
                    .mapToDouble(figure -> figure.claim().expected().value())
                    .summaryStatistics();
            // A single number has no axis.
            if (expected.getMax() > expected.getMin()) {
                Range range = new Range.Same(expected.getMin(), expected.getMax());
                plots.add(new Plot(heading(unit), "expected", "found", range, List.of(), dots(figures, run)));
            }
        });
        plots.add(shares(run));
        return new PlotsChart(name(run), title(run), note(run), plots);
    }

    /** Returns the name of the chart: letters, digits and hyphens. */
    static String name(CaseRun run) {
        return "found-" + run.proof().name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    static String title(CaseRun run) {
        long out = CaseRun.outside(run.figures());
        String name = run.proof().name();
        int all = run.figures().size();
        return out == 0
                ? String.format(Locale.ROOT, "%s: all %,d figures on two grids lie in their band", name, all)
                : String.format(
                        Locale.ROOT, "%s: %,d of %,d figures on two grids lie in their band", name, all - out, all);
    }

    private static String note(CaseRun run) {
        String marks = "White: ordinary grid. Black: half of every cell. On the line, found is what was expected.";
        return run.figures().size() > 2 * MOST_DOTS
                ? marks + " Not every figure is drawn; the furthest off are."
                : marks;
    }

    private static String heading(String unit) {
        return switch (unit) {
            case "C" -> "Temperature, \u00b0C";
            case "-" -> "Without unit";
            case "kg/m2" -> "Water, kg/m\u00b2";
            case "kg/m3" -> "Water, kg/m\u00b3";
            case "g/m2" -> "Water, g/m\u00b2";
            case "kg" -> "Water, kg";
            case "J/m2" -> "Heat, J/m\u00b2";
            default -> unit.replace("m2", "m\u00b2");
        };
    }

    /** Every figure in its order, by how far it is off: what found against expected is too coarse to show. */
    private static Plot shares(CaseRun run) {
        List<Dot> dots = new ArrayList<>();
        double furthest = 1.0;
        for (Map.Entry<String, List<Figure>> part : run.parts().entrySet()) {
            for (int k : drawn(part.getValue())) {
                double share = part.getValue().get(k).share();
                if (Double.isFinite(share)) {
                    furthest = Math.max(furthest, share);
                    dots.add(new Dot(new Point(k + 1.0, share), !part.getKey().equals(Benchmarks.ORDINARY_GRID)));
                }
            }
        }
        return new Plot(
                "Off by, accepted = 1", "figure, in order", "share", new Range.FromZero(furthest), List.of(), dots);
    }

    /** Returns which figures are drawn: evenly chosen ones, and the one that is furthest off. */
    private static List<Integer> drawn(List<Figure> figures) {
        int step = (figures.size() + MOST_DOTS - 1) / MOST_DOTS;
        int worst = figures.indexOf(CaseRun.worst(figures));
        return IntStream.range(0, figures.size())
                .filter(k -> k % step == 0 || k == worst)
                .boxed()
                .toList();
    }

    private static List<Dot> dots(List<Figure> figures, CaseRun run) {
        List<Dot> dots = new ArrayList<>();
        for (String part : run.parts().keySet()) {
            List<Figure> ofGrid = figures.stream()
                    .filter(figure -> figure.part().equals(part))
                    .toList();
            for (int k : drawn(ofGrid)) {
                Figure figure = ofGrid.get(k);
                Point at = new Point(figure.claim().expected().value(), figure.found());
                dots.add(new Dot(at, !part.equals(Benchmarks.ORDINARY_GRID)));
            }
        }
        return dots;
    }
}
