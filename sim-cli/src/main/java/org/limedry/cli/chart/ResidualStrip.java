package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualLines.Sample;

/** One strip of a {@link ResidualChart}: readings close together stand against lines, readings far apart against ticks. */
final class ResidualStrip {
    static final double NOW_PX = 4;
    static final double BEFORE_PX = 1.8;
    static final double READ_PX = 1.2;
    static final double DOT_RADIUS_PX = 3.2;
    private static final double HALO_PX = 1.2;
    private static final double TICK_PX = 4.5;
    private static final double BAR_SHARE = 0.5;
    private static final double FINE_BAR_SHARE = 0.35;
    private static final double LEAST_OUTLINED_PX = 4;
    private static final double MARK_SHARE = 0.85;
    private static final double LEAST_MARK_PX = 12;
    private static final double MOST_MARK_PX = 26;
    private static final double ALONE_PX = 6;
    private static final double FIGURES_SIDE_PX = 5;
    private static final int ONE_IN = 10;

    private final Channel channel;
    private final Size size;
    private final TimePanel plot;
    private final ValueScale scale;
    private final List<List<Sample>> joined;
    private final List<Sample> alone;
    private final double slotPx;
    private final double markPx;

    ResidualStrip(Channel channel, Size size, TimeScale times, ValueScale scale, TimePanel plot) {
        this.channel = channel;
        this.size = size;
        this.scale = scale;
        this.plot = plot;
        ResidualLines lines = ResidualLines.of(channel, times.timeline());
        this.slotPx = slotPx(lines.samples(), times);
        double wide = Math.min(MOST_MARK_PX, MARK_SHARE * slotPx);
        boolean apart = channel.marks() != ResidualChart.Marks.LINE && wide >= LEAST_MARK_PX;
        this.markPx = apart ? wide : ALONE_PX;
        this.joined = apart
                ? List.of()
                : lines.runs().stream().filter(run -> run.size() > 1).toList();
        this.alone = apart
                ? lines.samples()
                : lines.runs().stream()
                        .filter(run -> run.size() == 1)
                        .flatMap(List::stream)
                        .toList();
    }

    /** Nine of ten neighbours are further apart than this. */
    private static double slotPx(List<Sample> samples, TimeScale times) {
        List<Double> apart = IntStream.range(1, samples.size())
                .mapToObj(i -> times.x(samples.get(i).mean().at())
                        - times.x(samples.get(i - 1).mean().at()))
                .sorted()
                .toList();
        return apart.isEmpty() ? MOST_MARK_PX / MARK_SHARE : apart.get(apart.size() / ONE_IN);
    }

    /** Returns a scale that holds all that the strip of a channel draws. */
    static ValueScale scale(Channel channel, Timeline timeline) {
        DoubleSummaryStatistics range = ResidualLines.of(channel, timeline).samples().stream()
                .flatMapToDouble(sample -> DoubleStream.of(
                        sample.lowest(),
                        sample.highest(),
                        sample.mean().before(),
                        sample.afterLow() - channel.reach(),
                        sample.afterHigh() + channel.reach()))
                .summaryStatistics();
        return channel.marks() == ResidualChart.Marks.BARS
                ? ValueScale.fromZero(range.getMax())
                : ValueScale.between(range.getMin(), range.getMax());
    }

    double bottom() {
        return plot.area().getMaxY();
    }

    void draw(Canvas canvas) {
        joined.forEach(run -> drawBand(canvas, run));
        alone.forEach(sample -> canvas.fill(band(sample), Ink.TINT));
        plot.draw(canvas, size);
        if (channel.marks() != ResidualChart.Marks.LINE && scale.ticks().contains(0.0)) {
            canvas.line(across(plot.area(), plot.y(0)), Ink.line(1));
        }
        if (channel.marks() == ResidualChart.Marks.BARS) {
            joined.forEach(run -> run.forEach(sample -> drawBar(canvas, sample)));
            alone.forEach(sample -> drawBar(canvas, sample));
        }
        joined.forEach(run -> drawModel(canvas, run));
        if (channel.marks() == ResidualChart.Marks.LINE) {
            joined.forEach(run -> drawRead(canvas, run));
        }
        alone.forEach(sample -> drawTicks(canvas, sample));
        drawRanges(canvas, alone);
        if (channel.marks() == ResidualChart.Marks.DOTS) {
            joined.forEach(run -> run.forEach(sample -> drawDot(canvas, sample)));
        }
        if (channel.marks() != ResidualChart.Marks.BARS) {
            alone.forEach(sample -> drawDot(canvas, sample));
        }
    }

    private Point2D on(Sample sample, double value) {
        double bounded = Math.max(scale.low(), Math.min(value, scale.high()));
        return plot.place(new TimedValue(sample.mean().at(), bounded));
    }

