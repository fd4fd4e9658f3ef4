package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.limedry.cli.chart.SavedChart.Row;

/** Lays out days saved: a range bar for each measure about an upright at nought, its likely figure to the right of it. */
final class SavedPicture extends Picture {
    private static final double WORDS_PX = 20;
    private static final double BAR_PX = 16;
    private static final double GAP_PX = 14;
    private static final double TICK_PX = 5;
    private static final double LABEL_PX = 8;
    private static final double AXIS_PX = 26;
    private static final double LEAST_SPAN_DAYS = 4;
    private static final double LEAST_DAYS = -2;
    private static final double BRACKET_PX = 9;

    private final SavedChart chart;
    private final Rows<Row> rows;
    private final double low;
    private final double high;
    private final double right;

    SavedPicture(SavedChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.rows = Rows.below(0, chart.rows(), row -> name(row).lines().size() * WORDS_PX, row -> BAR_PX, GAP_PX);
        double labels = chart.rows().stream()
                .mapToDouble(row -> label(row).widthPx())
                .max()
                .orElse(0);
        this.right = widthPx() - labels - LABEL_PX - TICK_PX - 2 * BRACKET_PX;
        this.low = Math.min(LEAST_DAYS, ends().min().orElse(0));
        this.high = Math.max(low + LEAST_SPAN_DAYS, ends().max().orElse(0));
    }

    private DoubleStream ends() {
        return chart.rows().stream()
                .flatMapToDouble(row -> DoubleStream.of(
                        row.days(), row.low().orElse(row.days()), row.high().orElse(row.days())));
    }

    private double x(double days) {
        return 2 + (days - low) / (high - low) * (right - 2);
    }

    private Text label(Row row) {
        return bold(words(row.days()));
    }

    private static String words(double days) {
        String figure = String.format(Locale.ROOT, Math.abs(days) < 10 ? "%.1f" : "%.0f", Math.abs(days));
        return days <= -0.05 ? figure + " later" : figure + " days";
    }

    private Paragraph name(Row row) {
        return Paragraph.wrapped(plain(row.words()), widthPx());
    }

    @Override
    double heightPx() {
        return rows.bottom() + AXIS_PX;
    }

    @Override
    void draw(Canvas canvas) {
        double middleBefore = 0;
        for (Rows.Placed<Row> placed : rows.placed()) {
            draw(canvas, placed);
            if (placed.row().tied()) {
                tie(canvas, middleBefore, placed.middle());
            }
            middleBefore = placed.middle();
        }
        String axis = chart.rows().stream().anyMatch(Row::tied)
                ? "upright: no day saved; bracket: too close to call"
                : "upright: no day saved";
        canvas.text(plain(axis), 0, rows.bottom() + 15, Align.START);
    }

    private void draw(Canvas canvas, Rows.Placed<Row> placed) {
        Row row = placed.row();
        double middle = placed.middle();
        canvas.paragraph(name(row), 0, placed.top(), Align.START);
        canvas.line(new Line2D.Double(x(0), middle - BAR_PX / 2 - 2, x(0), middle + BAR_PX / 2 + 4), Ink.line(1.6));
        if (row.low().isPresent() && row.high().isPresent()) {
            double from = x(row.low().getAsDouble());
            double length = Math.max(1, x(row.high().getAsDouble()) - from);
            Marks.range(canvas, new Rectangle2D.Double(from, middle - BAR_PX / 2, length, BAR_PX), Fill.LIGHT);
        } else {
            canvas.line(new Line2D.Double(x(0), middle, x(row.days()), middle), Ink.line(1.6));
        }
        Marks.likely(canvas, x(row.days()), middle, BAR_PX);
        double end = Math.max(x(row.days()), x(row.high().orElse(row.days())));
        canvas.text(label(row), end + TICK_PX + LABEL_PX, middle + size.textPx() * 0.36, Align.START);
    }

    private void tie(Canvas canvas, double from, double to) {
        double edge = widthPx() - 2;
        Path2D bracket = Marks.path(List.of(
                new Point2D.Double(edge - BRACKET_PX, from),
                new Point2D.Double(edge, from),
                new Point2D.Double(edge, to),
                new Point2D.Double(edge - BRACKET_PX, to)));
        canvas.draw(bracket, Ink.line(1.6), Ink.BLACK);
    }

    @Override
    String story() {
        return chart.rows().stream()
                .map(row -> row.words() + ": " + words(row.days()) + range(row)
                        + (row.tied() ? ", too close to call against the one before." : "."))
                .collect(Collectors.joining(" "));
    }

    private static String range(Row row) {
        return row.low().isPresent() && row.high().isPresent()
                ? ", from " + words(row.low().getAsDouble()) + " to "
                        + words(row.high().getAsDouble())
                : "";
    }
}
