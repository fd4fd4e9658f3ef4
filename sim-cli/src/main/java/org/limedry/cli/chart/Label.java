package org.limedry.cli.chart;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Words that belong to something in a plot, and where they may stand.
 *
 * @param owner what they belong to; its own lines may come closer than others
 * @param settings the words as set in one or more ways, the best first
 * @param spots the places to try for one setting, the best first
 * @param anchors where a leader line may end, should none of the places be free
 * @param paper colour of what the words stand on
 */
record Label(
        Object owner,
        List<Paragraph> settings,
        Function<Paragraph, List<Rectangle2D>> spots,
        List<Point2D> anchors,
        Color paper) {
    private static final double GAP_PX = 6;
    private static final double STEP_PX = 8;
    private static final double LEAST_SHARED_PX = 14;
    private static final double BESIDE_PX = 5;
    private static final double INSIDE_PX = 3;
    private static final double HEIGHT_STEP_PX = 5;
    private static final int MOST_ANCHORS = 40;
    private static final double FLATNESS_CLASS_PX = 8;

    Label {
        settings = List.copyOf(settings);
        anchors = List.copyOf(anchors);
    }

    Label(Object owner, List<Paragraph> settings, Function<Paragraph, List<Rectangle2D>> spots, List<Point2D> anchors) {
        this(owner, settings, spots, anchors, Ink.PAPER);
    }

    /** On which side of its line a name stands. */
    enum Side {
        ABOVE,
        BELOW;

        Side other() {
            return this == ABOVE ? BELOW : ABOVE;
        }
    }

    /** Returns a name close to its line, where the line is flattest first, above it and below it as they come. */
    static Label along(Object owner, List<Paragraph> settings, List<Point2D> line, Side first) {
        List<Side> sides = List.of(first, first.other());
        return new Label(owner, settings, setting -> spots(line, sides, setting), anchors(line));
    }

    /** Returns words beside an upright line, from its top down, on its right first. */
    static Label beside(Object owner, List<Paragraph> settings, Line2D upright) {
        double x = upright.getX1();
        return new Label(
                owner,
                settings,
                setting -> heights(upright, setting)
                        .flatMap(y -> Stream.of(x + BESIDE_PX, x - BESIDE_PX - setting.widthPx())
                                .map(left -> setting.boxAt(left, y)))
                        .toList(),
                heights(upright, settings.get(0))
                        .<Point2D>map(y -> new Point2D.Double(x, y))
                        .toList());
    }

    private static Stream<Double> heights(Line2D upright, Paragraph setting) {
        double last = upright.getY2() - INSIDE_PX - setting.heightPx();
        return Stream.iterate(upright.getY1() + INSIDE_PX, y -> y <= last, y -> y + HEIGHT_STEP_PX);
    }

    /** Returns some points of a line for leaders to end at. */
    static List<Point2D> anchors(List<Point2D> line) {
        int apart = Math.max(1, line.size() / MOST_ANCHORS);
        return Stream.iterate(0, i -> i < line.size(), i -> i + apart)
                .map(line::get)
                .toList();
    }

    private record Candidate(Rectangle2D box, double flatness) {}

    /**
     * Returns places for a name close to its line, where the line is flattest first.
     *
     * @param line where the line runs, px, from left to right
     * @param sides above it, below it, or both in order of preference
     * @param setting the name
     */
    static List<Rectangle2D> spots(List<Point2D> line, List<Side> sides, Paragraph setting) {
        double first = line.get(0).getX() - setting.widthPx() + LEAST_SHARED_PX;
        double last = line.get(line.size() - 1).getX() - LEAST_SHARED_PX;
        List<Candidate> candidates = new ArrayList<>();
        for (double left = first; left <= last; left += STEP_PX) {
            for (Side side : sides) {
                candidate(line, left, side, setting).ifPresent(candidates::add);
            }
        }
        return candidates.stream()
                .sorted(Comparator.comparingDouble(Candidate::flatness))
                .map(Candidate::box)
                .toList();
    }

    private static Optional<Candidate> candidate(List<Point2D> line, double left, Side side, Paragraph setting) {
        double right = left + setting.widthPx() + GAP_PX;
        DoubleSummaryStatistics heights = line.stream()
                .filter(point -> point.getX() >= left - GAP_PX && point.getX() <= right)
                .mapToDouble(Point2D::getY)
                .summaryStatistics();
        if (heights.getCount() == 0) {
            return Optional.empty();
        }
        double top = side == Side.ABOVE ? heights.getMin() - GAP_PX - setting.heightPx() : heights.getMax() + GAP_PX;
        double drop = heights.getMax() - heights.getMin();
        return Optional.of(new Candidate(setting.boxAt(left, top), Math.floor(drop / FLATNESS_CLASS_PX)));
    }
}
