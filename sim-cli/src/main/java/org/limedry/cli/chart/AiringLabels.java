package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.AiringChart.Line;
import org.limedry.cli.chart.AiringChart.Spot;

/**
 * The words in an airing chart, and where they may stand.
 *
 * @param size size of the drawing
 * @param scales where things lie
 */
record AiringLabels(Size size, AiringScales scales) {
    private static final double BESIDE_PX = 6;
    private static final double STEP_PX = 6;
    private static final double ABOVE_TOP_PX = 5;
    private static final double WIDEST_SHARE = 0.9;

    /** The name of a line, along it. */
    Label name(Line line) {
        CurveSpots spots = new CurveSpots(scales.course(line), List.of(CurveSpots.Side.ABOVE, CurveSpots.Side.BELOW));
        return new Label(line, settings(line.name(), true), spots::of, spots.anchors(), Ink.PAPER);
    }

    /** What to say of a wait that does not end: over the plot, beside its arrow. */
    Label endless(Line line) {
        List<Point2D> arrows = line.points().stream()
                .filter(point -> point.weeks().isEmpty())
                .map(scales::place)
                .toList();
        double y = scales.area().getMinY() - ABOVE_TOP_PX;
        Function<Paragraph, List<Rectangle2D>> spots = setting -> Stream.concat(
                        arrows.stream().map(at -> at.getX() + 2 * BESIDE_PX),
                        arrows.stream().map(at -> at.getX() - 2 * BESIDE_PX - setting.widthPx()))
                .map(left -> box(left, y - setting.heightPx(), setting))
                .toList();
        return new Label(line, settings(line.endless(), false), spots, arrows, Ink.PAPER);
    }

    /** Beside an upright, from the top down. */
    Label beside(Spot spot, Line2D upright) {
        double x = upright.getX1();
        Function<Paragraph, List<Rectangle2D>> spots = setting -> heights(setting)
                .boxed()
                .flatMap(y -> Stream.of(x + BESIDE_PX, x - BESIDE_PX - setting.widthPx())
                        .map(left -> box(left, y, setting)))
                .toList();
        return new Label(spot, settings(spot.words(), true), spots, List.of(upright.getP1()), Ink.PAPER);
    }

    /** In a zone, from its foot up, or across its edge where it is narrow. */
    Label inside(String words, Rectangle2D zone) {
        Function<Paragraph, List<Rectangle2D>> spots = setting -> {
            double foot = zone.getMaxY() - BESIDE_PX - setting.heightPx();
            double left = Math.max(
                    scales.area().getMinX() + BESIDE_PX,
                    Math.min(
                            zone.getCenterX() - setting.widthPx() / 2,
                            scales.area().getMaxX() - BESIDE_PX - setting.widthPx()));
            return DoubleStream.iterate(foot, y -> y >= scales.area().getMinY(), y -> y - STEP_PX)
                    .boxed()
                    .flatMap(y -> Stream.of(left, zone.getMinX() + BESIDE_PX).map(x -> box(x, y, setting)))
                    .toList();
        };
        Point2D middle = new Point2D.Double(zone.getCenterX(), zone.getCenterY());
        return new Label(words, settings(words, true), spots, List.of(middle), Ink.PAPER);
    }

    /** Near a place on a line. */
    Label near(Spot spot, Line line) {
        double x = scales.x(spot.m3PerHour());
        Point2D at = new Point2D.Double(x, scales.heightAt(line, spot.m3PerHour()));
        List<Point2D> around = scales.course(line).stream()
                .filter(point -> Math.abs(point.getX() - x) < scales.area().getWidth() / 8)
                .toList();
        CurveSpots spots = new CurveSpots(around, List.of(CurveSpots.Side.ABOVE, CurveSpots.Side.BELOW));
        return new Label(spot, settings(spot.words(), false), spots::of, List.of(at), Ink.PAPER);
    }

    private List<Paragraph> settings(String words, boolean bold) {
        double widestPx = WIDEST_SHARE * scales.area().getWidth();
        Text text = new Text(words, size.textPx(), bold);
        Paragraph narrow = Paragraph.wrapped(text, widestPx / 2);
        return Stream.concat(Paragraph.oneLineOrTwo(text.cutTo(2 * widestPx)).stream(), Stream.of(narrow))
                .filter(setting -> setting.widthPx() <= widestPx)
                .toList();
    }

    private DoubleStream heights(Paragraph setting) {
        double first = scales.area().getMinY() + BESIDE_PX;
        double last = scales.area().getMaxY() - BESIDE_PX - setting.heightPx();
        return DoubleStream.iterate(first, y -> y <= last, y -> y + STEP_PX);
    }

    private static Rectangle2D box(double left, double top, Paragraph setting) {
        return new Rectangle2D.Double(left, top, setting.widthPx(), setting.heightPx());
    }
}
