package org.limedry.cli.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.chart.CoverageChart.Row;

/** Lays out the proof of a stated range: a dot for each row on the band in which it should lie. */
final class CoveragePicture implements Picture {
    private static final double ROW_PX = 34;
    private static final double BAND_PX = 18;
    private static final double STATED_PX = 24;
    private static final double WORDS_TO_BAND_PX = 7;
    private static final double STACKED_GAP_PX = 16;
    private static final double COLUMN_GAP_PX = 16;
    private static final double LEAST_PLOT_PX = 215;
    private static final double END_PX = 14;
    private static final double AXIS_PX = 30;
    private static final double DOT_RADIUS_PX = 6;
    private static final double TICK_PX = 6;
    private static final double BETWEEN_TICKS_PX = 12;
    private static final double STEP_PERCENT = 10;
    private static final double ROOM_PERCENT = 4;
    private static final double HIGHEST_START_PERCENT = 50;

    private final CoverageChart chart;
    private final Size size;
    private final boolean beside;
    private final double left;
    private final double right;
    private final double lowPercent;
    private final Paragraph head;

    CoveragePicture(CoverageChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        double names = widest(row -> Text.plain(row.words(), size.textPx()));
        double figures = widest(this::figure);
        double plot = size.widthPx() - names - figures - 2 * COLUMN_GAP_PX;
        this.beside = plot >= LEAST_PLOT_PX;
        this.left = beside ? names + COLUMN_GAP_PX : END_PX;
        this.right = beside ? size.widthPx() - figures - COLUMN_GAP_PX : size.widthPx() - END_PX;
        double lowest = chart.rows().stream()
                .mapToDouble(row -> 100 * Math.min(row.share(), row.acceptedLow()))
                .min()
                .orElse(0);
        double start = Math.floor((lowest - ROOM_PERCENT) / STEP_PERCENT) * STEP_PERCENT;
        this.lowPercent = Math.max(0, Math.min(HIGHEST_START_PERCENT, start));
        this.head = Paragraph.wrapped(
                Text.plain("cases inside their range, of 100; hatched: accepted" + band(), size.textPx()),
                size.widthPx());
    }

