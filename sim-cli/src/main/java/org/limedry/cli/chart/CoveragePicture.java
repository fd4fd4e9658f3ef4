package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.chart.CoverageChart.Row;

/** Lays out the proof of a stated range: a dot for each row on the band in which it should lie. */
final class CoveragePicture extends Picture {
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
    private final boolean beside;
    private final double left;
    private final double right;
    private final double lowPercent;
    private final Paragraph head;
    private final Rows<Row> rows;

    CoveragePicture(CoverageChart chart, Size size) {
        super(size);
        this.chart = chart;
        double names = widest(row -> plain(row.words()));
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
                plain("cases inside their range, of 100; hatched: accepted" + band()), size.widthPx());
        this.rows = placed();
    }

    private Rows<Row> placed() {
        return beside
                ? Rows.below(rowsTop(), chart.rows(), row -> 0, row -> ROW_PX, 0)
                : Rows.below(
                        rowsTop(),
                        chart.rows(),
                        row -> words(row).heightPx() + WORDS_TO_BAND_PX,
                        row -> BAND_PX,
                        STACKED_GAP_PX);
    }

    /** Bands that are all alike are named once. */
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
        return bold(result(row));
    }

    private static String result(Row row) {
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

    private double rowsTop() {
        return head.lines().size() * head.pitchPx() + STATED_PX;
    }

    private RowWords words(Row row) {
        return RowWords.of(row.words(), result(row), size);
    }

    @Override
    double heightPx() {
        return rows.bottom() + AXIS_PX;
    }

    private double x(double percent) {
        return left + (percent - lowPercent) / (100 - lowPercent) * (right - left);
    }

    @Override
    void draw(Canvas canvas) {
        canvas.paragraph(head, 0, 0, Align.START);
        rows.placed().forEach(row -> drawBand(canvas, row.row(), row.middle()));
        drawStated(canvas);
        for (Rows.Placed<Row> row : rows.placed()) {
            drawDot(canvas, row.row(), row.middle());
            drawWords(canvas, row);
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
        canvas.line(new Line2D.Double(x, baseline + 4, x, rows.bottom()), Ink.drop());
        Text words = plain("stated: " + percent(chart.statedShare()));
        canvas.text(words, leftAbout(x, words), baseline, Align.START);
    }

    private void drawDot(Canvas canvas, Row row, double middle) {
        Point2D at = new Point2D.Double(x(100 * row.share()), middle);
        canvas.fill(Marks.disc(at, DOT_RADIUS_PX + 2), Ink.PAPER);
        if (row.accepted()) {
            canvas.fill(Marks.disc(at, DOT_RADIUS_PX), Ink.BLACK);
        } else {
            canvas.draw(Marks.disc(at, DOT_RADIUS_PX - 1), Ink.line(2.4), Ink.BLACK);
        }
    }

    private void drawWords(Canvas canvas, Rows.Placed<Row> placed) {
        Row row = placed.row();
        if (beside) {
            double baseline = placed.middle() + size.textPx() * 0.36;
            canvas.text(plain(row.words()), 0, baseline, Align.START);
            canvas.text(figure(row), size.widthPx(), baseline, Align.END);
        } else {
            words(row).draw(canvas, placed.top());
        }
    }

    private void drawAxis(Canvas canvas) {
        double y = rows.bottom();
        canvas.line(new Line2D.Double(left, y, right, y), Ink.line(1));
        double free = Double.NEGATIVE_INFINITY;
        for (double tick = lowPercent; tick <= 100; tick += STEP_PERCENT) {
            canvas.line(new Line2D.Double(x(tick), y, x(tick), y + TICK_PX), Ink.line(1));
            Text text = plain(String.format(Locale.ROOT, "%.0f", tick));
            double left = leftAbout(x(tick), text);
            if (left >= free) {
                canvas.text(text, left, y + TICK_PX + 16, Align.START);
                free = left + text.widthPx() + BETWEEN_TICKS_PX;
            }
        }
    }

    @Override
    String story() {
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
