package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.limedry.cli.chart.AiringChart.Line;
import org.limedry.cli.chart.AiringChart.Point;
import org.limedry.cli.chart.AiringChart.Spot;

/** Draws the airing chart. */
final class AiringPicture implements Picture {
    private static final int HEIGHT_PX = 464;
    private static final int TITLE_BASELINE_PX = 16;
    private static final int TOP_PX = 32;
    private static final int TOP_UNDER_ARROWS_PX = 58;
    private static final int BOTTOM_PX = 352;
    private static final int WORDS_LEFT_PX = 8;
    private static final double DIAMOND_PX = 5;
    private static final double ARROW_PX = 16;
    private static final Color BAND = new Color(0, 0, 0, 26);
    private static final Color BAND_EDGE = new Color(0x555555);

    private final AiringChart chart;
    private final Size size;
    private final AiringScales scales;

    AiringPicture(AiringChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        int left = size.pick(48, 30);
        int top = chart.isEndless() ? TOP_UNDER_ARROWS_PX : TOP_PX;
        this.scales =
                AiringScales.of(chart, new Rectangle2D.Double(left, top, size.pick(670, 348) - left, BOTTOM_PX - top));
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return HEIGHT_PX;
    }

    @Override
    public String story() {
        return new AiringStory(chart).words();
    }

    @Override
    public void draw(Canvas canvas) {
        zones(canvas);
        frame(canvas);
        chart.lines().forEach(line -> band(canvas, line));
        chart.marks().doThis().ifPresent(spot -> canvas.line(upright(spot), Ink.dashed(1.4, 2f, 3f)));
        chart.lines().forEach(line -> line(canvas, line));
        new AiringAxis(chart, size, scales).draw(canvas);
        labels(canvas);
    }

    private Rectangle2D area() {
        return scales.area();
    }

    private void zones(Canvas canvas) {
        nothingZone().ifPresent(zone -> {
            Hatching.fill(canvas, zone, Fill.LIGHT);
            canvas.draw(zone, Ink.line(0.8), Ink.FRAME);
        });
        chart.marks().tooFast().ifPresent(spot -> Hatching.fill(canvas, tooFastZone(spot), Fill.DOTS));
    }

    private Optional<Rectangle2D> nothingZone() {
        OptionalDouble until = chart.marks().nothingUntil();
        return until.isEmpty()
                ? Optional.empty()
                : Optional.of(new Rectangle2D.Double(
                        area().getMinX(),
                        area().getMinY(),
                        Math.min(scales.x(until.getAsDouble()), area().getMaxX()) - area().getMinX(),
                        area().getHeight()));
    }

    /** Under the line it concerns, from the lowest point that the line has there. */
    private Rectangle2D tooFastZone(Spot spot) {
        double left = scales.x(spot.m3PerHour());
        double top = scales.course(chart.lines().get(spot.line())).stream()
                .filter(at -> at.getX() >= left - 1.0)
                .mapToDouble(Point2D::getY)
                .max()
                .orElse(area().getMinY());
        return new Rectangle2D.Double(left, top, area().getMaxX() - left, area().getMaxY() - top);
    }

    private void frame(Canvas canvas) {
        double left = area().getMinX();
        for (double tick : scales.weeks().ticks()) {
            double y = scales.y(OptionalDouble.of(tick));
            canvas.draw(
                    new Line2D.Double(left, y, area().getMaxX(), y), Ink.line(1), tick == 0.0 ? Ink.BLACK : Ink.GRID);
            Text text = Text.plain(scales.weeks().words(tick), size.textPx());
            canvas.text(text, left - WORDS_LEFT_PX, y + text.ascentPx() - text.heightPx() / 2, Align.END);
        }
        canvas.text(Text.plain(chart.waited(), size.textPx()).cutTo(widthPx()), 0, TITLE_BASELINE_PX, Align.START);
    }

