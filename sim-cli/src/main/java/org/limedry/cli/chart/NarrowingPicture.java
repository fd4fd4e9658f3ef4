package org.limedry.cli.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.NarrowingChart.Came;
import org.limedry.cli.chart.NarrowingChart.Row;

/** Lays out how a range narrowed: a bar for each forecast under its words, and an upright where the date came. */
final class NarrowingPicture extends Picture {
    private static final double LINE_PX = 24;
    private static final double WORDS_TO_BAR_PX = 7;
    private static final double BAR_PX = 16;
    private static final double GAP_PX = 18;
    private static final double PROUD_PX = 4;
    private static final double ARROW_PX = 11;
    private static final double ENDS_GAP_PX = 8;
    private static final double CIRCLE_RADIUS_PX = 4.5;
    private static final double DATES_PX = 36;

    private final NarrowingChart chart;
    private final List<Forecast> rows;
    private final TimeScale times;
    private final Paragraph head;
    private final Paragraph foot;
    private final Rows<Forecast> placed;

    NarrowingPicture(NarrowingChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.rows = chart.rows().stream()
                .map(row -> new Forecast(row, chart.timeline()))
                .toList();
        double leftPx = widest(Forecast::leftWords) + ENDS_GAP_PX;
        double rightPx = widest(Forecast::rightWords) + ENDS_GAP_PX + ARROW_PX;
        this.times = new TimeScale(shown(), (int) Math.ceil(leftPx), (int) Math.floor(size.widthPx() - rightPx));
        this.head = Paragraph.wrapped(Text.bold(chart.what(), size.headPx()), size.widthPx());
        this.foot = Paragraph.wrapped(plain(explained()), size.widthPx());
        this.placed = place();
    }

    private String explained() {
        boolean issued = chart.rows().stream().anyMatch(row -> row.issued().isPresent());
        return "Bar: one case in five is earlier, one in five later. Thick tick: likely."
                + (issued ? " Circle: the day of a forecast." : "");
    }

