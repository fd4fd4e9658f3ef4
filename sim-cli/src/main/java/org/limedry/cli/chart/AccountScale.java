package org.limedry.cli.chart;

import java.math.BigDecimal;
import java.util.stream.Stream;

/**
 * The one scale of all bars of a water account.
 *
 * @param left where each bar starts, px
 * @param right where the longest bar ends, px
 * @param pxPerLitre px for each litre
 */
record AccountScale(double left, double right, double pxPerLitre) {
    /** Water that went round many times over may not shrink the account to nothing: its bar is cut instead. */
    private static final double MOST_TIMES_ROUND = 2;

    static AccountScale of(ShownAccount account, double left, double right) {
        double sum = Stream.of(account.totalIn(), account.totalNow())
                .mapToDouble(BigDecimal::doubleValue)
                .max()
                .orElse(0);
        double way = account.totalOnTheWay().doubleValue();
        double longest = sum > 0 ? Math.max(sum, Math.min(way, MOST_TIMES_ROUND * sum)) : way;
        return new AccountScale(left, right, longest > 0 ? (right - left) / longest : 0);
    }

    double px(BigDecimal litres) {
        return litres.doubleValue() * pxPerLitre;
    }

    /** Returns what to say of a bar so long, empty unless it is cut. */
    String cutWords(BigDecimal litres) {
        return cuts(litres) ? "bar cut off: it is longer than the page" : "";
    }

    /** Returns whether a bar so long has to be cut at the right end. */
    boolean cuts(BigDecimal litres) {
        return left + px(litres) > right + 0.5;
    }
}
