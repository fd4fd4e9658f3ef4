package org.limedry.study.options;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.simulation.Outcome;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.units.Units;

/** Compares ways of doing a job, by the day on which the last coat of certain walls is ready, member by member. */
public final class Options {

    /** Without members, differences up to a day, or a tenth of the days saved, are taken as no difference. Judgement. */
    private static final double TIE_DAYS = 1.0;

    private static final double TIE_SHARE = 0.1;

    private final Set<String> walls;
    private final Instant end;
    private final EnsembleResult base;

    /**
     * Compares with a job as it stands.
     *
     * @param base what came of the job as it stands
     * @param walls the walls whose last coat counts
     * @param end end of all runs, which stands for a date that never came
     */
    public Options(EnsembleResult base, Set<String> walls, Instant end) {
        this.base = base;
        this.walls = Set.copyOf(walls);
        this.end = end;
    }

    /**
     * Days by which a job ends sooner one way than another.
     *
     * @param likely in the likely runs; negative is later
     * @param low 1-in-5 value of the members' differences; empty without members
     * @param high 4-in-5 value
     * @param atLeast whether the way it is compared with was not ready by its end, so that more may be saved than is told
     * @param atMost whether this way was not ready by its end, so that less may be saved than is told
     */
    public record Saved(double likely, OptionalDouble low, OptionalDouble high, boolean atLeast, boolean atMost) {}

    /**
     * Returns the days that a way saves.
     *
     * @param way what came of it, from the same members
     * @param movedDays days by which it was moved to another season
     */
    public Saved saved(EnsembleResult way, int movedDays) {
        return saved(base, way, movedDays);
    }

    private Saved saved(EnsembleResult from, EnsembleResult way, int movedDays) {
        double likely = days(ended(way.likely().coats()), ended(from.likely().coats())) - movedDays;
        double[] members = IntStream.range(0, way.members().size())
                .mapToDouble(m -> days(
                                ended(way.members().get(m).coats()),
                                ended(from.members().get(m).coats()))
                        - movedDays)
                .toArray();
        return new Saved(
                likely,
                quantile(members, MemberQuantile.ONE_IN_FIVE, Math::min, likely),
                quantile(members, MemberQuantile.FOUR_IN_FIVE, Math::max, likely),
                ready(from.likely()).isEmpty(),
                ready(way.likely()).isEmpty());
    }

    /** Returns when the last of the coats was ready in the likely run of a way, if all were. */
    public Optional<Instant> ready(Outcome likely) {
        boolean all = ours(likely.coats()).allMatch(coat -> coat.ready().isPresent());
        return all ? Optional.of(ended(likely.coats())) : Optional.empty();
    }

    private Stream<Outcome.CoatResult> ours(List<Outcome.CoatResult> coats) {
        return coats.stream().filter(coat -> walls.contains(coat.wall()));
    }

    private Instant ended(List<Outcome.CoatResult> coats) {
        return ours(coats)
                .map(coat -> coat.ready().orElse(end))
                .max(Instant::compareTo)
                .orElse(end);
    }

    /**
     * Tells whether two ways cannot be told apart: with members, the 1-in-5 and the 4-in-5 value of the difference straddle
     * zero; without, they differ by a day or a tenth at most.
     */
    public boolean isTie(EnsembleResult one, EnsembleResult other) {
        Saved difference = saved(other, one, 0);
        if (difference.low().isPresent() && difference.high().isPresent()) {
            return difference.low().getAsDouble() <= 0.0 && difference.high().getAsDouble() >= 0.0;
        }
        double most = Math.max(
                Math.abs(saved(one, 0).likely()), Math.abs(saved(other, 0).likely()));
        return Math.abs(difference.likely()) <= Math.max(TIE_DAYS, TIE_SHARE * most);
    }

    private static double days(Instant from, Instant to) {
        return Units.daysFromSeconds((double) Duration.between(from, to).toSeconds());
    }

    private static OptionalDouble quantile(double[] values, double share, DoubleBinaryOperator widen, double likely) {
        if (values.length == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(widen.applyAsDouble(MemberQuantile.of(values, share), likely));
    }
}
