package org.limedry.cli.job;

import java.util.Optional;
import org.limedry.cli.chart.Weeks;

/** Weeks in words. */
public final class WeekWords {
    private WeekWords() {}

    /** Returns "1 week", "5\u00bd weeks" or "more than 39 weeks". */
    public static String likely(Job job) {
        return job.weeks().likely().map(WeekWords::weeks).orElseGet(() -> "more than " + weeks(job.runWeeks()));
    }

    /** Returns the same with the range, if it is known: "12 weeks (10 to 15\u00bd)". */
    public static String range(Job job) {
        return likely(job) + (job.weeks().ranged() ? " (" + span(job, " to ") + ")" : "");
    }

    /** Returns for a table: "12" or "12 (10\u201315\u00bd)". */
    public static String cell(Job job) {
        String likely = job.weeks().likely().map(Weeks::half).orElseGet(() -> ">" + Weeks.half(job.runWeeks()));
        return likely + (job.weeks().ranged() ? " (" + span(job, "\u2013") + ")" : "");
    }

    private static String span(Job job, String to) {
        return end(job, job.weeks().earliest()) + to + end(job, job.weeks().latest());
    }

    private static String end(Job job, Optional<Double> weeks) {
        return weeks.map(Weeks::half).orElseGet(() -> "over " + Weeks.half(job.runWeeks()));
    }

    /** Returns weeks to the nearest half: "less than half a week", "half a week", "1 week", "5\u00bd weeks". */
    public static String weeks(double weeks) {
        String half = Weeks.half(weeks);
        return switch (half) {
            case "0" -> "less than half a week";
            case "\u00bd" -> "half a week";
            case "1" -> "1 week";
            default -> half + " weeks";
        };
    }
}
