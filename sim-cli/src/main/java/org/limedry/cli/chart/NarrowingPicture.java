package org.limedry.cli.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.NarrowingChart.Came;

/** Lays out how a range narrowed: a bar for each forecast under its words, and an upright where the date came. */
final class NarrowingPicture implements Picture {
    private static final double LINE_PX = 24;
    private static final double WORDS_TO_BAR_PX = 7;
    private static final double BAR_PX = 16;
    private static final double GAP_PX = 18;
    private static final double TICK_PX = 5;
    private static final double PROUD_PX = 4;
    private static final double ARROW_PX = 11;
    private static final double ENDS_GAP_PX = 8;
    private static final double CIRCLE_RADIUS_PX = 4.5;
    private static final double DATES_PX = 36;

    private final NarrowingChart chart;
    private final Size size;
    private final List<NarrowingRow> rows;
    private final TimeScale times;
    private final Paragraph head;
    private final Paragraph foot;

    NarrowingPicture(NarrowingChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.rows = chart.rows().stream()
                .map(row -> new NarrowingRow(row, chart.timeline()))
                .toList();
        double leftPx = widest(NarrowingRow::leftWords) + ENDS_GAP_PX;
        double rightPx = widest(NarrowingRow::rightWords) + ENDS_GAP_PX + ARROW_PX;
        this.times = new TimeScale(shown(), (int) Math.ceil(leftPx), (int) Math.floor(size.widthPx() - rightPx));
        this.head = Paragraph.wrapped(Text.bold(chart.what(), size.headPx()), size.widthPx());
        this.foot = Paragraph.wrapped(Text.plain(explained(), size.textPx()), size.widthPx());
    }

    private String explained() {
        boolean issued = chart.rows().stream().anyMatch(row -> row.issued().isPresent());
        return "Bar: one case in five is earlier, one in five later. Thick tick: likely."
                + (issued ? " Circle: the day of a forecast." : "");
    }

    private double widest(Function<NarrowingRow, Optional<String>> words) {
        return rows.stream()
                .flatMap(row -> words.apply(row).stream())
                .mapToDouble(end -> text(end).widthPx())
                .max()
                .orElse(0);
    }

    private Text text(String words) {
        return Text.plain(words, size.textPx());
    }

