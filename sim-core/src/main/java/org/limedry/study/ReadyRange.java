package org.limedry.study;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.limedry.simulation.Outcome.CoatResult;

/**
 * When one coat is ready: earliest, likely, latest. An empty date lies past the end of the run.
 *
 * <p>Earliest and latest are the 1-in-5 and the 4-in-5 date of the members, likely that of the likely run. The likely run
 * need not lie between them: it has every unknown in the middle of its chance, and ready dates follow from the unknowns
 * in no straight line. The range is then widened to take it in, and {@code widened} says so; dates never cross.
 *
 * @param wall its wall
 * @param coat its number on that wall
 * @param earliest 1-in-5 date, or the likely date if that is earlier
 * @param likely date of the likely run
 * @param latest 4-in-5 date, or the likely date if that is later
 * @param widened whether the likely date lay outside the two
 * @param byHand whether a hand test that passed settles all three
 */
public record ReadyRange(
        String wall,
        int coat,
        Optional<Instant> earliest,
        Optional<Instant> likely,
        Optional<Instant> latest,
        boolean widened,
        boolean byHand) {

    /** No date is later than a date that never came. */
    private static final Comparator<Optional<Instant>> MISSING_LAST =
            Comparator.comparing(date -> date.orElse(Instant.MAX));

    /** Returns the coat that is ready last; one that never is counts as later than all others. */
    static CoatResult lastOf(List<CoatResult> coats) {
        return coats.stream()
                .max(Comparator.comparing(CoatResult::ready, MISSING_LAST))
                .orElseThrow(() -> new IllegalArgumentException("coats: must be at least one, was none"));
    }

    static ReadyRange of(CoatResult likely, List<CoatResult> members) {
        List<Optional<Instant>> dates = members.stream().map(CoatResult::ready).toList();
        Optional<Instant> middle = likely.ready();
        if (likely.byHand()) {
            return new ReadyRange(likely.wall(), likely.number(), middle, middle, middle, false, true);
        }
        Optional<Instant> oneInFive = quantile(dates, MemberQuantile.ONE_IN_FIVE);
        Optional<Instant> fourInFive = quantile(dates, MemberQuantile.FOUR_IN_FIVE);
        boolean before = MISSING_LAST.compare(middle, oneInFive) < 0;
        boolean after = MISSING_LAST.compare(middle, fourInFive) > 0;
        return new ReadyRange(
                likely.wall(),
                likely.number(),
                before ? middle : oneInFive,
                middle,
                after ? middle : fourInFive,
                before || after,
                false);
    }

    /**
     * Returns the date by which a share of the members was ready; a member that never was counts as later than all
     * others, and a date that leans on such a member is empty.
     *
     * <p>{@code h = share (n + 1)}, linear between the two members next to it, the first or the last member beyond them.
     *
     * <p><b>Source:</b> definition 6 of Hyndman and Fan 1996, Sample quantiles in statistical packages, The American
     * Statistician 50, 361-365, FROM MEMORY. <b>Valid:</b> at least one member.
     */
    public static Optional<Instant> quantile(List<Optional<Instant>> dates, double share) {
        List<Optional<Instant>> sorted = dates.stream().sorted(MISSING_LAST).toList();
        double place = Math.max(1.0, Math.min(sorted.size(), share * (sorted.size() + 1)));
        int below = (int) place;
        double weight = place - below;
        Optional<Instant> lower = sorted.get(below - 1);
        Optional<Instant> upper = weight > 0.0 ? sorted.get(below) : lower;
        return lower.flatMap(from -> upper.map(to -> between(from, to, weight)));
    }

    private static Instant between(Instant from, Instant to, double weight) {
        return from.plusNanos(Math.round(weight * Duration.between(from, to).toNanos()));
    }
}
