package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.chart.AiringChart.Tick;

/**
 * The three rows under an airing chart: fresh air, door hours, fans. A word that would touch its neighbour is left out; its
 * tick stays.
 *
 * @param chart the chart
 * @param size size of the drawing
 * @param scales where things lie
 */
record AiringAxis(AiringChart chart, Size size, AiringScales scales) {
    private static final int FIRST_ROW_PX = 22;
    private static final int ROW_PX = 20;
    private static final int TICK_PX = 6;
    private static final int NOTE_GAP_PX = 8;
    private static final double LEAST_GAP_PX = 6;

    void draw(Canvas canvas) {
        double foot = scales.area().getMaxY() + FIRST_ROW_PX;
        List<Tick> air = scales.air().ticks().stream()
                .map(tick -> new Tick(tick, scales.air().words(tick), true))
                .toList();
        row(canvas, air, foot);
        List<Tick> doors = chart.ticks().stream().filter(Tick::byDoors).toList();
        List<Tick> fans = chart.ticks().stream().filter(tick -> !tick.byDoors()).toList();
        row(canvas, doors, foot + ROW_PX);
        row(canvas, fans, foot + 2.0 * ROW_PX);
        chart.ticks().forEach(tick -> mark(canvas, tick));
        double noteTop = foot + (fans.isEmpty() ? 1.0 : 2.0) * ROW_PX + NOTE_GAP_PX;
        Text note = Text.plain(note(fans), size.pick(size.textPx(), size.textPx() - 1));
        canvas.paragraph(Paragraph.wrapped(note, size.widthPx()), 0, noteTop, Align.START);
    }

    private static String note(List<Tick> fans) {
        String doors = "m\u00b3 of fresh air an hour; below: door hours a day";
        return fans.isEmpty() ? doors : doors + ", then fans day and night";
    }

    private void mark(Canvas canvas, Tick tick) {
        double x = scales.x(tick.m3PerHour());
        double base = scales.area().getMaxY();
        canvas.line(new Line2D.Double(x, base, x, base + TICK_PX), Ink.line(1));
    }

    private void row(Canvas canvas, List<Tick> ticks, double baseline) {
        List<Rectangle2D> taken = new ArrayList<>();
        for (Tick tick : ticks) {
            Text text = Text.plain(tick.words(), size.textPx());
            double middle = scales.x(tick.m3PerHour());
            double left = Math.max(0.0, Math.min(middle - text.widthPx() / 2, size.widthPx() - text.widthPx()));
            Rectangle2D box = Canvas.grown(text.box(left, baseline), LEAST_GAP_PX / 2);
            if (taken.stream().noneMatch(box::intersects)) {
                taken.add(box);
                canvas.text(text, left, baseline, Align.START);
            }
        }
    }
}
