package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Rows one below the other, each with words over its bar.
 *
 * @param placed the rows, from the top
 * @param bottom where a next row would begin, px
 */
record Rows<R>(List<Placed<R>> placed, double bottom) {
    /**
     * A row in its place.
     *
     * @param row the row
     * @param top where its words begin, px
     * @param middle middle of its bar, px
     */
    record Placed<R>(R row, double top, double middle) {}

    Rows {
        placed = List.copyOf(placed);
    }

    /**
     * Places rows.
     *
     * @param top where the first begins, px
     * @param rows the rows, from the top
     * @param wordsPx height of what stands over the bar of a row, px
     * @param barPx height of its bar, px
     * @param gapPx from the bar to the next row, px
     */
    static <R> Rows<R> below(
            double top, List<R> rows, ToDoubleFunction<R> wordsPx, ToDoubleFunction<R> barPx, double gapPx) {
        List<Placed<R>> placed = new ArrayList<>();
        double next = top;
        for (R row : rows) {
            double barTop = next + wordsPx.applyAsDouble(row);
            double bar = barPx.applyAsDouble(row);
            placed.add(new Placed<>(row, next, barTop + bar / 2));
            next = barTop + bar + gapPx;
        }
        return new Rows<>(placed, next);
    }
}