    private void band(Canvas canvas, Line line) {
        List<Point> points = line.points().stream()
                .filter(point -> point.earliest().isPresent())
                .toList();
        if (points.size() < 2) {
            return;
        }
        Path2D lower =
                path(points.stream().map(point -> edge(point, point.earliest())).toList());
        Path2D upper =
                path(points.stream().map(point -> edge(point, point.latest())).toList());
        Path2D band = new Path2D.Double(lower);
        List<Point2D> back = IntStream.range(0, points.size())
                .mapToObj(i -> points.get(points.size() - 1 - i))
                .map(point -> edge(point, point.latest()))
                .toList();
        back.forEach(at -> band.lineTo(at.getX(), at.getY()));
        band.closePath();
        canvas.fill(band, BAND);
        BasicStroke edge = line.heated() ? Ink.line(1) : Ink.dashed(1, 2f, 3f);
        canvas.draw(lower, edge, BAND_EDGE);
        canvas.draw(upper, edge, BAND_EDGE);
    }

    private Point2D edge(Point point, OptionalDouble weeks) {
        return new Point2D.Double(scales.x(point.m3PerHour()), scales.y(weeks));
    }

    private void line(Canvas canvas, Line line) {
        canvas.draw(path(line.points().stream().map(scales::place).toList()), stroke(line), Ink.BLACK);
        for (Point point : line.points()) {
            if (point.weeks().isPresent()) {
                Diamond.draw(canvas, scales.place(point), line.heated() ? Ink.BLACK : Ink.PAPER, DIAMOND_PX);
            } else {
                arrow(canvas, scales.place(point));
            }
        }
    }

    private BasicStroke stroke(Line line) {
        int n = chart.lines().indexOf(line);
        return line.heated() ? (n == 0 ? Ink.line(3.4) : Ink.line(1.8)) : Ink.dashed(2.6, 9f, 6f);
    }

    private static void arrow(Canvas canvas, Point2D at) {
        canvas.line(new Line2D.Double(at.getX(), at.getY() - 2, at.getX(), at.getY() - ARROW_PX + 4), Ink.line(2));
        Path2D head = path(List.of(
                new Point2D.Double(at.getX() - 5, at.getY() - ARROW_PX + 8),
                new Point2D.Double(at.getX(), at.getY() - ARROW_PX),
                new Point2D.Double(at.getX() + 5, at.getY() - ARROW_PX + 8)));
        head.closePath();
        canvas.fill(head, Ink.BLACK);
    }

    private void labels(Canvas canvas) {
        AiringLabels labels = new AiringLabels(size, scales);
        LabelPlacer placer = new LabelPlacer(
                canvas, new Rectangle2D.Double(area().getMinX() + 2, 24, area().getWidth() - 2, BOTTOM_PX - 28));
        for (Line line : chart.lines()) {
            placer.avoid(line, TimePanel.pieces(scales.course(line)));
            line.points().forEach(point -> placer.avoid(line, Diamond.cross(scales.place(point))));
        }
        chart.marks().doThis().ifPresent(spot -> placer.avoid(spot, List.of(upright(spot))));
        chart.lines().stream()
                .filter(line -> !line.endless().isEmpty())
                .forEach(line -> placer.place(labels.endless(line)));
        chart.marks().doThis().ifPresent(spot -> placer.place(labels.beside(spot, upright(spot))));
        chart.lines().forEach(line -> placer.place(labels.name(line)));
        chart.marks().tooFast().ifPresent(spot -> placer.place(labels.inside(spot.words(), tooFastZone(spot))));
        chart.marks()
                .slower()
                .ifPresent(spot -> placer.place(labels.near(spot, chart.lines().get(spot.line()))));
        nothingZone().ifPresent(zone -> placer.place(labels.inside("does nothing", zone)));
    }

    private Line2D upright(Spot spot) {
        double x = scales.x(spot.m3PerHour());
        return new Line2D.Double(x, area().getMinY(), x, area().getMaxY());
    }

    private static Path2D path(List<Point2D> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).getX(), points.get(0).getY());
        points.stream().skip(1).forEach(at -> path.lineTo(at.getX(), at.getY()));
        return path;
    }
}
