package org.limedry.study;

import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * The figure below which a share of the members of an ensemble stays, linear between the two next to it.
 *
 * <p><b>Source:</b> definition 6 of Hyndman and Fan 1996, Sample quantiles in statistical packages, The American
 * Statistician 50, 361-365, FROM MEMORY. For dates, which may be missing, see {@link ReadyRange}.
 */
public final class MemberQuantile {
    /** Share of the members that is below the low end of a range. */
    public static final double ONE_IN_FIVE = 0.20;

    /** Share of the members that is below the high end of a range. */
    public static final double FOUR_IN_FIVE = 0.80;

    /** Share of the members that is below the low end of a range that holds four in five. */
    public static final double ONE_IN_TEN = 0.1;

    /** Share of the members that is below the high end of such a range. */
    public static final double NINE_IN_TEN = 0.9;

    private MemberQuantile() {}

    /**
     * Returns the figure.
     *
     * @param values one for each member; at least one
     * @param share share of the members; above 0 and at most 1
     */
    public static double of(double[] values, double share) {
        Check.that(values.length > 0, "values", "at least one", 0);
        return new Percentile()
                .withEstimationType(Percentile.EstimationType.R_6)
                .evaluate(values, Units.percentFromFraction(share));
    }
}
