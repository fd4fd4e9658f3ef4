package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.chart.DelayChart.Cause;

/**
 * The stairs of causes: each bar begins where the last ended, on the time axis from the planned ready date on.
 *
 * @param rows from the top
 * @param left left end of all bars, px
 * @param right right end of all bars, px
 * @param bottom under the last row, px
 */
record DelayBars(List<Row> rows, double left, double right, double bottom) {
    private static final List<Fill> FILLS =
            List.of(Fill.HEAVY, Fill.LIGHT, Fill.CROSS, Fill.DOTS, Fill.GREY, Fill.WHITE);
    private static final double BAR_PX = 18;
    private static final double ROW_PX = 25;
    private static final double OUTLINE_PX = 1.5;
    private static final double WORDS_PX = 18;
    private static final double BETWEEN_PX = 5;
    private static final int SMALLEST_PX = 13;
    private static final double GAP_PX = 8;
    private static final double SECONDS_PER_DAY = 86_400.0;

    DelayBars {
        rows = List.copyOf(rows);
    }

    /** One cause in its row. */
    private record Row(
            Rectangle2D bar, Fill fill, Text words, double x, double baseline, Text figure, double figureX) {}

    static DelayBars of(DelayChart chart, Size size, TimeScale times, double top) {
        Instant at = chart.planned().ready().orElseThrow();
        List<Row> rows = new ArrayList<>();
        double left = times.x(at);
        double right = left;
        double y = top;
        for (Cause cause : chart.causes()) {
            Instant next = at.plus(Duration.ofSeconds(Math.round(cause.days() * SECONDS_PER_DAY)));
            double from = Math.min(times.x(at), times.x(next));
            double to = Math.max(times.x(at), times.x(next));
            Fill fill = FILLS.get(rows.size() % FILLS.size());
            Row row = row(cause, new Rectangle2D.Double(from, y, to - from, BAR_PX), fill, size);
            rows.add(row);
            left = Math.min(left, from);
            right = Math.max(right, to);
            at = next;
            y = row.bar().getMinY() + ROW_PX;
        }
        return new DelayBars(rows, left, right, y);
    }

    /** In one line beside the bar, where there is room; else with the words over the bar. */
    private static Row row(Cause cause, Rectangle2D bar, Fill fill, Size size) {
        Text figure = Text.bold(cause.figure(), size.textPx());
        Text words = Text.plain(cause.words() + ":", size.textPx());
        double width = words.widthPx() + BETWEEN_PX + figure.widthPx();
        boolean before = bar.getMinX() > size.widthPx() - bar.getMaxX();
        double besidePx = Math.max(bar.getMinX(), size.widthPx() - bar.getMaxX()) - GAP_PX - 2;
        if (width > besidePx) {
            return overBar(cause, bar, fill, size);
        }
        double left = before ? bar.getMinX() - GAP_PX - width : bar.getMaxX() + GAP_PX;
        double baseline = bar.getCenterY() + words.ascentPx() - words.heightPx() / 2;
        return new Row(bar, fill, words, left, baseline, figure, left + words.widthPx() + BETWEEN_PX);
    }

    private static Row overBar(Cause cause, Rectangle2D bar, Fill fill, Size size) {
        Text figure = Text.bold(cause.figure(), size.textPx());
        Text words = Text.plain(cause.words(), size.textPx());
        Text fitting = words.widthPx() <= size.widthPx() ? words : smaller(cause, size);
        double left = Math.max(0, Math.min(bar.getMinX(), size.widthPx() - fitting.widthPx()));
        Rectangle2D lower = new Rectangle2D.Double(bar.getX(), bar.getY() + WORDS_PX, bar.getWidth(), bar.getHeight());
        boolean inside = figure.widthPx() <= bar.getWidth() - 2 * GAP_PX;
        boolean before = bar.getMinX() > size.widthPx() - bar.getMaxX();
        double beside = before ? bar.getMinX() - GAP_PX - figure.widthPx() : bar.getMaxX() + GAP_PX;
        double within = Math.max(0, Math.min(beside, size.widthPx() - figure.widthPx()));
        double x = inside ? bar.getCenterX() - figure.widthPx() / 2 : within;
        return new Row(lower, fill, fitting, left, bar.getY() + words.ascentPx(), figure, x);
    }

    /** The smallest type is for a line that would else be cut. */
    private static Text smaller(Cause cause, Size size) {
        return Text.plain(cause.words(), size.pick(size.textPx(), SMALLEST_PX)).cutTo(size.widthPx());
    }

    void draw(Canvas canvas) {
        for (Row row : rows) {
            // A share too small to be seen is a line.
            if (row.bar().getWidth() < 1.5) {
                double x = row.bar().getCenterX();
                canvas.line(
                        new Line2D.Double(x, row.bar().getMinY(), x, row.bar().getMaxY()), Ink.line(2));
            } else {
                canvas.bar(row.bar(), row.fill(), Ink.line(1.5));
            }
            canvas.boxed(row.words(), row.x(), row.baseline(), Align.START);
            double figureBaseline = row.bar().getCenterY()
                    + row.figure().ascentPx()
                    - row.figure().heightPx() / 2;
            drawFigure(canvas, row, figureBaseline);
        }
    }

    /** A figure inside its bar leaves the outline whole. */
    private static void drawFigure(Canvas canvas, Row row, double baseline) {
        double width = row.figure().widthPx();
        if (row.bar().contains(row.figureX(), row.bar().getCenterY(), width, 1.0)) {
            double height = BAR_PX - 2 * OUTLINE_PX;
            canvas.fill(
                    new Rectangle2D.Double(
                            row.figureX() - OUTLINE_PX,
                            row.bar().getMinY() + OUTLINE_PX,
                            width + 2 * OUTLINE_PX,
                            height),
                    Ink.PAPER);
            canvas.text(row.figure(), row.figureX(), baseline, Align.START);
        } else {
            canvas.boxed(row.figure(), row.figureX(), baseline, Align.START);
        }
    }
}
