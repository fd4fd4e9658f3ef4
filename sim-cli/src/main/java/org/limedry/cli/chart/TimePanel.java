package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.time.Instant;
import java.util.List;

/** One plot over time; its axis counts the seconds of the run. */
final class TimePanel extends Panel {
    private final TimeScale times;

    TimePanel(TimeScale times, ValueScale values, int top, int bottom) {
        super(0, times.lengthSeconds(), values, new Rectangle(times.left(), top, times.widthPx(), bottom - top));
        this.times = times;
    }

    Point2D place(TimedValue point) {
        return new Point2D.Double(times.x(point.at()), y(point.value()));
    }

    private List<Point2D> data(List<TimedValue> points) {
        return points.stream()
                .<Point2D>map(point -> new Point2D.Double(times.seconds(point.at()), point.value()))
                .toList();
    }

    /** Adds a line; points closer than a px are left out. Returns where it runs. */
    List<Point2D> addTimes(List<TimedValue> points, BasicStroke stroke) {
        return addLine(data(points), stroke);
    }

    /** Fills the area between two lines black wherever the first is above the second. */
    void addBlack(List<TimedValue> upper, List<TimedValue> lower) {
        addFillBetween(data(upper), data(lower));
    }

    /** Adds a tinted block from top to bottom. */
    void addBlock(Instant from, Instant to, Color color) {
        addBlock(times.seconds(from), times.seconds(to), color);
    }

    /** Adds a dotted line from top to bottom. */
    void addUpright(Instant at) {
        addUpright(times.seconds(at));
    }
}
