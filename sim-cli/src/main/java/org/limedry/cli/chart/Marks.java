package org.limedry.cli.chart;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The marks that stand on lines and bars. */
final class Marks {
    static final double DIAMOND_PX = 7;
    private static final double LIKELY_PX = 5;
    private static final double PROUD_PX = 4;
    private static final double OUTLINE_PX = 1.6;

    private Marks() {}

    /** Returns the open line through the points; there must be one. */
    static Path2D path(List<Point2D> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).getX(), points.get(0).getY());
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.getX(), point.getY()));
        return path;
    }

    /** Returns the area between two lines that run the same way. */
    static Path2D between(List<Point2D> upper, List<Point2D> lower) {
        Path2D area = path(upper);
        for (int i = lower.size() - 1; i >= 0; i--) {
            area.lineTo(lower.get(i).getX(), lower.get(i).getY());
        }
        area.closePath();
        return area;
    }

    static Ellipse2D disc(Point2D at, double radiusPx) {
        return new Ellipse2D.Double(at.getX() - radiusPx, at.getY() - radiusPx, 2 * radiusPx, 2 * radiusPx);
    }

    /** Draws the mark at a date that counts. */
    static void diamond(Canvas canvas, Point2D at, Color inside) {
        diamond(canvas, at, inside, DIAMOND_PX);
    }

    static void diamond(Canvas canvas, Point2D at, Color inside, double reachPx) {
        double x = at.getX();
        double y = at.getY();
        Path2D diamond = path(List.of(
                new Point2D.Double(x, y - reachPx),
                new Point2D.Double(x + reachPx, y),
                new Point2D.Double(x, y + reachPx),
                new Point2D.Double(x - reachPx, y)));
        diamond.closePath();
        canvas.fill(diamond, inside);
        canvas.draw(diamond, Ink.line(1.5), Ink.BLACK);
    }

    /** Returns the lines between the corners of a diamond, for labels to keep off. */
    static List<Line2D> cross(Point2D at) {
        double x = at.getX();
        double y = at.getY();
        return List.of(
                new Line2D.Double(x - DIAMOND_PX, y, x + DIAMOND_PX, y),
                new Line2D.Double(x, y - DIAMOND_PX, x, y + DIAMOND_PX));
    }

    /** Draws the thick tick at the likely value of a bar that lies along a row. */
    static void likely(Canvas canvas, double x, double middle, double barPx) {
        double reach = barPx / 2 + PROUD_PX;
        canvas.line(new Line2D.Double(x, middle - reach, x, middle + reach), Ink.line(LIKELY_PX));
    }

    /** Draws a range along a row. */
    static void range(Canvas canvas, Rectangle2D bar, Fill fill) {
        canvas.bar(bar, fill, Ink.line(OUTLINE_PX));
    }

    /** Draws the white head of a bar that goes on to the right, past the picture. */
    static void goesOn(Canvas canvas, Point2D from, double halfPx, double lengthPx) {
        double x = from.getX();
        double y = from.getY();
        head(
                canvas,
                new Point2D.Double(x, y - halfPx),
                new Point2D.Double(x + lengthPx, y),
                new Point2D.Double(x, y + halfPx));
    }

    /** Draws the white head of a bar that goes on upward. */
    static void goesUp(Canvas canvas, Point2D from, double halfPx) {
        double x = from.getX();
        double y = from.getY();
        head(
                canvas,
                new Point2D.Double(x - halfPx, y),
                new Point2D.Double(x, y - halfPx),
                new Point2D.Double(x + halfPx, y));
    }

    private static void head(Canvas canvas, Point2D left, Point2D tip, Point2D right) {
        Path2D head = path(List.of(left, tip, right));
        head.closePath();
        canvas.fill(head, Ink.PAPER);
        canvas.draw(head, Ink.line(OUTLINE_PX), Ink.BLACK);
    }
}
