package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Marks;

/**
 * Samples of what a {@link ResidualChart} draws, over its strips: where the model meets the readings their lines run
 * upon each other and no name could stand at one of them.
 */
final class ResidualKey {
    private static final double SAMPLE_PX = 30;
    private static final double BAR_PX = 12;
    private static final double SAMPLE_GAP_PX = 6;
    private static final double BETWEEN_PX = 20;
    private static final double ROW_PX = 22;
    private static final double BASELINE_PX = 15;
    private static final double MIDDLE_PX = 10;
    private static final double HALF_PX = 7;

    private final List<Placed> placed = new ArrayList<>();
    private final double heightPx;

    /** A kind of mark, drawn about the middle of its left edge. */
    private record Sample(String words, double widthPx, BiConsumer<Canvas, Point2D> drawn) {}

    private record Placed(Sample sample, Text words, double left, double top) {}

    ResidualKey(ResidualChart chart, Size size) {
        double left = 0;
        double top = 0;
        for (Sample sample : samples(chart, size)) {
            Text words = Text.plain(sample.words(), size.textPx());
            double width = sample.widthPx() + SAMPLE_GAP_PX + words.widthPx();
            if (left > 0 && left + width > size.widthPx()) {
                left = 0;
                top += ROW_PX;
            }
            placed.add(new Placed(sample, words, left, top));
            left += width + BETWEEN_PX;
        }
        this.heightPx = top + ROW_PX;
    }

    private static List<Sample> samples(ResidualChart chart, Size size) {
        List<Channel> channels = chart.channels();
        boolean byDay = channels.stream().anyMatch(channel -> ResidualLines.byDay(channel, chart.timeline()));
        List<Sample> samples = new ArrayList<>();
        if (drawsAny(channels, Marks.LINE)) {
            String words = byDay
                    ? size.pick("read: mean of each day, lowest to highest", "read: mean and range of each day")
                    : "read";
            samples.add(new Sample(words, SAMPLE_PX, (canvas, at) -> line(canvas, at, byDay)));
        }
        if (drawsAny(channels, Marks.BARS)) {
            samples.add(new Sample("emptied", BAR_PX, ResidualKey::bar));
        }
        if (drawsAny(channels, Marks.DOTS)) {
            samples.add(new Sample("by hand", BAR_PX, ResidualKey::dot));
        }
        samples.add(new Sample("model before", SAMPLE_PX, ResidualKey::before));
        samples.add(new Sample("model now", SAMPLE_PX, ResidualKey::now));
        samples.add(new Sample("where 19 of 20 readings should lie", SAMPLE_PX, ResidualKey::band));
        return samples;
    }

    private static boolean drawsAny(List<Channel> channels, Marks marks) {
        return channels.stream().anyMatch(channel -> channel.marks() == marks);
    }

    private static Line2D across(Point2D at) {
        return new Line2D.Double(at.getX(), at.getY(), at.getX() + SAMPLE_PX, at.getY());
    }

    private static void line(Canvas canvas, Point2D at, boolean byDay) {
        canvas.line(across(at), Ink.line(ResidualStrip.READ_PX));
        for (double x = at.getX() + 3; byDay && x < at.getX() + SAMPLE_PX; x += 8) {
            canvas.draw(new Line2D.Double(x, at.getY() - HALF_PX, x, at.getY() + HALF_PX), Ink.line(1), Ink.DARK);
        }
    }

    private static void dot(Canvas canvas, Point2D at) {
        ResidualStrip.drawDot(canvas, new Point2D.Double(at.getX() + BAR_PX / 2, at.getY()));
    }

    private static void before(Canvas canvas, Point2D at) {
        canvas.line(across(at), ResidualStrip.before());
    }

    private static void now(Canvas canvas, Point2D at) {
        canvas.draw(across(at), Ink.line(ResidualStrip.NOW_PX), Ink.MIDDLE);
    }

    private static void bar(Canvas canvas, Point2D at) {
        canvas.bar(
                new Rectangle2D.Double(at.getX() + 1, at.getY() - HALF_PX, BAR_PX - 2, 2 * HALF_PX),
                Fill.WHITE,
                Ink.line(1.3));
    }

    private static void band(Canvas canvas, Point2D at) {
        canvas.fill(new Rectangle2D.Double(at.getX(), at.getY() - HALF_PX, SAMPLE_PX, 2 * HALF_PX), Ink.TINT);
    }

    double heightPx() {
        return heightPx;
    }

    void draw(Canvas canvas) {
        for (Placed one : placed) {
            one.sample().drawn().accept(canvas, new Point2D.Double(one.left(), one.top() + MIDDLE_PX));
            canvas.text(
                    one.words(),
                    one.left() + one.sample().widthPx() + SAMPLE_GAP_PX,
                    one.top() + BASELINE_PX,
                    Align.START);
        }
    }
}
