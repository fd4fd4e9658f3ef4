package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Draws fills line by line: a pattern kept as a picture would blur in print. */
final class Hatching {
    private static final double LIGHT_PITCH_PX = 9;
    private static final double HEAVY_PITCH_PX = 7;
    private static final double CROSS_PITCH_PX = 8 / Math.sqrt(2);
    private static final double DOT_PITCH_PX = 8;
    private static final double DOT_RADIUS_PX = 1.4;

    private Hatching() {}

    static void fill(Canvas canvas, Rectangle2D area, Fill fill) {
        canvas.fill(area, fill == Fill.GREY ? Ink.TINT : Ink.PAPER);
        switch (fill) {
            case WHITE, GREY -> {}
            case LIGHT -> falling(canvas, area, new Lines(LIGHT_PITCH_PX, Ink.line(1.2), Ink.MIDDLE));
            case HEAVY -> rising(canvas, area, new Lines(HEAVY_PITCH_PX, Ink.line(2.6), Ink.BLACK));
            case CROSS -> {
                falling(canvas, area, new Lines(CROSS_PITCH_PX, Ink.line(1), Ink.DARK));
                rising(canvas, area, new Lines(CROSS_PITCH_PX, Ink.line(1), Ink.DARK));
            }
            case DOTS -> dots(canvas, area);
        }
    }

    /** Lines at 45 degrees, a pitch apart across themselves. */
    private record Lines(double pitchPx, BasicStroke stroke, Color color) {
        /** Along an edge they are further apart than across. */
        double stepPx() {
            return pitchPx * Math.sqrt(2);
        }

        void draw(Canvas canvas, Line2D line) {
            canvas.draw(line, stroke, color);
        }
    }

    /** Each line is {@code y - top = x - left - c}, cut to the area. */
    private static void falling(Canvas canvas, Rectangle2D area, Lines lines) {
        double width = area.getWidth();
        double height = area.getHeight();
        for (double c = lines.stepPx() / 2 - height; c < width; c += lines.stepPx()) {
            double from = Math.max(0, c);
            double to = Math.min(width, c + height);
            if (to > from) {
                lines.draw(
                        canvas,
                        new Line2D.Double(
                                area.getX() + from, area.getY() + from - c, area.getX() + to, area.getY() + to - c));
            }
        }
    }

    /** Each line is {@code y - top = c - (x - left)}, cut to the area. */
    private static void rising(Canvas canvas, Rectangle2D area, Lines lines) {
        double width = area.getWidth();
        double height = area.getHeight();
        for (double c = lines.stepPx() / 2; c < width + height; c += lines.stepPx()) {
            double from = Math.max(0, c - height);
            double to = Math.min(width, c);
            if (to > from) {
                lines.draw(
                        canvas,
                        new Line2D.Double(
                                area.getX() + from, area.getY() + c - from, area.getX() + to, area.getY() + c - to));
            }
        }
    }

    /** Whole dots only, the rows centred in the area; a bar too narrow for one gets them on its middle line. */
    private static void dots(Canvas canvas, Rectangle2D area) {
        int columns = (int) Math.max(1, Math.floor((area.getWidth() - 2 * DOT_RADIUS_PX) / DOT_PITCH_PX));
        int rows = (int) Math.max(1, Math.floor((area.getHeight() - 2 * DOT_RADIUS_PX) / DOT_PITCH_PX));
        double left = area.getCenterX() - (columns - 1) * DOT_PITCH_PX / 2;
        double top = area.getCenterY() - (rows - 1) * DOT_PITCH_PX / 2;
        double radius = Math.min(DOT_RADIUS_PX, area.getWidth() / 3);
        for (int dot = 0; dot < columns * rows; dot++) {
            double x = left + dot % columns * DOT_PITCH_PX;
            double y = top + Math.floorDiv(dot, columns) * DOT_PITCH_PX;
            canvas.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), Ink.BLACK);
        }
    }
}