    /** Bands that are all alike are told once. */
    private String band() {
        Row first = chart.rows().get(0);
        boolean alike = chart.rows().stream()
                .allMatch(
                        row -> row.acceptedLow() == first.acceptedLow() && row.acceptedHigh() == first.acceptedHigh());
        return alike ? ", " + percent(first.acceptedLow()) + "\u00a0to\u00a0" + percent(first.acceptedHigh()) : "";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    private double widest(Function<Row, Text> words) {
        return chart.rows().stream()
                .mapToDouble(row -> words.apply(row).widthPx())
                .max()
                .orElse(0);
    }

    private Text figure(Row row) {
        return Text.bold(found(row), size.textPx());
    }

    private static String found(Row row) {
        return count(row) + (row.accepted() ? ", " : ", outside; ") + width(row);
    }

    private static String count(Row row) {
        return String.format(Locale.ROOT, "%,d of %,d", row.inside(), row.cases());
    }

    private static String width(Row row) {
        if (row.medianWidthDays().isEmpty()) {
            return "most ranges past the run";
        }
        double days = row.medianWidthDays().getAsDouble();
        String figure = String.format(Locale.ROOT, days < 9.95 && days != Math.rint(days) ? "%.1f" : "%.0f", days);
        return "median width " + figure + (figure.equals("1") ? " day" : " days");
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    private double rowsTop() {
        return head.lines().size() * head.pitchPx() + STATED_PX;
    }

    private RowWords words(Row row) {
        return RowWords.of(row.words(), found(row), size);
    }

    private double rowPx(Row row) {
        return beside ? ROW_PX : words(row).heightPx() + WORDS_TO_BAND_PX + BAND_PX + STACKED_GAP_PX;
    }

    private double axisY() {
        return rowsTop() + chart.rows().stream().mapToDouble(this::rowPx).sum();
    }

    @Override
    public double heightPx() {
        return axisY() + AXIS_PX;
    }

    private double x(double percent) {
        return left + (percent - lowPercent) / (100 - lowPercent) * (right - left);
    }

    @Override
    public void draw(Canvas canvas) {
        canvas.paragraph(head, 0, 0, Align.START);
        double top = rowsTop();
        for (Row row : chart.rows()) {
            double middle = beside ? top + ROW_PX / 2 : top + words(row).heightPx() + WORDS_TO_BAND_PX + BAND_PX / 2;
            drawBand(canvas, row, middle);
            top += rowPx(row);
        }
        drawStated(canvas);
        top = rowsTop();
        for (Row row : chart.rows()) {
            double middle = beside ? top + ROW_PX / 2 : top + words(row).heightPx() + WORDS_TO_BAND_PX + BAND_PX / 2;
            drawDot(canvas, row, middle);
            drawWords(canvas, row, top);
            top += rowPx(row);
        }
        drawAxis(canvas);
    }

    private void drawBand(Canvas canvas, Row row, double middle) {
        double from = x(100 * row.acceptedLow());
        double width = Math.max(1, x(100 * row.acceptedHigh()) - from);
        canvas.bar(new Rectangle2D.Double(from, middle - BAND_PX / 2, width, BAND_PX), Fill.LIGHT, Ink.line(1.3));
    }

    private void drawStated(Canvas canvas) {
        double x = x(100 * chart.statedShare());
        double baseline = rowsTop() - 8;
        canvas.line(new Line2D.Double(x, baseline + 4, x, axisY()), Ink.drop());
        Text words = Text.plain("stated: " + percent(chart.statedShare()), size.textPx());
        double leftmost = Math.min(x - words.widthPx() / 2, size.widthPx() - words.widthPx());
        canvas.text(words, Math.max(0, leftmost), baseline, Align.START);
    }

    private void drawDot(Canvas canvas, Row row, double middle) {
        double x = x(100 * row.share());
        canvas.fill(circle(x, middle, DOT_RADIUS_PX + 2), Ink.PAPER);
        if (row.accepted()) {
            canvas.fill(circle(x, middle, DOT_RADIUS_PX), Ink.BLACK);
        } else {
            canvas.draw(circle(x, middle, DOT_RADIUS_PX - 1), Ink.line(2.4), Ink.BLACK);
        }
    }

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    private void drawWords(Canvas canvas, Row row, double top) {
        if (beside) {
            double baseline = top + ROW_PX / 2 + size.textPx() * 0.36;
            canvas.text(Text.plain(row.words(), size.textPx()), 0, baseline, Align.START);
            canvas.text(figure(row), size.widthPx(), baseline, Align.END);
        } else {
            words(row).draw(canvas, top);
        }
    }

    private void drawAxis(Canvas canvas) {
        double y = axisY();
        canvas.line(new Line2D.Double(left, y, right, y), Ink.line(1));
        double free = Double.NEGATIVE_INFINITY;
        for (double tick = lowPercent; tick <= 100; tick += STEP_PERCENT) {
            canvas.line(new Line2D.Double(x(tick), y, x(tick), y + TICK_PX), Ink.line(1));
            Text text = Text.plain(String.format(Locale.ROOT, "%.0f", tick), size.textPx());
            double from = Math.min(x(tick) - text.widthPx() / 2, size.widthPx() - text.widthPx());
            if (from >= free) {
                canvas.text(text, Math.max(0, from), y + TICK_PX + 16, Align.START);
                free = from + text.widthPx() + BETWEEN_TICKS_PX;
            }
        }
    }

    @Override
    public String story() {
        return chart.rows().stream()
                .map(row -> "%s: %s came inside, stated %s of 100, accepted %s to %s%s."
                        .formatted(
                                row.words(),
                                count(row),
                                percent(chart.statedShare()),
                                percent(row.acceptedLow()),
                                percent(row.acceptedHigh()),
                                ", " + width(row) + (row.accepted() ? "" : ", outside what is accepted")))
                .collect(Collectors.joining(" "));
    }
}
