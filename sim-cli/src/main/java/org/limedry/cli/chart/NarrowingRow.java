package org.limedry.cli.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.limedry.cli.chart.NarrowingChart.Row;

/** Says one forecast of a {@link NarrowingChart} in words; dates past the end of the run count as not known. */
record NarrowingRow(Row row, Timeline run) {
    Optional<Instant> earliest() {
        return inRun(row.range().earliest());
    }

    Optional<Instant> likely() {
        return inRun(row.range().likely());
    }

    Optional<Instant> latest() {
        return inRun(row.range().latest());
    }

    private Optional<Instant> inRun(Optional<Instant> date) {
        return new ReadyWords(run).inRun(date);
    }

    /** Returns the likely date and how wide the range is. */
    String found() {
        return earliest()
                .map(from ->
                        likely().map(at -> "likely " + day(at)).orElse("likely after " + end()) + ", " + width(from))
                .orElse("not by " + end() + ", the end of the run");
    }

    private String width(Instant from) {
        long days =
                ChronoUnit.DAYS.between(run.day(from), latest().map(run::day).orElse(run.lastDay()));
        if (latest().isEmpty()) {
            return days == 0 ? "its end after " + end() : "over " + count(days) + " wide";
        }
        return days == 0 ? "within a day" : count(days) + " wide";
    }

    private static String count(long days) {
        return days + (days == 1 ? " day" : " days");
    }

    /** Returns the words for the left end of the bar; none where there is no bar. */
    Optional<String> leftWords() {
        return earliest().map(this::day);
    }

    /** Returns the words for the right end of the bar; none where there is no bar. */
    Optional<String> rightWords() {
        return earliest().map(from -> latest().map(this::day).orElse("after " + end()));
    }

    String story() {
        String ends = earliest()
                .map(from ->
                        ", from " + day(from) + " to " + latest().map(this::day).orElse("after " + end()))
                .orElse("");
        return row.words() + ": " + found() + ends + ".";
    }

    private String end() {
        return unbroken(run.lastDay());
    }

    private String day(Instant at) {
        return unbroken(run.day(at));
    }

    /** Day and month stay on one line. */
    static String unbroken(LocalDate day) {
        return DateWords.shortDay(day).replace(' ', '\u00a0');
    }
}
