package org.limedry.cli.fit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.limedry.cli.fit.TwinCase.Week;

/**
 * Counts over twin experiments; weeks are counted from 0.
 *
 * @param words what they are
 * @param cases at least one
 */
record TwinCounts(String words, List<TwinCase> cases) {
    /** A share of 0.8 of a hundred lies between these in 19 of 20 hundreds. */
    static final double LOW = 0.72;

    static final double HIGH = 0.88;

    TwinCounts {
        cases = List.copyOf(cases);
    }

    int weeks() {
        return cases.get(0).weeks().size();
    }

    private List<TwinCase> openCases(int week) {
        return cases.stream()
                .filter(one ->
                        one.weeks().get(week).usable() && !one.weeks().get(week).byHand())
                .toList();
    }

    private int count(int week, Predicate<Week> test) {
        return (int)
                cases.stream().filter(one -> test.test(one.weeks().get(week))).count();
    }

    int byHand(int week) {
        return count(week, Week::byHand);
    }

    int refused(int week) {
        return count(week, said -> !said.usable());
    }

    /** Returns of how many cases a date was told that the hand had not settled. */
    int open(int week) {
        return openCases(week).size();
    }

    int inside(int week) {
        return (int) openCases(week).stream()
                .filter(one -> one.weeks().get(week).holds(one.ready()))
                .count();
    }

    int before(int week) {
        return (int) openCases(week).stream()
                .filter(one -> one.ready().isBefore(one.weeks().get(week).oneInTen()))
                .count();
    }

    double share(int week) {
        return (double) inside(week) / open(week);
    }

    boolean isAccepted(int week) {
        return share(week) >= LOW && share(week) <= HIGH;
    }

    /** Returns how many came later than a date told. */
    int later(int week, Function<Week, Instant> date) {
        return (int) openCases(week).stream()
                .filter(one -> one.ready().isAfter(date.apply(one.weeks().get(week))))
                .count();
    }

    /** Returns how far the middle case was off a date told, days. */
    double medianOffDays(int week, Function<Week, Instant> date) {
        return median(
                openCases(week),
                one -> Math.abs(TwinCase.days(date.apply(one.weeks().get(week)), one.ready())));
    }

    /** Returns the middle width of all cases; where the hand has found the coat ready there is nothing left open. */
    double medianWidthDays(int week) {
        return median(cases, one -> one.weeks().get(week).widthDays());
    }

    double medianOpenDays(int week) {
        return median(openCases(week), one -> one.weeks().get(week).widthDays());
    }

    private static double median(List<TwinCase> of, Function<TwinCase, Double> figure) {
        return new Median().evaluate(of.stream().mapToDouble(figure::apply).toArray());
    }

    /** Returns the keys of all unknowns of which readings told something. */
    Set<String> told() {
        return cases.stream()
                .flatMap(one -> one.weeks().stream())
                .flatMap(week -> week.told().keySet().stream())
                .collect(Collectors.toSet());
    }

    /** Returns where truths lay against the range of an unknown, of the cases in which readings told something of it. */
    List<TwinCase.Truth> told(int week, String unknown) {
        return openCases(week).stream()
                .flatMap(one -> Optional.ofNullable(one.weeks().get(week).told().get(unknown)).stream())
                .toList();
    }
}
