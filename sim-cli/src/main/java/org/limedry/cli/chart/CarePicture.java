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
final class CarePicture implements Picture {
    private static final int AXIS_TITLE_BASELINE_PX = 14;
    private static final int TITLE_TO_PLOT_PX = 16;
    private static final int BETWEEN_PX = 18;
    private static final int DATES_PX = 32;

    /** A shorter block could not be seen. */
    private static final Duration LEAST_SHOWN = Duration.ofHours(6);

    private final CareChart chart;
    private final Size size;
    private final TimeScale times;
    private final List<Laid> laid = new ArrayList<>();

    CarePicture(CareChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.times = new TimeScale(chart.timeline(), size.pick(44, 34), size.pick(670, 348));
        int top = 0;
        for (CareChart.Panel panel : chart.panels()) {
            int plotTop = top + AXIS_TITLE_BASELINE_PX + TITLE_TO_PLOT_PX;
            int plotBottom = plotTop + size.pick(110, 120);
            laid.add(new Laid(panel, new TimePanel(times, scale(panel), plotTop, plotBottom), top));
            top = plotBottom + BETWEEN_PX;
        }
    }

    /** One plot under its axis title. */
    private record Laid(CareChart.Panel panel, TimePanel plot, int top) {}

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

    private double bottom() {
        return laid.get(laid.size() - 1).plot().area().getMaxY();
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return bottom() + DATES_PX;
    }

    @Override
    public void draw(Canvas canvas) {
        for (Laid one : laid) {
            CareChart.Panel panel = one.panel();
            panel.outside()
                    .forEach(outside -> one.plot()
                            .addBlock(outside.from(), later(outside.from().plus(LEAST_SHOWN), outside), Ink.TINT));
            one.plot().addLine(points(panel), Ink.line(1.4));
            one.plot()
                    .addLine(
                            List.of(
                                    new TimedValue(chart.timeline().from(), panel.limit()),
                                    new TimedValue(chart.timeline().to(), panel.limit())),
                            Ink.dashed(2, 9f, 5f));
            one.plot().draw(canvas, size);
            canvas.text(
                    Text.plain(panel.name() + "; dashed: " + number(panel.limit()), size.textPx()),
                    0,
                    one.top() + AXIS_TITLE_BASELINE_PX,
                    Align.START);
        }
        TimeTick.draw(canvas, times, bottom(), size);
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
    public String story() {
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
