package org.limedry.cli.chart;

import java.util.List;
import org.limedry.units.Check;

/**
 * Things ranked by one figure each, the largest first.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param unit what the figures count: "days"
 * @param bars the things, in the order in which they stand; at least one
 */
public record RankChart(String id, String title, String unit, List<Bar> bars) implements Chart {
    /**
     * One thing.
     *
     * @param words what it is
     * @param value its figure; 0 or above
     */
    public record Bar(String words, double value) {
        public Bar {
            Check.notBlank(words, "words");
            Check.nonNegative(value, "value", "");
        }
    }

    public RankChart {
        Chart.check(id, title);
        Check.notBlank(unit, "unit");
        bars = List.copyOf(bars);
        Check.notEmpty(bars, "bars");
    }
}
