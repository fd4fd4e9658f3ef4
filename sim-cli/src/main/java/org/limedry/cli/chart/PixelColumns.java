package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Thins a line to what a drawing can show. Of all points within one px across, the first, the lowest, the highest and
 * the last stay, so that no peak is lost; then points go that lie within a quarter px of the line through their
 * neighbours.
 */
final class PixelColumns {
    private static final double STRAIGHT_PX = 0.25;

    private PixelColumns() {}

    /** Returns the points to draw of a line that runs from left to right, px. */
    static List<Point2D> thinned(List<Point2D> line) {
        return straightened(columns(line));
    }

    private static List<Point2D> columns(List<Point2D> line) {
        List<Point2D> kept = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= line.size(); i++) {
            boolean ends = i == line.size()
                    || Math.floor(line.get(i).getX())
                            != Math.floor(line.get(from).getX());
            if (ends) {
                kept.addAll(column(line.subList(from, i)));
                from = i;
            }
        }
        return kept;
    }

    private static List<Point2D> column(List<Point2D> points) {
        if (points.size() <= 4) {
            return points;
        }
        List<Integer> order = new ArrayList<>(List.of(0));
        Comparator<Integer> byHeight =
                Comparator.comparingDouble(i -> points.get(i).getY());
        List<Integer> all = IntStream.range(0, points.size()).boxed().toList();
        order.add(all.stream().min(byHeight).orElse(0));
        order.add(all.stream().max(byHeight).orElse(0));
        order.add(points.size() - 1);
        Set<Integer> kept = new LinkedHashSet<>(order.stream().sorted().toList());
        return kept.stream().map(points::get).toList();
    }

    private static List<Point2D> straightened(List<Point2D> line) {
        List<Point2D> kept = new ArrayList<>(line.subList(0, Math.min(1, line.size())));
        int from = 0;
        for (int i = 2; i < line.size(); i++) {
            if (!straight(line.subList(from, i + 1))) {
                from = i - 1;
                kept.add(line.get(from));
            }
        }
        if (line.size() > 1) {
            kept.add(line.get(line.size() - 1));
        }
        return kept;
    }

    private static boolean straight(List<Point2D> points) {
        Line2D whole = new Line2D.Double(points.get(0), points.get(points.size() - 1));
        return points.stream().allMatch(point -> whole.ptSegDist(point) <= STRAIGHT_PX);
    }
}
