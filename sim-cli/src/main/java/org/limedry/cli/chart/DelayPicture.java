package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.DelayChart.Cause;
import org.limedry.cli.chart.DelayChart.Point;
import org.limedry.cli.chart.DelayChart.Side;

/** Lays out planned against actual: two lines over the months, framed down to the bars of the causes. */
final class DelayPicture extends Picture {
    private static final int TITLE_BASELINE_PX = 14;
    private static final int PLOT_TOP_PX = 26;
    private static final int MONTHS_PX = 26;
    private static final int HEADING_PX = 24;
    private static final int SUM_PX = 24;
    private static final double WIDEST_NAME_SHARE = 0.5;
    private static final double MARK_PX = 9;

    private final DelayChart chart;
    private final TimeScale times;
    private final TimePanel plot;
    private final Bars bars;

    DelayPicture(DelayChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.times = new TimeScale(chart.timeline(), size.pick(46, 36), size.pick(666, 346));
        double highest = Stream.of(chart.planned(), chart.actual())
                .flatMap(side -> side.left().stream())
                .mapToDouble(Point::litres)
                .max()
                .orElse(0);
        int bottom = PLOT_TOP_PX + size.pick(128, 164);
        this.plot = new TimePanel(times, ValueScale.fromZero(highest), PLOT_TOP_PX, bottom);
        this.bars = Bars.of(chart, size, times, bottom + MONTHS_PX + HEADING_PX);
    }

    @Override
    double heightPx() {
        return bars.bottom() + SUM_PX;
    }

    @Override
    String story() {
        String shares = chart.causes().stream()
                .map(cause -> cause.words() + ": " + cause.figure())
                .collect(Collectors.joining("; ", " " + chart.heading() + ": ", "."));
        return chart.axis() + ". " + side(chart.planned()) + " " + side(chart.actual())
                + (chart.causes().isEmpty() ? "" : shares) + " " + chart.sum() + ".";
    }

    private static String side(Side side) {
        return side.name() + ", " + side.readyWords() + ".";
    }

    @Override
    void draw(Canvas canvas) {
        List<Point2D> planned = plot.addTimes(values(chart.planned()), Ink.dashed(2.4, 8f, 5f));
        List<Point2D> actual = plot.addTimes(values(chart.actual()), Ink.line(3.2));
        plot.draw(canvas, size);
        frame(canvas);
        TimeTick.drawMonths(canvas, times, plot.area().getMaxY(), size);
        canvas.text(plain(chart.axis()).cutTo(size.widthPx()), 0, TITLE_BASELINE_PX, Align.START);
        double headingBaseline = plot.area().getMaxY() + MONTHS_PX + HEADING_PX - 9;
        centred(canvas, chart.heading(), headingBaseline);
        bars.draw(canvas);
        centred(canvas, chart.sum(), bars.bottom() + SUM_PX - 6);
        names(canvas, planned, actual);
    }

    private void frame(Canvas canvas) {
        frameLines().forEach(line -> canvas.line(line, Ink.dashed(1.2, 2f, 3f)));
    }

    /** Returns the lines from both marks down to the last bar. */
    private List<Line2D> frameLines() {
        return Stream.of(chart.planned(), chart.actual())
                .filter(side -> side.ready().isPresent())
                .map(this::mark)
                .<Line2D>map(mark -> new Line2D.Double(mark.getX(), mark.getY(), mark.getX(), bars.bottom()))
                .toList();
    }

    private void centred(Canvas canvas, String words, double baseline) {
        Text text = bold(words).cutTo(size.widthPx());
        double middle = (bars.left() + bars.right()) / 2;
        canvas.boxed(text, leftAbout(middle, text), baseline, Align.START);
    }

    private void names(Canvas canvas, List<Point2D> planned, List<Point2D> actual) {
        LabelPlacer placer = new LabelPlacer(canvas, room());
        placer.avoid(chart.planned(), Panel.pieces(planned));
        placer.avoid(chart.actual(), Panel.pieces(actual));
        placer.avoid("frame", frameLines());
        Point2D plannedEnd = mark(chart.planned());
        Point2D actualEnd = mark(chart.actual());
        Marks.diamond(canvas, plannedEnd, Ink.PAPER);
        placer.avoid(plannedEnd, Marks.cross(plannedEnd));
        if (chart.actual().ready().isPresent()) {
            Marks.diamond(canvas, actualEnd, Ink.BLACK);
            placer.avoid(actualEnd, Marks.cross(actualEnd));
        }
        placer.place(atMark(chart.planned(), plannedEnd, false));
        placer.place(atMark(chart.actual(), actualEnd, true));
        placer.place(ofLine(chart.planned(), planned, false));
        placer.place(ofLine(chart.actual(), actual, true));
    }

