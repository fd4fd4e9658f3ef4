package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Lays out days saved: a range bar for each measure about an upright at nought, its likely figure to the right of it. */
final class SavedPicture implements Picture {
    private static final double WORDS_PX = 20;
    private static final double BAR_PX = 16;
    private static final double GAP_PX = 14;
    private static final double TICK_PX = 5;
    private static final double PROUD_PX = 4;
    private static final double LABEL_PX = 8;
    private static final double AXIS_PX = 26;
    private static final double LEAST_SPAN_DAYS = 4;
    private static final double LEAST_DAYS = -2;
    private static final double BRACKET_PX = 9;

    private final SavedChart chart;
    private final Size size;
    private final double low;
    private final double high;
    private final double right;

    SavedPicture(SavedChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        double labels = chart.rows().stream()
                .mapToDouble(row -> label(row).widthPx())
                .max()
                .orElse(0);
        this.right = size.widthPx() - labels - LABEL_PX - TICK_PX - 2 * BRACKET_PX;
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

    private Text label(SavedChart.Row row) {
        return Text.bold(words(row.days()), size.textPx());
    }

    private static String words(double days) {
        String figure = Math.abs(days) < 10
                ? String.format(Locale.ROOT, "%.1f", Math.abs(days))
                : String.format(Locale.ROOT, "%.0f", Math.abs(days));
        return days <= -0.05 ? figure + " later" : figure + " days";
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return chart.rows().stream().mapToDouble(this::rowPx).sum() + AXIS_PX;
    }

    private Paragraph name(SavedChart.Row row) {
        return Paragraph.wrapped(Text.plain(row.words(), size.textPx()), size.widthPx());
    }

    private double rowPx(SavedChart.Row row) {
        return name(row).lines().size() * WORDS_PX + BAR_PX + GAP_PX;
    }

    @Override
    public void draw(Canvas canvas) {
        double top = 0;
        double middleBefore = 0;
        double zero = x(0);
        for (SavedChart.Row row : chart.rows()) {
            canvas.paragraph(name(row), 0, top, Align.START);
            double barTop = top + name(row).lines().size() * WORDS_PX;
            double middle = barTop + BAR_PX / 2;
            canvas.line(new Line2D.Double(zero, barTop - 2, zero, barTop + BAR_PX + 4), Ink.line(1.6));
            bar(canvas, row, middle);
            double labelLeft = Math.max(x(row.days()), x(row.high().orElse(row.days()))) + TICK_PX + LABEL_PX;
            canvas.text(label(row), labelLeft, middle + size.textPx() * 0.36, Align.START);
            if (row.tied()) {
                tie(canvas, middleBefore, middle);
            }
            middleBefore = middle;
            top += rowPx(row);
        }
        String axis = chart.rows().stream().anyMatch(SavedChart.Row::tied)
                ? "upright: no day saved; bracket: too close to call"
                : "upright: no day saved";
        canvas.text(Text.plain(axis, size.pick(15, 14)), 0, top + 15, Align.START);
    }

    private void bar(Canvas canvas, SavedChart.Row row, double middle) {
        if (row.low().isPresent() && row.high().isPresent()) {
            double from = x(row.low().getAsDouble());
            double to = x(row.high().getAsDouble());
            canvas.bar(
                    new Rectangle2D.Double(from, middle - BAR_PX / 2, Math.max(1, to - from), BAR_PX),
                    Fill.LIGHT,
                    Ink.line(1.6));
        } else {
            canvas.line(new Line2D.Double(x(0), middle, x(row.days()), middle), Ink.line(1.6));
        }
        double reach = BAR_PX / 2 + PROUD_PX;
        double at = x(row.days());
        canvas.line(new Line2D.Double(at, middle - reach, at, middle + reach), Ink.line(TICK_PX));
    }

    private void tie(Canvas canvas, double from, double to) {
        double edge = size.widthPx() - 2;
        Path2D bracket = new Path2D.Double();
        bracket.moveTo(edge - BRACKET_PX, from);
        bracket.lineTo(edge, from);
        bracket.lineTo(edge, to);
        bracket.lineTo(edge - BRACKET_PX, to);
        canvas.draw(bracket, Ink.line(1.6), Ink.BLACK);
    }

    @Override
    public String story() {
        return chart.rows().stream()
                .map(row -> row.words() + ": " + words(row.days()) + range(row)
                        + (row.tied() ? ", too close to call against the one before." : "."))
                .collect(Collectors.joining(" "));
    }

    private static String range(SavedChart.Row row) {
        return row.low().isPresent() && row.high().isPresent()
                ? ", from " + words(row.low().getAsDouble()) + " to "
                        + words(row.high().getAsDouble())
                : "";
    }
}
