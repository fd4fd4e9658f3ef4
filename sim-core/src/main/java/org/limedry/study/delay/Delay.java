package org.limedry.study.delay;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * How much later than planned a coat was ready, and by what.
 *
 * <p>A date that never came counts as the end of the runs; the delay is then a least figure, see {@link #isOpen()}.
 *
 * @param causeDays days lost by each cause, days; negative where it helped
 * @param otherDays days between what the record says and the run in which every cause was as it happened
 * @param soonerDays days that would have been gained had this cause alone gone as planned and all others as they did
 * @param isOpen whether a date of any run lay past the end
 */
public record Delay(List<Double> causeDays, double otherDays, List<Double> soonerDays, boolean isOpen) {
    public Delay {
        causeDays = List.copyOf(causeDays);
        soonerDays = List.copyOf(soonerDays);
    }

    /**
     * Shares out the days between a plan and what happened.
     *
     * @param ready ready date of each run: bit i of the place in the list stands for cause i as it happened, 0 for as
     *     planned; two to the power of the number of causes
     * @param recorded ready date by the record: that of the last run, unless dates or tests of the record overrule it
     * @param end end of all runs
     */
    public static Delay of(List<Optional<Instant>> ready, Optional<Instant> recorded, Instant end) {
        int causes = Integer.numberOfTrailingZeros(ready.size());
        Check.that(ready.size() == 1 << causes, "ready", "one for each set of causes", ready.size());
        int all = ready.size() - 1;
        Instant origin = ready.get(0).orElse(end);
        List<Double> shares =
                Shares.of(causes, set -> days(origin, ready.get(set).orElse(end)));
        Instant last = ready.get(all).orElse(end);
        List<Double> sooner = IntStream.range(0, causes)
                .mapToObj(cause -> days(ready.get(all & ~(1 << cause)).orElse(end), last))
                .toList();
        return new Delay(
                shares,
                days(last, recorded.orElse(end)),
                sooner,
                recorded.isEmpty() || ready.stream().anyMatch(Optional::isEmpty));
    }

    /** Returns the days between the two dates, all causes and the rest together. */
    public double totalDays() {
        return causeDays.stream().mapToDouble(Double::doubleValue).sum() + otherDays;
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / (1000.0 * Units.SECONDS_PER_DAY);
    }
}
