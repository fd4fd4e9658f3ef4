package org.limedry.cli.chart;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;

/** The mark at a date that counts. */
final class Diamond {
    static final double REACH_PX = 7;

    private Diamond() {}

    static void draw(Canvas canvas, Point2D at, Color inside) {
        draw(canvas, at, inside, REACH_PX);
    }

    static void draw(Canvas canvas, Point2D at, Color inside, double reachPx) {
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(at.getX(), at.getY() - reachPx);
        diamond.lineTo(at.getX() + reachPx, at.getY());
        diamond.lineTo(at.getX(), at.getY() + reachPx);
        diamond.lineTo(at.getX() - reachPx, at.getY());
        diamond.closePath();
        canvas.fill(diamond, inside);
        canvas.draw(diamond, Ink.line(1.5), Ink.BLACK);
    }

    /** Returns the lines between its corners, for labels to keep off. */
    static List<Line2D> cross(Point2D at) {
        double x = at.getX();
        double y = at.getY();
        return List.of(
                new Line2D.Double(x - REACH_PX, y, x + REACH_PX, y),
                new Line2D.Double(x, y - REACH_PX, x, y + REACH_PX));
    }
}
