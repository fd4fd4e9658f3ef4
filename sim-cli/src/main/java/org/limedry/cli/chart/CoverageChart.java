package org.limedry.cli.chart;

import java.util.List;
import java.util.OptionalDouble;
import org.limedry.units.Check;

/**
 * Whether stated ranges hold what they say: how many cases came inside them, against how many should.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param statedShare the share of cases that the ranges say they hold: 0.8
 * @param rows from top to bottom, at least one
 */
public record CoverageChart(String id, String title, double statedShare, List<Row> rows) implements Chart {
    /**
     * The ranges of one kind.
     *
     * @param words what they are: "week 1"
     * @param inside cases that came inside their range
     * @param cases all cases; at least 1
     * @param acceptedLow the lowest share that is accepted as the stated one
     * @param acceptedHigh the highest
     * @param medianWidthDays the middle one of the widths of the ranges, days; empty if it lies past the end of the runs
     */
    public record Row(
            String words,
            int inside,
            int cases,
            double acceptedLow,
            double acceptedHigh,
            OptionalDouble medianWidthDays) {
        public Row {
            Check.notBlank(words, "words");
            Check.atLeast(cases, 1, "cases");
            Check.inClosed(inside, 0, cases, "inside", "");
            Check.inClosed(acceptedLow, 0, 1, "acceptedLow", "");
            Check.inClosed(acceptedHigh, acceptedLow, 1, "acceptedHigh", "");
            medianWidthDays.ifPresent(days -> Check.nonNegative(days, "medianWidthDays", "days"));
        }

        double share() {
            return (double) inside / cases;
        }

        boolean accepted() {
            return share() >= acceptedLow && share() <= acceptedHigh;
        }
    }

    public CoverageChart {
        Chart.check(id, title);
        Check.inOpen(statedShare, 0, 1, "statedShare", "");
        rows = List.copyOf(rows);
        Check.notEmpty(rows, "rows");
    }
}
