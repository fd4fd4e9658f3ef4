package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.stream.Collectors;
import org.limedry.cli.chart.RankChart.Bar;

/** Lays out a rank chart: words above each bar, its figure to the right of it. */
final class RankPicture extends Picture {
    private static final double WORDS_PX = 20;
    private static final double BAR_PX = 14;
    private static final double GAP_PX = 9;
    private static final double FIGURE_GAP_PX = 8;
    private static final double SHORTEST_PX = 1.5;
    private static final double INDENT_PX = 8;
    private static final double LEFT_PX = 0.8;

    private final RankChart chart;
    private final Rows<Bar> rows;

    RankPicture(RankChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.rows = Rows.below(0, chart.bars(), bar -> words(bar).lines().size() * WORDS_PX, bar -> BAR_PX, GAP_PX);
    }

    private Text figure(Bar bar) {
        return bold(number(bar.value()) + " " + chart.unit());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
    }

    private Paragraph words(Bar bar) {
        return Paragraph.wrapped(plain(bar.words()), widthPx() - INDENT_PX);
    }

    @Override
    double heightPx() {
        return rows.bottom();
    }

    @Override
    void draw(Canvas canvas) {
        double figuresPx = chart.bars().stream()
                .mapToDouble(bar -> figure(bar).widthPx())
                .max()
                .orElse(0);
        double longest = chart.bars().stream().mapToDouble(Bar::value).max().orElse(0);
        double pxPerUnit = longest > 0 ? (widthPx() - figuresPx - FIGURE_GAP_PX) / longest : 0;
        for (Rows.Placed<Bar> row : rows.placed()) {
            canvas.paragraph(words(row.row()), INDENT_PX, row.top(), Align.START);
            double length = Math.max(SHORTEST_PX, row.row().value() * pxPerUnit);
            double top = row.middle() - BAR_PX / 2;
            Marks.range(canvas, new Rectangle2D.Double(LEFT_PX, top, length, BAR_PX), Fill.HEAVY);
            canvas.text(figure(row.row()), length + FIGURE_GAP_PX, top + BAR_PX - 2, Align.START);
        }
        canvas.line(new Line2D.Double(LEFT_PX, 0, LEFT_PX, heightPx() - GAP_PX), Ink.line(1.6));
    }

    @Override
    String story() {
        return chart.bars().stream()
                .map(bar -> bar.words() + ": " + number(bar.value()) + " " + chart.unit() + ".")
                .collect(Collectors.joining(" "));
    }
}
