package org.limedry.cli.chart;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * How many weeks something takes; a number that is empty lies past the end of the run.
 *
 * @param earliest one case in five takes less
 * @param likely the likely number
 * @param latest one case in five takes more
 * @param ranged whether the spread is known; without it only {@code likely} counts
 */
public record Weeks(Optional<Double> earliest, Optional<Double> likely, Optional<Double> latest, boolean ranged) {
    private static final char HALF = '\u00bd';

    /** Returns weeks of which only the likely number is known. */
    public static Weeks likelyOnly(Optional<Double> likely) {
        return new Weeks(likely, likely, likely, false);
    }

    /** Returns the numbers that lie within the run. */
    Stream<Double> known() {
        return Stream.of(earliest, likely, latest).flatMap(Optional::stream);
    }

    /** Returns weeks to the nearest half, as on a page: "10\u00bd". */
    public static String half(double weeks) {
        long halves = Math.round(2.0 * weeks);
        String whole = Long.toString(halves / 2);
        return halves % 2 == 0 ? whole : (halves == 1 ? "" : whole) + HALF;
    }
}