    private double x(Sample sample) {
        return on(sample, scale.low()).getX();
    }

    private List<Point2D> thinned(List<Sample> run, ToDoubleFunction<Sample> value) {
        return PixelColumns.thinned(run.stream()
                .map(sample -> on(sample, value.applyAsDouble(sample)))
                .toList());
    }

    private void drawBand(Canvas canvas, List<Sample> run) {
        List<Point2D> upper = thinned(run, sample -> sample.afterHigh() + channel.reach());
        List<Point2D> lower = thinned(run, sample -> sample.afterLow() - channel.reach());
        canvas.fill(Marks.between(upper, lower), Ink.TINT);
    }

    private void drawRead(Canvas canvas, List<Sample> run) {
        drawRanges(canvas, run);
        canvas.draw(Marks.path(thinned(run, sample -> sample.mean().measured())), Ink.line(READ_PX), Ink.BLACK);
    }

    /** From the lowest to the highest of each day, as one shape. */
    private void drawRanges(Canvas canvas, List<Sample> samples) {
        Path2D ranges = new Path2D.Double();
        samples.stream().filter(sample -> sample.highest() > sample.lowest()).forEach(sample -> {
            ranges.moveTo(x(sample), on(sample, sample.lowest()).getY());
            ranges.lineTo(x(sample), on(sample, sample.highest()).getY());
        });
        if (ranges.getCurrentPoint() != null) {
            canvas.draw(ranges, whisker(), Ink.DARK);
        }
    }

    /** Days closer together than three of their uprights get finer ones. */
    private BasicStroke whisker() {
        return Ink.line(slotPx < 3 ? 0.5 : 1);
    }

    private void drawModel(Canvas canvas, List<Sample> run) {
        Path2D before = Marks.path(thinned(run, sample -> sample.mean().before()));
        Path2D after = Marks.path(thinned(run, sample -> sample.mean().after()));
        canvas.draw(before, Ink.line(BEFORE_PX + 2 * HALO_PX), Ink.PAPER);
        canvas.draw(before, before(), Ink.BLACK);
        canvas.draw(after, Ink.line(NOW_PX + 2 * HALO_PX), Ink.PAPER);
        canvas.draw(after, Ink.line(NOW_PX), Ink.MIDDLE);
    }

    static BasicStroke before() {
        return Ink.dashed(BEFORE_PX, 7f, 4f);
    }

    /** A box about a sample, as wide as its ticks, cut at the edges of the plot. */
    private Rectangle2D band(Sample sample) {
        double top = on(sample, sample.afterHigh() + channel.reach()).getY();
        double bottom = on(sample, sample.afterLow() - channel.reach()).getY();
        return new Rectangle2D.Double(x(sample) - markPx / 2, top, markPx, bottom - top).createIntersection(room());
    }

    /** The plot, and beyond its right end the room for half a mark. */
    private Rectangle2D room() {
        Rectangle2D area = plot.area();
        return new Rectangle2D.Double(
                area.getMinX() - FIGURES_SIDE_PX,
                area.getMinY(),
                area.getWidth() + FIGURES_SIDE_PX + MOST_MARK_PX / 2,
                area.getHeight());
    }

    private static Line2D across(Rectangle2D box, double y) {
        return new Line2D.Double(box.getMinX(), y, box.getMaxX(), y);
    }

    private void drawTicks(Canvas canvas, Sample sample) {
        Rectangle2D box = band(sample);
        canvas.line(across(box, on(sample, sample.mean().before()).getY()), Ink.dashed(2, 4f, 2f));
        canvas.draw(across(box, on(sample, sample.mean().after()).getY()), Ink.line(TICK_PX), Ink.MIDDLE);
    }

    private void drawBar(Canvas canvas, Sample sample) {
        double slot = Math.min(slotPx, MOST_MARK_PX);
        boolean outlined = BAR_SHARE * slot >= LEAST_OUTLINED_PX;
        double width = outlined ? BAR_SHARE * slot : Math.max(1.2, FINE_BAR_SHARE * slot);
        double top = on(sample, sample.mean().measured()).getY();
        Rectangle2D bar = new Rectangle2D.Double(x(sample) - width / 2, top, width, bottom() - top);
        Rectangle2D cut = bar.createIntersection(room());
        if (outlined) {
            canvas.bar(cut, Fill.WHITE, Ink.line(1.3));
        } else {
            canvas.fill(cut, Ink.BLACK);
        }
    }

    private void drawDot(Canvas canvas, Sample sample) {
        drawDot(canvas, on(sample, sample.mean().measured()));
    }

    static void drawDot(Canvas canvas, Point2D at) {
        canvas.fill(Marks.disc(at, DOT_RADIUS_PX + HALO_PX), Ink.PAPER);
        canvas.fill(Marks.disc(at, DOT_RADIUS_PX), Ink.BLACK);
    }
}
