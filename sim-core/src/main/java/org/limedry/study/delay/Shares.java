package org.limedry.study.delay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.limedry.units.Check;

/** Shares out what several causes did together. */
public final class Shares {
    private static final int MOST_CAUSES = 16;

    private Shares() {}

    /**
     * Returns each cause's average effect over every order of adding the causes: the shares add up to what all causes did
     * together, whatever they do to one another.
     *
     * <p>{@code share(i) = sum over sets S without i of |S|! (n - |S| - 1)! / n! (value(S with i) - value(S))}.
     *
     * <p><b>Source:</b> Shapley 1953, A value for n-person games, in Contributions to the Theory of Games II, Princeton,
     * 307-317, FROM MEMORY. <b>Valid:</b> 0 to 16 causes. <b>Accuracy:</b> rounding only. Does not say that a cause would
     * have done as much alone, nor when.
     *
     * @param causes how many causes there are
     * @param value what a set of causes does; bit i of the set stands for cause i; asked once for each set
     * @return one share for each cause, in the unit of {@code value}
     * @throws IllegalArgumentException if a value is not finite
     */
    public static List<Double> of(int causes, IntToDoubleFunction value) {
        Check.inClosed(causes, 0, MOST_CAUSES, "causes", "");
        double[] values = IntStream.range(0, 1 << causes).mapToDouble(value).toArray();
        for (double some : values) {
            Check.finite(some, "value", "");
        }
        List<Double> shares = new ArrayList<>();
        for (int cause = 0; cause < causes; cause++) {
            shares.add(share(cause, causes, values));
        }
        return List.copyOf(shares);
    }

    private static double share(int cause, int causes, double[] values) {
        int bit = 1 << cause;
        double share = 0.0;
        for (int set = 0; set < values.length; set++) {
            if ((set & bit) == 0) {
                share += weight(Integer.bitCount(set), causes) * (values[set | bit] - values[set]);
            }
        }
        return share;
    }

    /** Returns {@code s! (n - s - 1)! / n!}: one over n times the number of sets of s out of n - 1. */
    private static double weight(int members, int causes) {
        double sets = 1.0;
        for (int k = 1; k <= members; k++) {
            sets *= (double) (causes - k) / k;
        }
        return 1.0 / (causes * sets);
    }

    /**
     * Rounds shares, negative ones too, to whole numbers that add up to a whole total, by largest remainder: all are
     * rounded down, then those that lost most get one more each.
     *
     * @param shares the shares
     * @param total what the whole numbers must add up to; meant to lie within a few units of the sum of the shares
     */
    public static List<Long> whole(List<Double> shares, long total) {
        Check.that(!shares.isEmpty() || total == 0, "total", "0 where there are no shares", total);
        List<Long> whole = new ArrayList<>();
        for (double share : shares) {
            Check.finite(share, "shares", "");
            whole.add((long) Math.floor(share));
        }
        List<Integer> byLoss = IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> whole.get(i) - shares.get(i)))
                .toList();
        long missing = total - whole.stream().mapToLong(Long::longValue).sum();
        long step = Long.signum(missing);
        for (long given = 0; given < Math.abs(missing); given++) {
            int turn = Math.toIntExact(given % byLoss.size());
            int index = byLoss.get(step > 0 ? turn : byLoss.size() - 1 - turn);
            whole.set(index, whole.get(index) + step);
        }
        return List.copyOf(whole);
    }
}
