package org.limedry.cli.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Places for a name close to its line, where the line is flattest first.
 *
 * @param line where the line runs, px, from left to right
 * @param sides above it, below it, or both in order of preference
 */
record CurveSpots(List<Point2D> line, List<Side> sides) {
    private static final double GAP_PX = 6;
    private static final double STEP_PX = 8;
    private static final double LEAST_SHARED_PX = 14;
    private static final int MOST_ANCHORS = 40;
    private static final double FLATNESS_CLASS_PX = 8;

    CurveSpots {
        line = List.copyOf(line);
        sides = List.copyOf(sides);
    }

    /** On which side of its line a name stands. */
    enum Side {
        ABOVE,
        BELOW
    }

    private record Candidate(Rectangle2D box, double flatness) {}

    /** Returns some points of the line for leaders to end at. */
    List<Point2D> anchors() {
        int apart = Math.max(1, line.size() / MOST_ANCHORS);
        return Stream.iterate(0, i -> i < line.size(), i -> i + apart)
                .map(line::get)
                .toList();
    }

    List<Rectangle2D> of(Paragraph setting) {
        double width = setting.widthPx();
        double first = line.get(0).getX() - width + LEAST_SHARED_PX;
        double last = line.get(line.size() - 1).getX() - LEAST_SHARED_PX;
        List<Candidate> candidates = new ArrayList<>();
        for (double left = first; left <= last; left += STEP_PX) {
            for (Side side : sides) {
                at(left, side, setting).ifPresent(candidates::add);
            }
        }
        return candidates.stream()
                .sorted(Comparator.comparingDouble(Candidate::flatness))
                .map(Candidate::box)
                .toList();
    }

    private Optional<Candidate> at(double left, Side side, Paragraph setting) {
        double width = setting.widthPx();
        double height = setting.heightPx();
        DoubleSummaryStatistics heights = heightsBetween(left - GAP_PX, left + width + GAP_PX)
                .mapToDouble(Point2D::getY)
                .summaryStatistics();
        if (heights.getCount() == 0) {
            return Optional.empty();
        }
        double top = side == Side.ABOVE ? heights.getMin() - GAP_PX - height : heights.getMax() + GAP_PX;
        double drop = heights.getMax() - heights.getMin();
        return Optional.of(
                new Candidate(new Rectangle2D.Double(left, top, width, height), Math.floor(drop / FLATNESS_CLASS_PX)));
    }

    private Stream<Point2D> heightsBetween(double left, double right) {
        return line.stream().filter(point -> point.getX() >= left && point.getX() <= right);
    }
}
