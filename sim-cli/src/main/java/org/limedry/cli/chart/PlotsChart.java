package org.limedry.cli.chart;

import java.util.List;
import org.limedry.units.Check;

/**
 * Small plots of one number against another, side by side where there is room.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param note what all marks have in common, under the plots; may be empty
 * @param plots the plots, at least one
 */
public record PlotsChart(String id, String title, String note, List<Plot> plots) implements Chart {
    public PlotsChart {
        Chart.check(id, title);
        Check.notEmpty(plots, "plots");
        plots = List.copyOf(plots);
    }

    /**
     * One plot.
     *
     * @param heading what it is about
     * @param across quantity and unit along the horizontal axis
     * @param up quantity and unit along the vertical axis
     * @param range what the axes run over
     * @param lines named lines, may be none
     * @param dots unnamed marks, may be none
     */
    public record Plot(String heading, String across, String up, Range range, List<Line> lines, List<Dot> dots) {
        public Plot {
            Check.notBlank(heading, "heading");
            Check.notBlank(across, "across");
            Check.notBlank(up, "up");
            lines = List.copyOf(lines);
            dots = List.copyOf(dots);
        }
    }

    /** What the axes of a plot run over. */
    public sealed interface Range {
        /**
         * Vertical from 0 to a little above the highest value, horizontal as the points lie.
         *
         * @param highest the highest value
         */
        record FromZero(double highest) implements Range {}

        /**
         * The same on both axes, with the line on which both are equal.
         *
         * @param low lowest value
         * @param high highest value, above {@code low}
         */
        record Same(double low, double high) implements Range {
            public Same {
                Check.that(high > low, "high", "above " + low, high);
            }
        }
    }

    /**
     * A named line.
     *
     * @param name what stands at it
     * @param points where it runs, from left to right; at least two
     */
    public record Line(String name, List<Point> points) {
        public Line {
            Check.notBlank(name, "name");
            points = List.copyOf(points);
            Check.atLeast(points.size(), 2, "points");
        }
    }

    /**
     * A point.
     *
     * @param across its horizontal value
     * @param up its vertical value
     */
    public record Point(double across, double up) {
        public Point {
            Check.finite(across, "across", "");
            Check.finite(up, "up", "");
        }
    }

    /**
     * A mark.
     *
     * @param at where it stands
     * @param black black, or else white
     */
    public record Dot(Point at, boolean black) {}
}
