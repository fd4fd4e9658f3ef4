package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Reading;

/** Lays out readings against the model: samples of its lines, then a strip for each channel on one time axis. */
final class ResidualPicture implements Picture {
    private static final double HEADING_TO_PLOT_PX = 13;
    private static final double BETWEEN_PX = 16;
    private static final double KEY_GAP_PX = 8;
    private static final int DATES_PX = 32;
    private static final int FIGURES_GAP_PX = 8;

    private final ResidualChart chart;
    private final Size size;
    private final TimeScale times;
    private final ResidualKey key;
    private final List<Laid> laid = new ArrayList<>();

    /** One strip under its words. */
    private record Laid(RowWords words, double top, ResidualStrip strip) {}

    ResidualPicture(ResidualChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.key = new ResidualKey(chart, size);
        List<ValueScale> scales = chart.channels().stream()
                .map(channel -> ResidualStrip.scale(channel, chart.timeline()))
                .toList();
        double figuresPx = scales.stream()
                .flatMap(scale -> scale.ticks().stream().map(scale::words))
                .mapToDouble(words -> Text.plain(words, size.textPx()).widthPx())
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
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return bottom() + DATES_PX;
    }

    @Override
    public void draw(Canvas canvas) {
        key.draw(canvas);
        for (Laid one : laid) {
            one.strip().draw(canvas);
            one.words().draw(canvas, one.top());
        }
        TimeTick.draw(canvas, times, bottom(), size);
    }

    @Override
    public String story() {
        return chart.channels().stream().map(ResidualPicture::told).collect(Collectors.joining(" "));
    }

    private static String told(Channel channel) {
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
}
