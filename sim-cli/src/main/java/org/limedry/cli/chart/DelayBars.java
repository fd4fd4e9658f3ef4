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
    private static final double WIDE_ROW_PX = 25;
    private static final double NARROW_ROW_PX = 44;
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
            double barTop = size == Size.WIDE ? y : y + NARROW_ROW_PX - WIDE_ROW_PX;
            Rectangle2D bar = new Rectangle2D.Double(from, barTop, to - from, BAR_PX);
            Fill fill = FILLS.get(rows.size() % FILLS.size());
            rows.add(size == Size.WIDE ? wide(cause, bar, fill) : narrow(cause, bar, fill, y));
            left = Math.min(left, from);
            right = Math.max(right, to);
            at = next;
            y += size.pick(WIDE_ROW_PX, NARROW_ROW_PX);
        }
        return new DelayBars(rows, left, right, y);
    }

    /** Words and figure together on the side of the bar with more room. */
    private static Row wide(Cause cause, Rectangle2D bar, Fill fill) {
        double widthPx = Size.WIDE.widthPx();
        boolean before = bar.getMinX() > widthPx - bar.getMaxX();
        double room = (before ? bar.getMinX() : widthPx - bar.getMaxX()) - GAP_PX - 2;
        Text figure = Text.bold(cause.figure(), Size.WIDE.textPx());
        Text words = Text.plain(cause.words() + ": ", Size.WIDE.textPx()).cutTo(room - figure.widthPx() - GAP_PX);
        double width = words.widthPx() + GAP_PX / 2 + figure.widthPx();
        double x = before ? bar.getMinX() - GAP_PX - width : bar.getMaxX() + GAP_PX;
        double baseline = bar.getCenterY() + figure.ascentPx() - figure.heightPx() / 2;
        return new Row(bar, fill, words, x, baseline, figure, x + words.widthPx() + GAP_PX / 2);
    }

    /** Words over the bar, the figure beside it. */
    private static Row narrow(Cause cause, Rectangle2D bar, Fill fill, double top) {
        Text figure = Text.bold(cause.figure(), Size.NARROW.textPx());
        Text words = Text.plain(cause.words(), 13).cutTo(Size.NARROW.widthPx());
        boolean before = bar.getMinX() > Size.NARROW.widthPx() - bar.getMaxX();
        double x = before ? bar.getMinX() - GAP_PX - figure.widthPx() : bar.getMaxX() + GAP_PX;
        return new Row(bar, fill, words, 0, top + words.ascentPx() + 2, figure, x);
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
            canvas.boxed(row.figure(), row.figureX(), figureBaseline, Align.START);
        }
    }
}
