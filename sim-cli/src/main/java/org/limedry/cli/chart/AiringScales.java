package org.limedry.cli.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.AiringChart.Line;
import org.limedry.cli.chart.AiringChart.Point;
import org.limedry.cli.chart.AiringChart.Tick;

/**
 * Where fresh air and weeks lie in an airing chart.
 *
 * @param area the plot
 * @param air fresh air, m3/h
 * @param weeks the wait
 */
record AiringScales(Rectangle2D area, ValueScale air, ValueScale weeks) {
    private static final double TOP_WEEKS = 20.0;
    private static final double TOP_STEP_WEEKS = 5.0;
    private static final List<ValueScale> SHORT_WAITS =
            List.of(new ValueScale(0.0, 2.0, 0.5), new ValueScale(0.0, 5.0, 1.0), new ValueScale(0.0, 10.0, 2.0));
    private static final double HEADROOM = 1.08;

    static AiringScales of(AiringChart chart, Rectangle2D area) {
        double most = Stream.concat(
                        chart.lines().stream()
                                .flatMap(line -> line.points().stream())
                                .map(Point::m3PerHour),
                        chart.ticks().stream().map(Tick::m3PerHour))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1.0);
        return new AiringScales(area, ValueScale.fromZero(most), weeks(chart));
    }

    /** Short waits fill the plot; a wait that does not end needs the whole of it. */
    private static ValueScale weeks(AiringChart chart) {
        List<Point> points =
                chart.lines().stream().flatMap(line -> line.points().stream()).toList();
        boolean endless = chart.isEndless();
        double longest = points.stream()
                .flatMapToDouble(point -> DoubleStream.concat(point.weeks().stream(), point.latest().stream()))
                .max()
                .orElse(TOP_WEEKS);
        double top = endless ? Math.min(TOP_WEEKS, chart.horizonWeeks()) : TOP_WEEKS;
        return SHORT_WAITS.stream()
                .filter(scale -> !endless && longest * HEADROOM <= scale.high())
                .findFirst()
                .orElse(new ValueScale(0.0, top, TOP_STEP_WEEKS));
    }

    double x(double m3PerHour) {
        return area.getMinX() + area.getWidth() * (m3PerHour - air.low()) / (air.high() - air.low());
    }

    /** Returns the height of a wait; one that is longer than the plot or does not end lies on its upper edge. */
    double y(OptionalDouble wait) {
        double shown = Math.min(wait.orElse(weeks.high()), weeks.high());
        return area.getMaxY() - area.getHeight() * shown / weeks.high();
    }

    Point2D place(Point point) {
        return new Point2D.Double(x(point.m3PerHour()), y(point.weeks()));
    }

    /** Returns where a line runs, with a point at every px so that labels can follow it. */
    List<Point2D> course(Line line) {
        List<Point2D> corners = line.points().stream().map(this::place).toList();
        return DoubleStream.iterate(
                        corners.get(0).getX(), x -> x <= last(corners).getX(), x -> x + 1.0)
                .<Point2D>mapToObj(x -> new Point2D.Double(x, heightAt(corners, x)))
                .toList();
    }

    /** Returns the height of a line at a place; beyond its ends that of the end. */
    double heightAt(Line line, double m3PerHour) {
        return heightAt(line.points().stream().map(this::place).toList(), x(m3PerHour));
    }

    private static double heightAt(List<Point2D> corners, double x) {
        Point2D before = corners.get(0);
        for (Point2D after : corners) {
            if (after.getX() >= x) {
                double width = after.getX() - before.getX();
                double share = width > 0.0 ? Math.max(0.0, (x - before.getX()) / width) : 1.0;
                return before.getY() + share * (after.getY() - before.getY());
            }
            before = after;
        }
        return last(corners).getY();
    }

    private static Point2D last(List<Point2D> corners) {
        return corners.get(corners.size() - 1);
    }
}
