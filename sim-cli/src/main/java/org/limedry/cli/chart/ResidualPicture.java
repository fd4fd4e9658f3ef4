package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Marks;
import org.limedry.cli.chart.ResidualChart.Reading;

/** Lays out readings against the model: samples of its lines, then a strip for each channel on one time axis. */
final class ResidualPicture extends Picture {
    private static final double HEADING_TO_PLOT_PX = 13;
    private static final double BETWEEN_PX = 16;
    private static final double KEY_GAP_PX = 8;
    private static final int DATES_PX = 32;
    private static final int FIGURES_GAP_PX = 8;

    private final ResidualChart chart;
    private final TimeScale times;
    private final Key key;
    private final List<Laid> laid = new ArrayList<>();

    /** One strip under its words. */
    private record Laid(RowWords words, double top, ResidualStrip strip) {}

    ResidualPicture(ResidualChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.key = new Key(chart, size);
        List<ValueScale> scales = chart.channels().stream()
                .map(channel -> ResidualStrip.scale(channel, chart.timeline()))
                .toList();
        double figuresPx = scales.stream()
                .flatMap(scale -> scale.ticks().stream().map(scale::words))
                .mapToDouble(words -> plain(words).widthPx())
                .max()
                .orElse(0);
        this.times = new TimeScale(chart.timeline(), (int) Math.ceil(figuresPx) + FIGURES_GAP_PX, size.pick(666, 344));
        double top = key.heightPx() + KEY_GAP_PX;
        for (int i = 0; i < scales.size(); i++) {
            Channel channel = chart.channels().get(i);
            RowWords words = RowWords.of(channel.name() + ", " + channel.unit(), channel.verdict(), size);
            int plotTop = (int) Math.ceil(top + words.heightPx() + HEADING_TO_PLOT_PX);
            TimePanel plot = new TimePanel(times, scales.get(i), plotTop, plotTop + plotPx(scales.size()));
            ResidualStrip strip = new ResidualStrip(channel, size, times, scales.get(i), plot);
            laid.add(new Laid(words, top, strip));
            top = strip.bottom() + BETWEEN_PX;
        }
    }

    /** Few strips get more room each. */
    private static int plotPx(int strips) {
        return switch (strips) {
            case 1 -> 180;
            case 2 -> 140;
            default -> 112;
        };
    }

    private double bottom() {
        return laid.get(laid.size() - 1).strip().bottom();
    }

    @Override
    double heightPx() {
        return bottom() + DATES_PX;
    }

    @Override
    void draw(Canvas canvas) {
        key.draw(canvas);
        for (Laid one : laid) {
            one.strip().draw(canvas);
            one.words().draw(canvas, one.top());
        }
        TimeTick.draw(canvas, times, bottom(), size);
    }

    @Override
    String story() {
        return chart.channels().stream().map(ResidualPicture::sentence).collect(Collectors.joining(" "));
    }

    private static String sentence(Channel channel) {
        return String.format(
                Locale.ROOT,
                "%s, %s: %s. Of %,d readings %,d lie within twice their usual error of the model now, %,d of the model before.",
                channel.name(),
                channel.unit(),
                channel.verdict(),
                channel.readings().size(),
                within(channel, Reading::after),
                within(channel, Reading::before));
    }

    private static long within(Channel channel, ToDoubleFunction<Reading> model) {
        return channel.readings().stream()
                .filter(reading -> Math.abs(reading.measured() - model.applyAsDouble(reading)) <= channel.reach())
                .count();
    }

    /**
     * Samples of what a {@link ResidualChart} draws, over its strips: where the model meets the readings their lines run
     * upon each other and no name could stand at one of them.
     */
    private static final class Key {
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

        Key(ResidualChart chart, Size size) {
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
                samples.add(new Sample("emptied", BAR_PX, Key::bar));
            }
            if (drawsAny(channels, Marks.DOTS)) {
                samples.add(new Sample("by hand", BAR_PX, Key::dot));
            }
            samples.add(new Sample("model before", SAMPLE_PX, Key::before));
            samples.add(new Sample("model now", SAMPLE_PX, Key::now));
            samples.add(new Sample("where 19 of 20 readings should lie", SAMPLE_PX, Key::band));
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
}
