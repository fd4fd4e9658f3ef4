package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.units.Check;

/**
 * Planned against actual drying of one wall, and under it the days between the two ready dates shared among their causes,
 * each bar beginning where the last ended.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param axis what the lines show: "litres in the plaster of the north wall"
 * @param planned the side that was planned; ready
 * @param actual the side that happened
 * @param heading over the bars: "119 days late, by cause"
 * @param causes the bars, from the top
 * @param sum under the bars: "74 + 45 = 119 days"
 */
public record DelayChart(
        String id,
        String title,
        Timeline timeline,
        String axis,
        Side planned,
        Side actual,
        String heading,
        List<Cause> causes,
        String sum)
        implements Chart {
    public DelayChart {
        Chart.check(id, title);
        Check.notBlank(axis, "axis");
        causes = List.copyOf(causes);
        Check.that(planned.ready().isPresent(), "planned", "ready", "not ready");
    }

    /**
     * One side.
     *
     * @param name what its line is called: "planned: first coat 7 Sep"
     * @param left litres in the plaster, in time order; at least two points
     * @param ready when the last coat was ready, if it was
     * @param readyWords the words at that mark: "ready 2 Oct"; at the end of the line if it was not
     */
    public record Side(String name, List<Point> left, Optional<Instant> ready, String readyWords) {
        public Side {
            Check.notBlank(name, "name");
            Check.notBlank(readyWords, "readyWords");
            left = List.copyOf(left);
            Check.that(left.size() > 1, "left", "at least two points", left.size());
        }
    }

    /**
     * One point of a line.
     *
     * @param at when
     * @param litres litres in the plaster; 0 or above
     */
    public record Point(Instant at, double litres) {
        public Point {
            Check.nonNegative(litres, "litres", "litres");
        }
    }

    /**
     * One bar.
     *
     * @param words the cause: "Doors open 2 hours a day, not 8"
     * @param figure its days as printed: "21 days"
     * @param days its days, exactly; negative where it helped
     */
    public record Cause(String words, String figure, double days) {
        public Cause {
            Check.notBlank(words, "words");
            Check.notBlank(figure, "figure");
            Check.finite(days, "days", "days");
        }
    }
}
