package org.limedry.cli.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.limedry.cli.chart.CurveSpots.Side;
import org.limedry.cli.chart.PlotsChart.Line;
import org.limedry.cli.chart.PlotsChart.Plot;
import org.limedry.cli.chart.PlotsChart.Point;

/** One plot of a {@link PlotsChart} with its heading, axes, lines and marks. */
final class PlotArea {
    private static final double LINE_PX = 21;
    private static final double WORDS_GAP_PX = 7;
    private static final double BETWEEN_TICKS_PX = 8;
    private static final double DOT_RADIUS_PX = 3.5;
    private static final double INSIDE_PX = 6;

    /**
     * Where a plot stands, headings and figures included.
     *
     * @param left left edge, px
     * @param top upper edge, px
     * @param widthPx width, px
     */
    record Place(double left, double top, double widthPx) {}

    private final Plot plot;
    private final Size size;
    private final Place place;
    private final ValueScale across;
    private final ValueScale up;
    private final Paragraph heading;
    private final Rectangle2D area;

    PlotArea(Plot plot, Size size, Place place) {
        this.plot = plot;
        this.size = size;
        this.place = place;
        this.across = plot.range() instanceof PlotsChart.Range.Same same
                ? ValueScale.between(same.low(), same.high())
                : ValueScale.between(least(), most());
        this.up = plot.range() instanceof PlotsChart.Range.FromZero zero ? ValueScale.fromZero(zero.highest()) : across;
        this.heading = Paragraph.wrapped(Text.bold(plot.heading(), size.textPx()), place.widthPx());
        double figuresPx = up.ticks().stream()
                .mapToDouble(tick -> words(up, tick).widthPx())
                .max()
                .orElse(0);
        double left = place.left() + figuresPx + WORDS_GAP_PX;
        double top = place.top() + heading.heightPx() + LINE_PX + INSIDE_PX;
        double right = place.left() + place.widthPx() - INSIDE_PX;
        this.area = new Rectangle2D.Double(left, top, right - left, size.pick(170, 190));
    }

    private Stream<Point> points() {
        return Stream.concat(
                plot.lines().stream().flatMap(line -> line.points().stream()),
                plot.dots().stream().map(PlotsChart.Dot::at));
    }

    private double least() {
        return points().mapToDouble(Point::across).min().orElse(0);
    }

    private double most() {
        return points().mapToDouble(Point::across).max().orElse(1);
    }

    /** Returns the lower edge of everything that belongs to the plot. */
    double bottom() {
        return area.getMaxY() + 2 * LINE_PX + INSIDE_PX;
    }

    private Text words(ValueScale scale, double tick) {
        return Text.plain(scale.words(tick), size.textPx());
    }

    private double x(double value) {
        return area.getMinX() + (value - across.low()) / (across.high() - across.low()) * area.getWidth();
    }

    private double y(double value) {
        return area.getMaxY() - (value - up.low()) / (up.high() - up.low()) * area.getHeight();
    }

    private Point2D on(Point point) {
        return new Point2D.Double(x(point.across()), y(point.up()));
    }

    void draw(Canvas canvas) {
        canvas.paragraph(heading, place.left(), place.top(), Align.START);
        Text title = Text.plain(plot.up(), size.textPx());
        canvas.text(title, place.left(), area.getMinY() - INSIDE_PX - 6, Align.START);
        drawGrid(canvas);
        drawAcross(canvas);
        LabelPlacer placer = new LabelPlacer(canvas, area);
        for (int k = 0; k < plot.lines().size(); k++) {
            List<Point2D> run =
                    plot.lines().get(k).points().stream().map(this::on).toList();
            canvas.draw(path(run), Ink.coat(k), Ink.BLACK);
            placer.avoid(plot.lines().get(k), pieces(run));
        }
        plot.dots().forEach(dot -> drawDot(canvas, dot));
        plot.lines().forEach(line -> placer.place(label(line)));
    }

    private void drawGrid(Canvas canvas) {
        for (double tick : up.ticks()) {
            canvas.draw(new Line2D.Double(area.getMinX(), y(tick), area.getMaxX(), y(tick)), Ink.line(1), Ink.GRID);
            Text text = words(up, tick);
            canvas.text(
                    text, area.getMinX() - WORDS_GAP_PX, y(tick) + text.ascentPx() - text.heightPx() / 2, Align.END);
        }
        canvas.line(new Line2D.Double(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMaxY()), Ink.line(1));
        if (plot.range() instanceof PlotsChart.Range.Same) {
            canvas.draw(
                    new Line2D.Double(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMinY()),
                    Ink.line(1),
                    Ink.MIDDLE);
        }
    }

    /** Draws the figures of the horizontal axis as far as they stand clear of each other, and its title. */
    private void drawAcross(Canvas canvas) {
        double baseline = area.getMaxY() + LINE_PX;
        double free = Double.NEGATIVE_INFINITY;
        for (double tick : across.ticks()) {
            Text text = words(across, tick);
            double left = x(tick) - text.widthPx() / 2;
            boolean fits =
                    left >= Math.max(free, place.left()) && left + text.widthPx() <= place.left() + place.widthPx();
            if (fits) {
                canvas.text(text, x(tick), baseline, Align.MIDDLE);
                free = left + text.widthPx() + BETWEEN_TICKS_PX;
            }
        }
        Text title = Text.plain(plot.across(), size.textPx());
        double right = place.left() + place.widthPx();
        canvas.text(title, right, baseline + LINE_PX, Align.END);
    }

    private void drawDot(Canvas canvas, PlotsChart.Dot dot) {
        Point2D at = on(dot.at());
        // White ones are larger, so that one shows round a black one upon it.
        double radius = dot.black() ? DOT_RADIUS_PX - 1.0 : DOT_RADIUS_PX;
        Ellipse2D circle = new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
        canvas.fill(circle, dot.black() ? Ink.BLACK : Ink.PAPER);
        if (!dot.black()) {
            canvas.draw(circle, Ink.line(1), Ink.BLACK);
        }
    }

    private Label label(Line line) {
        List<Point2D> run = fine(line);
        CurveSpots spots = new CurveSpots(run, List.of(Side.ABOVE, Side.BELOW));
        return new Label(
                line,
                Paragraph.oneLineOrTwo(Text.plain(line.name(), size.textPx())),
                spots::of,
                spots.anchors(),
                Ink.PAPER);
    }

    /** Returns points of the line close enough for words to follow it. */
    private List<Point2D> fine(Line line) {
        return pieces(line.points().stream().map(this::on).toList()).stream()
                .map(Line2D::getP1)
                .toList();
    }

    private static List<Line2D> pieces(List<Point2D> run) {
        return Stream.iterate(1, k -> k < run.size(), k -> k + 1)
                .flatMap(k -> between(run.get(k - 1), run.get(k)))
                .toList();
    }

    private static Stream<Line2D> between(Point2D from, Point2D to) {
        int parts = (int) Math.max(1, Math.ceil(from.distance(to) / 4));
        return Stream.iterate(0, k -> k < parts, k -> k + 1)
                .map(k -> new Line2D.Double(along(from, to, (double) k / parts), along(from, to, (k + 1.0) / parts)));
    }

    private static Point2D along(Point2D from, Point2D to, double share) {
        return new Point2D.Double(
                from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
    }

    private static Path2D path(List<Point2D> run) {
        Path2D path = new Path2D.Double();
        path.moveTo(run.get(0).getX(), run.get(0).getY());
        run.subList(1, run.size()).forEach(point -> path.lineTo(point.getX(), point.getY()));
        return path;
    }
}
