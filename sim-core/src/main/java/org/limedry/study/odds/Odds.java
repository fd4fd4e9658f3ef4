package org.limedry.study.odds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.StatUtils;
import org.limedry.simulation.Outcome;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.study.ReadyRange;
import org.limedry.study.Uncertain;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * How sure the ready date of one coat is, and which unknown makes it so unsure.
 *
 * <p>The dates of the members are explained by a sum of curves, one for each unknown ({@code a P1(u) + b P2(u)} with
 * Legendre's polynomials of {@code u = 2 q - 1}, or {@code a P1(u)} alone where members are few), by least squares. What one
 * curve explains is taken off the dates (of unknowns that hang together a curve through the dates by each alone); how much narrower the range between the 1-in-5 and the 4-in-5 date then is, is what
 * knowing that unknown exactly would be worth.
 *
 * <p><b>Source:</b> first-order effects by regression on the sample, as in Saltelli et al. 2008, Global sensitivity
 * analysis, chapter 1, FROM MEMORY. <b>Valid:</b> members spread evenly over each unknown. <b>Accuracy:</b> {@link
 * #explained()} tells which share of the variance the curves hold; the rest is weather, what unknowns do together, and noise.
 *
 * @param members ready dates of the members, in their order; empty for one not ready by the end of its run
 * @param oneInFive date by which one member in five is ready
 * @param median date by which half of them are
 * @param fourInFive date by which four in five are
 * @param influences one for each unknown, the most valuable first; empty if members are too few
 * @param explained share of the variance that the curves hold together, adjusted for their number; in [0, 1]
 */
public record Odds(
        List<Optional<Instant>> members,
        Optional<Instant> oneInFive,
        Optional<Instant> median,
        Optional<Instant> fourInFive,
        List<Influence> influences,
        double explained) {
    private static final double HALF = 0.50;

    /**
     * What one unknown does.
     *
     * @param unknown the unknown
     * @param daysOff by how much the range of dates would be narrower if it were known exactly, days; at least 0
     * @param share share of the variance that its curve holds; in [0, 1]
     * @param laterWhenHigh whether a high value makes the date later
     */
    public record Influence(Uncertain unknown, double daysOff, double share, boolean laterWhenHigh) {}

    public Odds {
        members = List.copyOf(members);
        influences = List.copyOf(influences);
    }

    /** How the unknowns of the members were drawn. */
    public enum Drawn {
        /** Each by itself. */
        ONE_BY_ONE,
        /** Some hang together, as after a fit: what one tells of the others is counted as its own, so that influences overlap. */
        TOGETHER
    }

    /**
     * Judges one coat.
     *
     * @param members the members of an ensemble; at least 4
     * @param coat which coat, counted from 0 in the order of the scenario
     * @param unknowns the unknowns that were drawn
     * @param end end of the runs, which stands for a date that never came
     * @param drawn how they were drawn
     */
    public static Odds of(
            List<EnsembleResult.Member> members, int coat, List<Uncertain> unknowns, Instant end, Drawn drawn) {
        Check.atLeast(members.size(), 4, "members");
        List<Optional<Instant>> dates = members.stream()
                .map(member -> member.coats().get(coat))
                .map(Outcome.CoatResult::ready)
                .toList();
        double[] days = dates.stream()
                .mapToDouble(date -> daysBefore(end, date.orElse(end)))
                .toArray();
        List<Draw> draws = members.stream().map(EnsembleResult.Member::draw).toList();
        DateCurves curves = DateCurves.through(draws, unknowns, days);
        Stream<Influence> each = drawn == Drawn.ONE_BY_ONE
                ? influences(unknowns, curves, days)
                : unknowns.stream().flatMap(unknown -> alone(unknown, draws, days).stream());
        List<Influence> influences = each.sorted(Comparator.comparingDouble(Influence::daysOff)
                        .thenComparingDouble(Influence::share)
                        .reversed())
                .toList();
        return new Odds(
                dates,
                ReadyRange.quantile(dates, MemberQuantile.ONE_IN_FIVE),
                ReadyRange.quantile(dates, HALF),
                ReadyRange.quantile(dates, MemberQuantile.FOUR_IN_FIVE),
                influences,
                curves.explained());
    }

    /** Returns how many members were not ready by the end of their run. */
    public long notReady() {
        return members.stream().filter(Optional::isEmpty).count();
    }

    /** Returns the days between the 1-in-5 and the 4-in-5 date; a date that never came counts as the end of the runs. */
    public static double widthDays(List<Optional<Instant>> dates, Instant end) {
        return width(dates.stream()
                .mapToDouble(date -> daysBefore(end, date.orElse(end)))
                .toArray());
    }

    private static double daysBefore(Instant end, Instant date) {
        return -Units.daysFromSeconds((double) Duration.between(date, end).toSeconds());
    }

    private static double width(double[] days) {
        return MemberQuantile.of(days, MemberQuantile.FOUR_IN_FIVE)
                - MemberQuantile.of(days, MemberQuantile.ONE_IN_FIVE);
    }

    /**
     * Returns what one unknown tells with all that it tells of others: by a curve through the middle dates of the places where it
     * lay, of which a fit leaves few, adjusted for their number; a range goes down with the root of the variance.
     */
    private static Optional<Influence> alone(Uncertain unknown, List<Draw> draws, double[] days) {
        Map<Draw, List<Double>> byPlace = new LinkedHashMap<>();
        for (int m = 0; m < days.length; m++) {
            byPlace.computeIfAbsent(draws.get(m).of(Set.of(unknown.key())), place -> new ArrayList<>())
                    .add(days[m]);
        }
        double[] middles = byPlace.values().stream()
                .mapToDouble(at -> at.stream().mapToDouble(day -> day).average().orElseThrow())
                .toArray();
        DateCurves curve = DateCurves.through(List.copyOf(byPlace.keySet()), List.of(unknown), middles);
        if (curve.count() == 0) {
            return Optional.empty();
        }
        double share = Math.min(
                1.0, curve.explained() * StatUtils.populationVariance(middles) / StatUtils.populationVariance(days));
        double left = Math.sqrt(1.0 - share);
        return Optional.of(new Influence(unknown, (1.0 - left) * width(days), share, curve.rises(0)));
    }

    private static Stream<Influence> influences(List<Uncertain> unknowns, DateCurves curves, double[] days) {
        return IntStream.range(0, curves.count()).mapToObj(i -> influence(unknowns.get(i), curves, i, days));
    }

    private static Influence influence(Uncertain unknown, DateCurves curves, int i, double[] days) {
        double[] curve = curves.curve(i);
        double[] without = new double[days.length];
        Arrays.setAll(without, m -> days[m] - curve[m]);
        double variance = StatUtils.variance(days);
        double share = variance > 0.0 ? Math.min(1.0, StatUtils.variance(curve) / variance) : 0.0;
        return new Influence(unknown, Math.max(0.0, width(days) - width(without)), share, curves.rises(i));
    }
}
