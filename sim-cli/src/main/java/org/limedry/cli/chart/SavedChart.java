package org.limedry.cli.chart;

import java.util.List;
import java.util.OptionalDouble;
import org.limedry.units.Check;

/**
 * Days that measures save, as ranges, ranked.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param rows the measures, the one that saves most first; at least one
 */
public record SavedChart(String id, String title, List<Row> rows) implements Chart {
    /**
     * One measure.
     *
     * @param words what it is
     * @param days days saved in the likely run; negative is later
     * @param low 1-in-5 value; empty without ranges
     * @param high 4-in-5 value
     * @param tied whether it cannot be told apart from the row before
     */
    public record Row(String words, double days, OptionalDouble low, OptionalDouble high, boolean tied) {
        public Row {
            Check.notBlank(words, "words");
            Check.finite(days, "days", "days");
        }
    }

    public SavedChart {
        Chart.check(id, title);
        rows = List.copyOf(rows);
        Check.notEmpty(rows, "rows");
    }
}
