package org.limedry.cli.chart;

import java.util.List;
import org.limedry.units.Check;

/**
 * How long the same job takes by the day on which it is begun.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param bars one for each start, in order; at least one
 * @param runWeeks length of the runs: what takes longer is not known
 */
public record SeasonsChart(String id, String title, List<Bar> bars, double runWeeks) implements Chart {
    public SeasonsChart {
        Chart.check(id, title);
        Check.notEmpty(bars, "bars");
        Check.positive(runWeeks, "runWeeks", "weeks");
        bars = List.copyOf(bars);
    }

    /**
     * One start.
     *
     * @param name month or day, short: "May"
     * @param shortName the same for a telephone: "M"
     * @param compared whether it is one of those looked at more closely
     * @param weeks how long it takes
     */
    public record Bar(String name, String shortName, boolean compared, Weeks weeks) {
        public Bar {
            Check.notBlank(name, "name");
            Check.notBlank(shortName, "shortName");
        }
    }
}
