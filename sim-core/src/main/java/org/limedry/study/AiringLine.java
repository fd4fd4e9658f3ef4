package org.limedry.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All levels of airing at one heat, and what stands out among them. Makes no use of physics.
 *
 * @param heat what heats the room; empty for a cold one
 * @param levels what came of each level, the least fresh air first
 */
public record AiringLine(Optional<SteadyHeat> heat, List<AiringFinding> levels) {
    /** A step on the calendar too small to call it sooner or later: days at least, and a share of the wait. */
    private static final double LEAST_STEP_DAYS = 2.0;

    private static final double LEAST_STEP_SHARE = 0.05;

    public AiringLine {
        levels = levels.stream()
                .sorted(Comparator.comparingDouble(AiringLine::airM3PerS))
                .toList();
    }

    /**
     * A level with more air that takes longer than one with less.
     *
     * @param less the one with less air
     * @param more the one with more air
     */
    public record Setback(AiringFinding less, AiringFinding more) {
        /** Tells whether more air left the walls colder; if not, it brought water in. */
        public boolean isByCold() {
            return more.wallCelsius() < less.wallCelsius() && more.water().outByAirKg() >= 0.0;
        }
    }

    /** Returns the difference between two waits of about so many days that counts as one, days. */
    public static double countsFromDays(double days) {
        return Math.max(LEAST_STEP_DAYS, LEAST_STEP_SHARE * days);
    }

    /** Returns the level without any airing, if it was tried. */
    public Optional<AiringFinding> shut() {
        return levels.stream().filter(one -> one.level().airing().isShut()).findFirst();
    }

    /**
     * Returns the fresh air from which the likely date leaves the range of the shut room, straight between two levels,
     * m3/s. Without ranges a step that counts stands in for the range.
     *
     * @return empty if no level leaves it, or none was shut
     */
    public OptionalDouble worksFromM3PerS() {
        Optional<AiringFinding> shut = shut();
        if (shut.isEmpty()) {
            return OptionalDouble.empty();
        }
        double sooner = soonerThan(shut.get());
        double later = laterThan(shut.get());
        AiringFinding before = shut.get();
        for (AiringFinding one : levels) {
            if (one.days() < sooner || one.days() > later) {
                double bound = one.days() < sooner ? sooner : later;
                return OptionalDouble.of(crossing(before, one, bound));
            }
            before = one;
        }
        return OptionalDouble.empty();
    }

    private static double soonerThan(AiringFinding shut) {
        if (shut.waiting().isRanged()) {
            return shut.waiting().earliestDays().orElse(Double.POSITIVE_INFINITY);
        }
        double days = shut.days();
        return Double.isFinite(days) ? days - countsFromDays(days) : days;
    }

    private static double laterThan(AiringFinding shut) {
        if (shut.waiting().isRanged()) {
            return shut.waiting().latestDays().orElse(Double.POSITIVE_INFINITY);
        }
        return shut.days() + countsFromDays(shut.days());
    }

    /** Returns where the line passes a bound; at the level before if either has no end to its wait. */
    private static double crossing(AiringFinding before, AiringFinding after, double days) {
        double share = (days - before.days()) / (after.days() - before.days());
        double from = airM3PerS(before);
        return Double.isFinite(share) ? from + share * (airM3PerS(after) - from) : from;
    }

    /** Returns the fresh air of the first level at which a coat dries too fast, m3/s; empty if none does. */
    public OptionalDouble tooFastFromM3PerS() {
        return levels.stream()
                .filter(one -> one.watch().tooFast())
                .mapToDouble(AiringLine::airM3PerS)
                .findFirst();
    }

    /** Returns the level with more air that loses most days against one with less, if that counts as a difference. */
    public Optional<Setback> setback() {
        Optional<Setback> worst = Optional.empty();
        double most = 0.0;
        for (int i = 1; i < levels.size(); i++) {
            AiringFinding more = levels.get(i);
            AiringFinding less = soonest(levels.subList(0, i));
            double lost = Double.isFinite(less.days()) ? more.days() - less.days() : 0.0;
            if (lost > countsFromDays(less.days()) && lost > most) {
                worst = Optional.of(new Setback(less, more));
                most = lost;
            }
        }
        return worst;
    }

    /** Returns the soonest level, of equal ones that with the least air; the least air if no wait ends. */
    static AiringFinding soonest(List<AiringFinding> findings) {
        return findings.stream()
                .min(Comparator.comparingDouble(AiringFinding::days))
                .orElseThrow();
    }

    private static double airM3PerS(AiringFinding finding) {
        return finding.freshAir().likelyM3PerS();
    }
}
