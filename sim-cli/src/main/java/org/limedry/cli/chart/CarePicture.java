package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Lays out what was held: the hours as a line, the limit dashed, what lies outside it on grey. */
final class CarePicture extends PanelStack {
    /** A shorter block could not be seen. */
    private static final Duration LEAST_SHOWN = Duration.ofHours(6);

    private final CareChart chart;
    private final List<Laid> laid = new ArrayList<>();

    CarePicture(CareChart chart, Size size) {
        super(chart.timeline(), size);
        this.chart = chart;
        chart.panels().forEach(panel -> laid.add(new Laid(panel, add(scale(panel), size.pick(110, 120)))));
    }

    /** One plot under its axis title. */
    private record Laid(CareChart.Panel panel, TimePanel plot) {}

    private static ValueScale scale(CareChart.Panel panel) {
        DoubleSummaryStatistics range = range(panel);
        double lowest = Math.min(range.getMin(), panel.limit());
        return panel.unit() == CareChart.Unit.PERCENT
                ? ValueScale.percentUpTo100(lowest)
                : ValueScale.celsius(lowest, Math.max(range.getMax(), panel.limit()));
    }

    private static DoubleSummaryStatistics range(CareChart.Panel panel) {
        return IntStream.range(0, panel.values().size())
                .mapToDouble(panel.values()::at)
                .summaryStatistics();
    }

    @Override
    void draw(Canvas canvas) {
        for (Laid one : laid) {
            CareChart.Panel panel = one.panel();
            panel.outside()
                    .forEach(outside -> one.plot()
                            .addBlock(outside.from(), later(outside.from().plus(LEAST_SHOWN), outside), Ink.TINT));
            one.plot().addTimes(points(panel), Ink.line(1.4));
            one.plot()
                    .addTimes(
                            List.of(
                                    new TimedValue(chart.timeline().from(), panel.limit()),
                                    new TimedValue(chart.timeline().to(), panel.limit())),
                            Ink.dashed(2, 9f, 5f));
            one.plot().draw(canvas, size);
            drawTitle(canvas, one.plot(), panel.name() + "; dashed: " + number(panel.limit()));
        }
        drawDates(canvas);
    }

    private Instant later(Instant least, CareChart.Outside outside) {
        return chart.timeline().clamp(least.isAfter(outside.until()) ? least : outside.until());
    }

    private static List<TimedValue> points(CareChart.Panel panel) {
        return IntStream.range(0, panel.times().size())
                .mapToObj(hour ->
                        new TimedValue(panel.times().get(hour), panel.values().at(hour)))
                .toList();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value)
                .replace('-', '\u2212');
    }

    @Override
    String story() {
        return chart.panels().stream()
                .map(panel -> String.format(
                        Locale.ROOT,
                        "%s: from %.1f to %.1f, limit %s, outside it %d times.",
                        panel.name(),
                        range(panel).getMin(),
                        range(panel).getMax(),
                        number(panel.limit()),
                        panel.outside().size()))
                .collect(Collectors.joining(" "));
    }
}
