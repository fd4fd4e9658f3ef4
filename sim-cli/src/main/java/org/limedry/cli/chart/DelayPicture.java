package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.DelayChart.Point;
import org.limedry.cli.chart.DelayChart.Side;

/** Lays out planned against actual: two lines over the months, framed down to the bars of the causes. */
final class DelayPicture implements Picture {
    private static final int TITLE_BASELINE_PX = 14;
    private static final int PLOT_TOP_PX = 26;
    private static final int MONTHS_PX = 26;
    private static final int HEADING_PX = 24;
    private static final int SUM_PX = 24;
    private static final double WIDEST_NAME_SHARE = 0.5;
    private static final double MARK_PX = 9;

    private final DelayChart chart;
    private final Size size;
    private final TimeScale times;
    private final TimePanel plot;
    private final DelayBars bars;

    DelayPicture(DelayChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.times = new TimeScale(chart.timeline(), size.pick(46, 36), size.pick(666, 346));
        double highest = Stream.of(chart.planned(), chart.actual())
                .flatMap(side -> side.left().stream())
                .mapToDouble(Point::litres)
                .max()
                .orElse(0);
        int bottom = PLOT_TOP_PX + size.pick(128, 164);
        this.plot = new TimePanel(times, ValueScale.fromZero(highest), PLOT_TOP_PX, bottom);
        this.bars = DelayBars.of(chart, size, times, bottom + MONTHS_PX + HEADING_PX);
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return bars.bottom() + SUM_PX;
    }

    @Override
    public String story() {
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
    public void draw(Canvas canvas) {
        List<Point2D> planned = plot.addLine(values(chart.planned()), Ink.dashed(2.4, 8f, 5f));
        List<Point2D> actual = plot.addLine(values(chart.actual()), Ink.line(3.2));
        plot.draw(canvas, size);
        frame(canvas);
        MonthTick.draw(canvas, times, plot.area().getMaxY(), size);
        canvas.text(Text.plain(chart.axis(), size.textPx()).cutTo(size.widthPx()), 0, TITLE_BASELINE_PX, Align.START);
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
        Text text = Text.bold(words, size.textPx()).cutTo(size.widthPx());
        double middle = (bars.left() + bars.right()) / 2;
        double left = Math.max(0, Math.min(middle - text.widthPx() / 2, size.widthPx() - text.widthPx()));
        canvas.boxed(text, left, baseline, Align.START);
    }

    private void names(Canvas canvas, List<Point2D> planned, List<Point2D> actual) {
        LabelPlacer placer = new LabelPlacer(canvas, room());
        placer.avoid(chart.planned(), TimePanel.pieces(planned));
        placer.avoid(chart.actual(), TimePanel.pieces(actual));
        placer.avoid("frame", frameLines());
        Point2D plannedEnd = mark(chart.planned());
        Point2D actualEnd = mark(chart.actual());
        Diamond.draw(canvas, plannedEnd, Ink.PAPER);
        placer.avoid(plannedEnd, Diamond.cross(plannedEnd));
        if (chart.actual().ready().isPresent()) {
            Diamond.draw(canvas, actualEnd, Ink.BLACK);
            placer.avoid(actualEnd, Diamond.cross(actualEnd));
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
        return new Label(
                mark, Paragraph.oneLineOrTwo(words), setting -> around(mark, setting), List.of(mark), Ink.PAPER);
    }

    private static List<Rectangle2D> around(Point2D mark, Paragraph setting) {
        double width = setting.widthPx();
        double height = setting.heightPx();
        double above = mark.getY() - MARK_PX - height;
        double below = mark.getY() + MARK_PX;
        double level = mark.getY() - height / 2;
        double left = mark.getX() - MARK_PX - 3 - width;
        double right = mark.getX() + MARK_PX + 3;
        return Stream.of(
                        new Point2D.Double(right, above),
                        new Point2D.Double(right, level),
                        new Point2D.Double(left, below),
                        new Point2D.Double(left, level),
                        new Point2D.Double(left, above),
                        new Point2D.Double(right, below))
                .<Rectangle2D>map(at -> new Rectangle2D.Double(at.getX(), at.getY(), width, height))
                .toList();
    }

    private Label ofLine(Side side, List<Point2D> line, boolean bold) {
        Text words = new Text(side.name(), size.textPx(), bold).cutTo(WIDEST_NAME_SHARE * times.widthPx());
        CurveSpots spots = new CurveSpots(line, List.of(CurveSpots.Side.ABOVE, CurveSpots.Side.BELOW));
        return new Label(side, Paragraph.oneLineOrTwo(words), spots::of, spots.anchors(), Ink.PAPER);
    }

    private static List<TimedValue> values(Side side) {
        return side.left().stream()
                .map(point -> new TimedValue(point.at(), point.litres()))
                .toList();
    }
}
