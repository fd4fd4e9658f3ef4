package org.limedry.study.airing;

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
     * Returns the fresh air from which airing makes a difference to the room kept shut: a step that counts, and with ranges
     * one that most members take the same way; straight between two levels, m3/s.
     *
     * <p>Members are compared one by one: the range of a shut room is wide by what nobody knows of its walls, which is the
     * same at every level.
     *
     * @return empty if no level makes one, or none was shut
     */
    public OptionalDouble worksFromM3PerS() {
        Optional<AiringFinding> shut = shut();
        if (shut.isEmpty()) {
            return OptionalDouble.empty();
        }
        AiringFinding before = shut.get();
        for (AiringFinding one : levels) {
            if (changes(shut.get(), one)) {
                double step = countsFromDays(Math.min(shut.get().days(), one.days()));
                return OptionalDouble.of(crossing(
                        before,
                        one,
                        shut.get().days() + (one.days() < shut.get().days() ? -step : step)));
            }
            before = one;
        }
        return OptionalDouble.empty();
    }

    private static boolean changes(AiringFinding shut, AiringFinding one) {
        return countsAsStep(shut.days(), one.days()) && one.waiting().differsClearlyFrom(shut.waiting());
    }

    /** Tells whether the step from one wait to another counts; one that does not end is infinitely long. */
    private static boolean countsAsStep(double days, double otherDays) {
        double shorter = Math.min(days, otherDays);
        return Double.isFinite(shorter) && Math.abs(days - otherDays) > countsFromDays(shorter);
    }

    /** Returns where the line passes a bound; at the level before if either has no end to its wait. */
    private static double crossing(AiringFinding before, AiringFinding after, double days) {
        double share = (days - before.days()) / (after.days() - before.days());
        double from = airM3PerS(before);
        return share >= 0.0 && share <= 1.0 ? from + share * (airM3PerS(after) - from) : from;
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
            double lost = more.days() - less.days();
            if (changes(less, more) && lost > most) {
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
