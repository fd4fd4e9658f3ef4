package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.function.DoubleUnaryOperator;
import org.limedry.cli.chart.ProgrammeChart.Row;

/** The bar of one coat: work, waiting, the spread of its ready date, and the likely date in words beside it. */
final class ProgrammeBar {
    static final double TICK_PX = 4.5;
    private static final double BAR_PX = 16;
    private static final double TICK_PROUD_PX = 4;
    private static final double LEAST_WORK_PX = 8;
    private static final double WORDS_GAP_PX = 7;
    private static final double ARROW_PX = 9;

    private final Row row;
    private final DoubleUnaryOperator x;
    private final double top;
    private final Size size;
    private final double plotEnd;

    /** Makes a bar: {@code x} tells where a week lies. */
    ProgrammeBar(Row row, DoubleUnaryOperator x, double top, Size size) {
        this.row = row;
        this.x = x;
        this.top = top;
        this.size = size;
        this.plotEnd = size.widthPx() - ARROW_PX - 1;
    }

    static void drawSpread(Canvas canvas, Rectangle2D box) {
        canvas.fill(box, Ink.PAPER);
        canvas.draw(box, Ink.dashed(1.5, 4f, 3f), Ink.BLACK);
    }

    void draw(Canvas canvas) {
        if (!row.work().isEmpty()) {
            drawWaiting(canvas);
            row.work().forEach(work -> canvas.fill(box(workStart(work), workEnd(work)), Ink.BLACK));
            row.ready().likely().ifPresent(week -> drawTick(canvas, x.applyAsDouble(week)));
        }
        drawWords(canvas);
    }

    private void drawWaiting(Canvas canvas) {
        Weeks ready = row.ready();
        double waitsFrom = row.work().stream().mapToDouble(this::workEnd).max().orElse(0);
        double earliest = ready.earliest().map(x::applyAsDouble).orElse(plotEnd);
        if (earliest > waitsFrom) {
            canvas.bar(box(waitsFrom, earliest), Fill.LIGHT, Ink.line(1.2));
        }
        double latest = latest();
        if (ready.ranged() && latest > earliest) {
            drawSpread(canvas, box(earliest, latest));
        }
        if (ready.latest().isEmpty()) {
            arrow(canvas);
        }
    }

    private double latest() {
        return row.ready().latest().map(x::applyAsDouble).orElse(plotEnd);
    }

    private double workStart(ProgrammeChart.Work work) {
        return x.applyAsDouble(work.fromWeek());
    }

    private double workEnd(ProgrammeChart.Work work) {
        return Math.max(x.applyAsDouble(work.toWeek()), workStart(work) + LEAST_WORK_PX);
    }

    private Rectangle2D box(double from, double to) {
        return new Rectangle2D.Double(from, top, to - from, BAR_PX);
    }

    private void drawTick(Canvas canvas, double at) {
        canvas.line(new Line2D.Double(at, top - TICK_PROUD_PX, at, top + BAR_PX + TICK_PROUD_PX), Ink.line(TICK_PX));
    }

    private void arrow(Canvas canvas) {
        Path2D head = new Path2D.Double();
        head.moveTo(plotEnd, top);
        head.lineTo(plotEnd + ARROW_PX, top + BAR_PX / 2);
        head.lineTo(plotEnd, top + BAR_PX);
        head.closePath();
        canvas.fill(head, Ink.PAPER);
        canvas.draw(head, Ink.line(1.5), Ink.BLACK);
    }

    /** Right of the bar if there is room, else left of it, else on its end. */
    private void drawWords(Canvas canvas) {
        Text text = Text.plain(row.words(), size.textPx());
        double first = row.work().stream().mapToDouble(this::workStart).min().orElse(x.applyAsDouble(0));
        double start = Math.min(
                first,
                row.ready().ranged()
                        ? row.ready().earliest().map(x::applyAsDouble).orElse(first)
                        : first);
        double right = row.work().isEmpty() ? first : Math.max(latest(), first) + WORDS_GAP_PX + TICK_PX / 2;
        double before = start - WORDS_GAP_PX - text.widthPx();
        double at = size.widthPx() - text.widthPx() - ARROW_PX - WORDS_GAP_PX;
        if (right + text.widthPx() <= size.widthPx()) {
            at = right;
        } else if (before >= x.applyAsDouble(0)) {
            at = before;
        }
        canvas.boxed(text, at, top + 13, Align.START);
    }
}
