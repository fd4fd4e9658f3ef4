package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import org.limedry.simulation.Series;
import org.limedry.units.Check;

/**
 * What was held in a room over a run, against limits: panels one under the other on one time axis.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param panels from top to bottom, at least one
 */
public record CareChart(String id, String title, Timeline timeline, List<Panel> panels) implements Chart {
    public CareChart {
        Chart.check(id, title);
        Check.notEmpty(panels, "panels");
        panels = List.copyOf(panels);
    }

    /** What the value axis of a panel counts. */
    public enum Unit {
        /** Degrees C, or differences of them. */
        DEGREES,
        /** Percent up to 100. */
        PERCENT
    }

    /**
     * One panel.
     *
     * @param name what is drawn, with its unit
     * @param unit how its axis is divided
     * @param times hours, in time order; at least two
     * @param values one for each hour, in the unit of the axis
     * @param limit what is not to be passed, in the unit of the axis
     * @param outside when it was passed
     */
    public record Panel(
            String name, Unit unit, List<Instant> times, Series values, double limit, List<Outside> outside) {
        public Panel {
            Check.notBlank(name, "name");
            times = List.copyOf(times);
            Check.atLeast(times.size(), 2, "times");
            Check.that(values.size() == times.size(), "values", "one for each hour", values.size());
            Check.finite(limit, "limit", "");
            outside = List.copyOf(outside);
        }
    }

    /**
     * A spell outside a limit.
     *
     * @param from its first hour
     * @param until its last hour
     */
    public record Outside(Instant from, Instant until) {}
}