    /** The whole days from the first to the last thing drawn. */
    private Timeline shown() {
        Timeline run = chart.timeline();
        List<Instant> marks = new ArrayList<>(rows.stream()
                .flatMap(row -> Stream.of(
                        row.earliest(), row.likely(), row.latest(), row.row().issued()))
                .flatMap(Optional::stream)
                .toList());
        chart.came().ifPresent(came -> marks.add(came.at()));
        if (rows.stream().anyMatch(row -> row.latest().isEmpty())) {
            marks.add(run.to());
        }
        Instant first = marks.stream().min(Instant::compareTo).orElse(run.from());
        Instant last = marks.stream().max(Instant::compareTo).orElse(run.to());
        Instant within = last.isAfter(first) ? last.minusNanos(1) : last;
        return new Timeline(
                run.startOf(run.day(first)), run.startOf(run.day(within).plusDays(1)), run.zone());
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    private double rowsTop() {
        return head.lines().size() * head.pitchPx() + (chart.came().isPresent() ? LINE_PX : 0) + WORDS_TO_BAR_PX;
    }

    private RowWords words(NarrowingRow row) {
        return RowWords.of(row.row().words(), row.found(), size);
    }

    private double rowPx(NarrowingRow row) {
        return words(row).heightPx() + (row.earliest().isPresent() ? WORDS_TO_BAR_PX + BAR_PX : 0) + GAP_PX;
    }

    private double axisY() {
        return rowsTop() + rows.stream().mapToDouble(this::rowPx).sum();
    }

    @Override
    public double heightPx() {
        return axisY() + DATES_PX + foot.heightPx() + PROUD_PX;
    }

    @Override
    public void draw(Canvas canvas) {
        canvas.paragraph(head, 0, 0, Align.START);
        double axisY = axisY();
        chart.came().ifPresent(came -> drawCame(canvas, came));
        double top = rowsTop();
        for (NarrowingRow row : rows) {
            words(row).draw(canvas, top);
            if (row.earliest().isPresent()) {
                drawBar(canvas, row, top + words(row).heightPx() + WORDS_TO_BAR_PX + BAR_PX / 2);
            }
            top += rowPx(row);
        }
        canvas.line(new Line2D.Double(times.left(), axisY, times.right(), axisY), Ink.line(1));
        TimeTick.draw(canvas, times, axisY, size);
        rows.forEach(row -> row.row().issued().ifPresent(at -> drawCircle(canvas, times.x(at))));
        chart.came().ifPresent(came -> Diamond.draw(canvas, new Point2D.Double(times.x(came.at()), axisY), Ink.BLACK));
        canvas.paragraph(foot, 0, axisY + DATES_PX, Align.START);
    }

    private String told(Came came) {
        return came.words() + ", " + NarrowingRow.unbroken(chart.timeline().day(came.at()));
    }

    private void drawCame(Canvas canvas, Came came) {
        double x = times.x(came.at());
        Text words = Text.bold(told(came), size.textPx()).cutTo(size.widthPx());
        double left = Math.max(0, Math.min(x - words.widthPx() / 2, size.widthPx() - words.widthPx()));
        double baseline = rowsTop() - WORDS_TO_BAR_PX - 4;
        canvas.line(new Line2D.Double(x, baseline + 4, x, axisY()), Ink.line(2));
        canvas.text(words, left, baseline, Align.START);
    }

    private void drawCircle(Canvas canvas, double x) {
        Ellipse2D circle = new Ellipse2D.Double(
                x - CIRCLE_RADIUS_PX, axisY() - CIRCLE_RADIUS_PX, 2 * CIRCLE_RADIUS_PX, 2 * CIRCLE_RADIUS_PX);
        canvas.fill(circle, Ink.PAPER);
        canvas.draw(circle, Ink.line(1.5), Ink.BLACK);
    }

    private void drawBar(Canvas canvas, NarrowingRow row, double middle) {
        double from = times.x(row.earliest().orElseThrow());
        double to = times.x(row.latest().orElse(chart.timeline().to()));
        Rectangle2D bar = new Rectangle2D.Double(from, middle - BAR_PX / 2, Math.max(1, to - from), BAR_PX);
        canvas.bar(bar, Fill.LIGHT, Ink.line(1.6));
        double arrow = row.latest().isEmpty() ? ARROW_PX : 0;
        if (row.latest().isEmpty()) {
            drawArrow(canvas, to, middle);
        }
        chart.came().ifPresent(came -> {
            double x = times.x(came.at());
            canvas.line(new Line2D.Double(x, bar.getMinY(), x, bar.getMaxY()), Ink.line(2));
        });
        row.likely().ifPresent(at -> {
            double reach = BAR_PX / 2 + PROUD_PX;
            canvas.line(new Line2D.Double(times.x(at), middle - reach, times.x(at), middle + reach), Ink.line(TICK_PX));
        });
        double baseline = middle + size.textPx() * 0.36;
        row.leftWords().ifPresent(words -> canvas.boxed(text(words), from - ENDS_GAP_PX, baseline, Align.END));
        row.rightWords().ifPresent(words -> canvas.boxed(text(words), to + arrow + ENDS_GAP_PX, baseline, Align.START));
    }

    private static void drawArrow(Canvas canvas, double x, double y) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y - ARROW_PX);
        head.lineTo(x + ARROW_PX, y);
        head.lineTo(x, y + ARROW_PX);
        head.closePath();
        canvas.fill(head, Ink.PAPER);
        canvas.draw(head, Ink.line(1.6), Ink.BLACK);
    }

    @Override
    public String story() {
        String forecasts = rows.stream().map(NarrowingRow::story).collect(Collectors.joining(" "));
        return chart.what() + ". " + forecasts
                + chart.came().map(came -> " " + told(came) + ".").orElse("");
    }
}