    private double widest(Function<Forecast, Optional<String>> words) {
        return rows.stream()
                .flatMap(row -> words.apply(row).stream())
                .mapToDouble(end -> plain(end).widthPx())
                .max()
                .orElse(0);
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

    private double rowsTop() {
        return head.lines().size() * head.pitchPx() + (chart.came().isPresent() ? LINE_PX : 0) + WORDS_TO_BAR_PX;
    }

    private RowWords words(Forecast row) {
        return RowWords.of(row.row().words(), row.outcome(), size);
    }

    private static double barPx(Forecast row, double px) {
        return row.earliest().isPresent() ? px : 0;
    }

    private Rows<Forecast> place() {
        return Rows.below(
                rowsTop(),
                rows,
                row -> words(row).heightPx() + barPx(row, WORDS_TO_BAR_PX),
                row -> barPx(row, BAR_PX),
                GAP_PX);
    }

    private double axisY() {
        return placed.bottom();
    }

    @Override
    double heightPx() {
        return axisY() + DATES_PX + foot.heightPx() + PROUD_PX;
    }

    @Override
    void draw(Canvas canvas) {
        canvas.paragraph(head, 0, 0, Align.START);
        double axisY = axisY();
        chart.came().ifPresent(came -> drawCame(canvas, came));
        for (Rows.Placed<Forecast> row : placed.placed()) {
            words(row.row()).draw(canvas, row.top());
            if (row.row().earliest().isPresent()) {
                drawBar(canvas, row.row(), row.middle());
            }
        }
        canvas.line(new Line2D.Double(times.left(), axisY, times.right(), axisY), Ink.line(1));
        TimeTick.draw(canvas, times, axisY, size);
        rows.forEach(row -> row.row().issued().ifPresent(at -> drawCircle(canvas, times.x(at))));
        chart.came().ifPresent(came -> Marks.diamond(canvas, new Point2D.Double(times.x(came.at()), axisY), Ink.BLACK));
        canvas.paragraph(foot, 0, axisY + DATES_PX, Align.START);
    }

    private String sentence(Came came) {
        return came.words() + ", " + DateWords.unbroken(chart.timeline().day(came.at()));
    }

    private void drawCame(Canvas canvas, Came came) {
        double x = times.x(came.at());
        Text words = bold(sentence(came)).cutTo(size.widthPx());
        double baseline = rowsTop() - WORDS_TO_BAR_PX - 4;
        canvas.line(new Line2D.Double(x, baseline + 4, x, axisY()), Ink.line(2));
        canvas.text(words, leftAbout(x, words), baseline, Align.START);
    }

    private void drawCircle(Canvas canvas, double x) {
        Ellipse2D circle = Marks.disc(new Point2D.Double(x, axisY()), CIRCLE_RADIUS_PX);
        canvas.fill(circle, Ink.PAPER);
        canvas.draw(circle, Ink.line(1.5), Ink.BLACK);
    }

    private void drawBar(Canvas canvas, Forecast row, double middle) {
        double from = times.x(row.earliest().orElseThrow());
        double to = times.x(row.latest().orElse(chart.timeline().to()));
        Rectangle2D bar = new Rectangle2D.Double(from, middle - BAR_PX / 2, Math.max(1, to - from), BAR_PX);
        Marks.range(canvas, bar, Fill.LIGHT);
        double arrow = row.latest().isEmpty() ? ARROW_PX : 0;
        if (row.latest().isEmpty()) {
            Marks.goesOn(canvas, new Point2D.Double(to, middle), ARROW_PX, ARROW_PX);
        }
        chart.came().ifPresent(came -> {
            double x = times.x(came.at());
            canvas.line(new Line2D.Double(x, bar.getMinY(), x, bar.getMaxY()), Ink.line(2));
        });
        row.likely().ifPresent(at -> Marks.likely(canvas, times.x(at), middle, BAR_PX));
        double baseline = middle + size.textPx() * 0.36;
        row.leftWords().ifPresent(words -> canvas.boxed(plain(words), from - ENDS_GAP_PX, baseline, Align.END));
        row.rightWords()
                .ifPresent(words -> canvas.boxed(plain(words), to + arrow + ENDS_GAP_PX, baseline, Align.START));
    }

    @Override
    String story() {
        String forecasts = rows.stream().map(Forecast::story).collect(Collectors.joining(" "));
        return chart.what() + ". " + forecasts
                + chart.came().map(came -> " " + sentence(came) + ".").orElse("");
    }

    /** Says one forecast of a {@link NarrowingChart} in words; dates past the end of the run count as not known. */
    record Forecast(Row row, Timeline run) {
        Optional<Instant> earliest() {
            return inRun(row.range().earliest());
        }

        Optional<Instant> likely() {
            return inRun(row.range().likely());
        }

        Optional<Instant> latest() {
            return inRun(row.range().latest());
        }

        private Optional<Instant> inRun(Optional<Instant> date) {
            return new ReadyWords(run).inRun(date);
        }

        /** Returns the likely date and how wide the range is. */
        String outcome() {
            return earliest()
                    .map(from -> likely().map(at -> "likely " + day(at)).orElse("likely after " + end()) + ", "
                            + width(from))
                    .orElse("not by " + end() + ", the end of the run");
        }

        private String width(Instant from) {
            long days = ChronoUnit.DAYS.between(
                    run.day(from), latest().map(run::day).orElse(run.lastDay()));
            if (latest().isEmpty()) {
                return days == 0 ? "its end after " + end() : "over " + count(days) + " wide";
            }
            return days == 0 ? "within a day" : count(days) + " wide";
        }

        private static String count(long days) {
            return days + (days == 1 ? " day" : " days");
        }

        /** Returns the words for the left end of the bar; none where there is no bar. */
        Optional<String> leftWords() {
            return earliest().map(this::day);
        }

        /** Returns the words for the right end of the bar; none where there is no bar. */
        Optional<String> rightWords() {
            return earliest().map(from -> latest().map(this::day).orElse("after " + end()));
        }

        String story() {
            String ends = earliest()
                    .map(from -> ", from " + day(from) + " to "
                            + latest().map(this::day).orElse("after " + end()))
                    .orElse("");
            return row.words() + ": " + outcome() + ends + ".";
        }

        private String end() {
            return DateWords.unbroken(run.lastDay());
        }

        private String day(Instant at) {
            return DateWords.unbroken(run.day(at));
        }
    }
}
