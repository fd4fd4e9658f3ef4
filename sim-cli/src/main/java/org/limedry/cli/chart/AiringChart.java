package org.limedry.cli.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.units.Check;

/**
 * How long a room keeps its plasterer waiting, by how much fresh air it gets, one line for each heat.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param waited what is waited for: "weeks until every coat in the store is ready"
 * @param lines one for each heat, the one that matters most first; at least one
 * @param ticks what gives how much air
 * @param marks what stands out
 * @param horizonWeeks weeks after which the runs end
 */
public record AiringChart(
        String id, String title, String waited, List<Line> lines, List<Tick> ticks, Marks marks, double horizonWeeks)
        implements Chart {
    public AiringChart {
        Chart.check(id, title);
        Check.notBlank(waited, "waited");
        lines = List.copyOf(lines);
        ticks = List.copyOf(ticks);
        Check.notEmpty(lines, "lines");
        Check.positive(horizonWeeks, "horizonWeeks", "weeks");
    }

    /**
     * One heat.
     *
     * @param name what to call it: "cold room, no heat"
     * @param heated whether it is heated
     * @param points the least air first; at least one
     * @param endless what to write where the wait does not end: "shut: not in 20 weeks"; empty if it always does
     */
    public record Line(String name, boolean heated, List<Point> points, String endless) {
        public Line {
            Check.notBlank(name, "name");
            points = List.copyOf(points);
            Check.notEmpty(points, "points");
        }
    }

    /**
     * One level.
     *
     * @param m3PerHour fresh air, m3/h; 0 or above
     * @param weeks the wait; empty if it does not end
     * @param earliest one time in five it is shorter; empty if not known or it does not end
     * @param latest one time in five it is longer; empty if not known or it does not end
     */
    public record Point(double m3PerHour, OptionalDouble weeks, OptionalDouble earliest, OptionalDouble latest) {
        public Point {
            Check.nonNegative(m3PerHour, "m3PerHour", "m3/h");
        }
    }

    /**
     * What gives so much air.
     *
     * @param m3PerHour where it stands, m3/h
     * @param words "6 h" or "fan"
     * @param byDoors whether doors give it
     */
    public record Tick(double m3PerHour, String words, boolean byDoors) {
        public Tick {
            Check.nonNegative(m3PerHour, "m3PerHour", "m3/h");
            Check.notBlank(words, "words");
        }
    }

    /**
     * What stands out.
     *
     * @param nothingUntil fresh air below which nothing changes, m3/h
     * @param tooFast where a line dries too fast
     * @param doThis what to do
     * @param slower where more air is slower
     */
    public record Marks(
            OptionalDouble nothingUntil, Optional<Spot> tooFast, Optional<Spot> doThis, Optional<Spot> slower) {}

    /**
     * A place on a line, with words.
     *
     * @param line index of the line
     * @param m3PerHour where, m3/h
     * @param words what to say
     */
    public record Spot(int line, double m3PerHour, String words) {
        public Spot {
            Check.nonNegative(m3PerHour, "m3PerHour", "m3/h");
            Check.notBlank(words, "words");
        }
    }

    /** Returns whether any wait does not end. */
    boolean isEndless() {
        return lines.stream()
                .flatMap(line -> line.points().stream())
                .anyMatch(point -> point.weeks().isEmpty());
    }
}