    private Rectangle2D room() {
        Rectangle2D area = plot.area();
        double left = area.getMinX() + 3;
        return new Rectangle2D.Double(left, area.getMinY(), size.widthPx() - left, area.getHeight() - 3);
    }

    private Point2D mark(Side side) {
        List<TimedValue> line = values(side);
        Instant at = side.ready().orElse(line.get(line.size() - 1).at());
        OptionalDouble litres = TimedValue.between(line, at);
        return plot.place(
                new TimedValue(at, litres.orElse(line.get(line.size() - 1).value())));
    }

    private Label atMark(Side side, Point2D mark, boolean bold) {
        Text words = new Text(side.readyWords(), size.textPx(), bold).cutTo(WIDEST_NAME_SHARE * times.widthPx());
        return new Label(mark, Paragraph.oneLineOrTwo(words), setting -> around(mark, setting), List.of(mark));
    }

    private static List<Rectangle2D> around(Point2D mark, Paragraph setting) {
        double above = mark.getY() - MARK_PX - setting.heightPx();
        double below = mark.getY() + MARK_PX;
        double level = mark.getY() - setting.heightPx() / 2;
        double left = mark.getX() - MARK_PX - 3 - setting.widthPx();
        double right = mark.getX() + MARK_PX + 3;
        return List.of(
                setting.boxAt(right, above),
                setting.boxAt(right, level),
                setting.boxAt(left, below),
                setting.boxAt(left, level),
                setting.boxAt(left, above),
                setting.boxAt(right, below));
    }

    private Label ofLine(Side side, List<Point2D> line, boolean bold) {
        Text words = new Text(side.name(), size.textPx(), bold).cutTo(WIDEST_NAME_SHARE * times.widthPx());
        return Label.along(side, Paragraph.oneLineOrTwo(words), line, Label.Side.ABOVE);
    }

    private static List<TimedValue> values(Side side) {
        return side.left().stream()
                .map(point -> new TimedValue(point.at(), point.litres()))
                .toList();
    }

    /**
     * The stairs of causes: each bar begins where the last ended, on the time axis from the planned ready date on.
     *
     * @param rows from the top
     * @param left left end of all bars, px
     * @param right right end of all bars, px
     * @param bottom under the last row, px
     */
    private record Bars(List<Row> rows, double left, double right, double bottom) {
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

        Bars {
            rows = List.copyOf(rows);
        }

        /** One cause in its row. */
        private record Row(
                Rectangle2D bar, Fill fill, Text words, double x, double baseline, Text figure, double figureX) {}

        static Bars of(DelayChart chart, Size size, TimeScale times, double top) {
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
            return new Bars(rows, left, right, y);
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
            Rectangle2D lower =
                    new Rectangle2D.Double(bar.getX(), bar.getY() + WORDS_PX, bar.getWidth(), bar.getHeight());
            boolean inside = figure.widthPx() <= bar.getWidth() - 2 * GAP_PX;
            boolean before = bar.getMinX() > size.widthPx() - bar.getMaxX();
            double beside = before ? bar.getMinX() - GAP_PX - figure.widthPx() : bar.getMaxX() + GAP_PX;
            double within = Math.max(0, Math.min(beside, size.widthPx() - figure.widthPx()));
            double x = inside ? bar.getCenterX() - figure.widthPx() / 2 : within;
            return new Row(lower, fill, fitting, left, bar.getY() + words.ascentPx(), figure, x);
        }

        /** The smallest type is for a line that would else be cut. */
        private static Text smaller(Cause cause, Size size) {
            return Text.plain(cause.words(), size.pick(size.textPx(), SMALLEST_PX))
                    .cutTo(size.widthPx());
        }

        void draw(Canvas canvas) {
            for (Row row : rows) {
                // A share too small to be seen is a line.
                if (row.bar().getWidth() < 1.5) {
                    double x = row.bar().getCenterX();
                    canvas.line(
                            new Line2D.Double(
                                    x, row.bar().getMinY(), x, row.bar().getMaxY()),
                            Ink.line(2));
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
}
