package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.units.Check;

/**
 * How the range of a ready date narrowed as readings came in.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the run; a date past its end counts as not known
 * @param what what is dated: "Store north, coat 1"
 * @param rows the forecasts in the order in which they were made; at least one
 * @param came what came in the end; empty as long as nobody knows
 */
public record NarrowingChart(
        String id, String title, Timeline timeline, String what, List<Row> rows, Optional<Came> came) implements Chart {
    /**
     * One forecast.
     *
     * @param words what it knew: "readings to 14 Nov"
     * @param issued when it was made; empty leaves it off the time axis
     * @param range its dates; one that is empty lies past the end of the run
     */
    public record Row(String words, Optional<Instant> issued, Ready.Range range) {
        public Row {
            Check.notBlank(words, "words");
        }
    }

    /**
     * The date that came.
     *
     * @param words what it is: "what came"
     * @param at when; it may lie past the end of the run
     */
    public record Came(String words, Instant at) {
        public Came {
            Check.notBlank(words, "words");
        }
    }

    public NarrowingChart {
        Chart.check(id, title);
        Check.notBlank(what, "what");
        rows = List.copyOf(rows);
        Check.notEmpty(rows, "rows");
        List<Instant> issued =
                rows.stream().map(Row::issued).flatMap(Optional::stream).toList();
        for (int i = 1; i < issued.size(); i++) {
            Instant before = issued.get(i - 1);
            Check.that(!issued.get(i).isBefore(before), "rows", "in time order, from " + before, issued.get(i));
        }
    }
}
