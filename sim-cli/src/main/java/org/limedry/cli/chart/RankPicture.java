package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.stream.Collectors;

/** Lays out a rank chart: words above each bar, its figure to the right of it. */
final class RankPicture implements Picture {
    private static final double WORDS_PX = 20;
    private static final double BAR_PX = 14;
    private static final double GAP_PX = 9;
    private static final double FIGURE_GAP_PX = 8;
    private static final double SHORTEST_PX = 1.5;
    private static final double INDENT_PX = 8;

    private final RankChart chart;
    private final Size size;
    private final double figuresPx;

    RankPicture(RankChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.figuresPx = chart.bars().stream()
                        .mapToDouble(bar -> figure(bar).widthPx())
                        .max()
                        .orElse(0)
                + FIGURE_GAP_PX;
    }

    private Text figure(RankChart.Bar bar) {
        return Text.bold(number(bar.value()) + " " + chart.unit(), size.textPx());
    }

    private static String number(double value) {
        return value < 10 ? String.format(Locale.ROOT, "%.1f", value) : String.format(Locale.ROOT, "%.0f", value);
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return chart.bars().stream().mapToDouble(this::rowPx).sum();
    }

    private double rowPx(RankChart.Bar bar) {
        return words(bar).lines().size() * WORDS_PX + BAR_PX + GAP_PX;
    }

    private Paragraph words(RankChart.Bar bar) {
        return Paragraph.wrapped(Text.plain(bar.words(), size.textPx()), size.widthPx() - INDENT_PX);
    }

    @Override
    public void draw(Canvas canvas) {
        double longest =
                chart.bars().stream().mapToDouble(RankChart.Bar::value).max().orElse(0);
        double scale = longest > 0 ? (size.widthPx() - figuresPx) / longest : 0;
        double top = 0;
        for (RankChart.Bar bar : chart.bars()) {
            Paragraph words = words(bar);
            canvas.paragraph(words, INDENT_PX, top, Align.START);
            double barTop = top + words.lines().size() * WORDS_PX;
            double length = Math.max(SHORTEST_PX, bar.value() * scale);
            canvas.bar(new Rectangle2D.Double(0.8, barTop, length, BAR_PX), Fill.HEAVY, Ink.line(1.6));
            canvas.text(figure(bar), length + FIGURE_GAP_PX, barTop + BAR_PX - 2, Align.START);
            top += rowPx(bar);
        }
        canvas.line(new Line2D.Double(0.8, 0, 0.8, heightPx() - GAP_PX), Ink.line(1.6));
    }

    @Override
    public String story() {
        return chart.bars().stream()
                .map(bar -> bar.words() + ": " + number(bar.value()) + " " + chart.unit() + ".")
                .collect(Collectors.joining(" "));
    }
}
