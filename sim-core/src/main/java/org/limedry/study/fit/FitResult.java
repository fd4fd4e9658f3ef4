package org.limedry.study.fit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.limedry.study.Uncertain;

/**
 * What a fit found.
 *
 * @param unknowns the unknowns, in the order of {@link Fitted#keys()}
 * @param fitted where they lie now
 * @param untold those of which the readings told nothing: about the likely values nine tenths of their spread are left or more, and
 *     eight tenths over the points, if there are any
 * @param offsets what each logger reads too much: "celsius.NAME" in K, "humidity.NAME" as a fraction
 * @param channels how well each kind of reading is met before and after
 * @param residuals one entry for each reading, in the order given
 * @param effort how the fit ended, and what it took
 * @param leaveOut what would have been found without some readings
 */
public record FitResult(
        List<Uncertain> unknowns,
        Fitted fitted,
        List<Uncertain> untold,
        Map<String, Double> offsets,
        List<Channel> channels,
        List<Residual> residuals,
        Effort effort,
        LeaveOut leaveOut) {
    /** Root mean square misfit, in sigma, above which the model does not explain the readings. */
    public static final double BAD_SIGMA = 2.0;

    /** Sigmas beyond which a reading is wild, and an offset none: one of 16 000 lies there by chance. */
    public static final double WILD_SIGMA = 4.0;

    /** Share of its spread that an unknown must lose over the points: that of 32 points is told to an eighth. */
    private static final double TOLD_BY_POINTS = 0.2;

    public FitResult {
        unknowns = List.copyOf(unknowns);
        untold = List.copyOf(untold);
        offsets = Map.copyOf(offsets);
        channels = List.copyOf(channels);
        residuals = List.copyOf(residuals);
    }

    /** How a fit ended. */
    public enum Ending {
        /** No step would move it by what matters. */
        CONVERGED,
        /** It had made as many steps as it may: the best of them stands, its dates are worth nothing. */
        STOPPED,
        /** The solver gave up in the likely run, before the last reading: the unknowns keep their ranges. */
        NO_LIKELY_RUN
    }

    /**
     * How the fit ended, and what it took.
     *
     * @param ending how it ended
     * @param runs runs made, all told
     * @param steps steps tried, each with one run
     */
    public record Effort(Ending ending, int runs, int steps) {}

    /**
     * One kind of readings of one thing.
     *
     * @param name kind and thing: "room temperature, store"
     * @param readings how many
     * @param before root mean square of the misfits in the likely run, sigma as given
     * @param after the same in the fitted run, offsets taken off, sigma as given
     * @param lagCorrelation correlation of neighbouring readings in what the first fit left over; 0 where it cannot be told
     * @param errorFactor factor by which the errors were taken wider in the fit, because readings are wrong together; at least 1
     * @param offsetSigmas what the readings have too much, in errors of an offset; 0 where none is shared
     */
    public record Channel(
            String name,
            int readings,
            double before,
            double after,
            double lagCorrelation,
            double errorFactor,
            double offsetSigmas) {
        /** Tells whether the offset is larger than a logger can have: something else is wrong with it. */
        public boolean isFarOff() {
            return Math.abs(offsetSigmas) > WILD_SIGMA;
        }
    }

    /** Returns the same with points drawn from what is left open; they too tell of which unknowns something was told. */
    FitResult with(Fitted drawn, int runs) {
        Effort all = new Effort(effort.ending(), runs, effort.steps());
        List<Uncertain> still = untold.stream()
                .filter(unknown -> drawn.spread(unknowns.indexOf(unknown)) > 1.0 - TOLD_BY_POINTS)
                .toList();
        return new FitResult(unknowns, drawn, still, offsets, channels, residuals, all, leaveOut);
    }

    /** Returns how the fit ended. */
    public Ending ending() {
        return effort.ending();
    }

    /** Tells whether the fit converged. */
    public boolean isConverged() {
        return effort.ending() == Ending.CONVERGED;
    }

    /** Returns how many runs were made. */
    public int runs() {
        return effort.runs();
    }

    /** Returns the channels that the fitted model does not explain; with any of them its dates are worth nothing. */
    public List<Channel> unexplained() {
        return channels.stream()
                .filter(channel -> !(channel.after() <= BAD_SIGMA) || channel.isFarOff())
                .toList();
    }

    /** Returns the readings that lie too far from what all others foretell to be there by chance. */
    public List<Residual> wild() {
        return residuals.stream()
                .filter(residual -> Math.abs(residual.sigmasFromTheOthers()) > WILD_SIGMA)
                .toList();
    }

    /**
     * Returns what would have been found without the readings that the test names, without a run.
     *
     * @see LeaveOut
     */
    public Fitted without(Predicate<Reading> leftOut) {
        return leaveOut.without(leftOut);
    }

    /**
     * Returns what would have been found without each group of readings in turn, without a run.
     *
     * @param groupOf names the group of a reading: {@link Reading#channel()}, or the week, or the reading itself
     * @return by group, in the order of the readings
     */
    public Map<String, Fitted> withoutEach(Function<Reading, String> groupOf) {
        Set<String> groups = new LinkedHashSet<>();
        residuals.forEach(residual -> groups.add(groupOf.apply(residual.reading())));
        Map<String, Fitted> without = new LinkedHashMap<>();
        groups.forEach(group ->
                without.put(group, without(reading -> groupOf.apply(reading).equals(group))));
        return without;
    }
}
