package org.limedry.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.limedry.cli.page.Days;
import org.limedry.simulation.Outcome;
import org.limedry.study.ReadyRange;

/**
 * What a run could not say, for the one who waits for it.
 *
 * @param lines one line for each date that lies past the run, and what to do about it
 * @param allLikelyDatesKnown whether every coat has its likely date
 */
record Shortfalls(List<String> lines, boolean allLikelyDatesKnown) {
    /** So much further the run should go; how much is needed nobody knows before. */
    private static final int MORE_MONTHS = 2;

    Shortfalls {
        lines = List.copyOf(lines);
    }

    /** Returns what is missing, in the order of the coats. */
    static Shortfalls of(Findings findings) {
        LocalDate end = findings.days().lastDay(findings.scenario().until());
        List<String> lines = new ArrayList<>();
        List<Coat> late = new ArrayList<>();
        for (Coat coat : findings.coats()) {
            missing(coat).ifPresent(date -> {
                late.add(coat);
                lines.add(place(coat) + ": " + date + ", " + Days.full(end) + ": no date given, not guessed");
            });
        }
        boolean complete = findings.outcome().ending() instanceof Outcome.Ending.Complete;
        if (!late.isEmpty() && complete) {
            lines.add(late.stream().map(Shortfalls::place).collect(Collectors.joining(", ")) + ": set until: "
                    + end.plusMonths(MORE_MONTHS) + " to see " + (late.size() == 1 ? "it" : "them"));
        }
        if (!complete) {
            lines.add("the calculation stopped early, on "
                    + Days.full(findings.days().date(findings.outcome().reached()))
                    + ": all figures belong to that day; please report this site file");
        }
        if (findings.effort().rangeRunsStopped() > 0) {
            lines.add(findings.effort().rangeRunsStopped() + " of "
                    + findings.effort().rangeRuns()
                    + " runs for the ranges stopped early: their coats count as not ready from then on");
        }
        boolean known = findings.coats().stream().noneMatch(Coat::isUnready);
        return new Shortfalls(lines, known && complete);
    }

    private static String place(Coat coat) {
        return "coats[" + coat.index() + "]";
    }

    private static Optional<String> missing(Coat coat) {
        if (coat.result().laid().isEmpty()) {
            return Optional.of("not laid before the end of the run");
        }
        if (coat.isUnready()) {
            return Optional.of("likely date lies past the run");
        }
        return coat.range()
                .map(ReadyRange::latest)
                .filter(Optional::isEmpty)
                .map(latest -> "latest date lies past the run");
    }
}
