package org.limedry.lime;

import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * How far mould has grown on a timber face, from 0 (none) over 1 (begun, seen under a microscope) and 3 (seen by eye, under
 * 10 % covered) to 6 (all covered).
 *
 * <p>Made for sawn pine sapwood, and taken here for boards and for old paint and size, which hold dust and glue: no worse a
 * feeder than pine sapwood is assumed, without source. Fresh lime is far too alkaline to be judged by it and is never
 * asked.
 *
 * @param index the index, 0 to 6
 * @param pausedHours hours since the face was last fit for growth
 */
public record MouldIndex(double index, double pausedHours) {
    /** The index at which growth has begun. */
    public static final double BEGUN = 1.0;

    /** The index from which growth is seen by eye. */
    public static final double SEEN = 3.0;

    private static final double MOST = 6.0;
    private static final double WARMEST_CELSIUS = 50.0;
    private static final double DAYS_PER_WEEK = 7.0;

    /** Hours of drought over which growth falls back, stands, and falls back slowly. */
    private static final double FALLS_BACK_HOURS = 6.0;

    private static final double STANDS_UNTIL_HOURS = 24.0;
    private static final double QUICK_LOSS_PER_DAY = 0.032;
    private static final double SLOW_LOSS_PER_DAY = 0.016;

    public MouldIndex {
        Check.that(index >= 0.0 && index <= MOST, "index", "0 to 6", index);
        Check.nonNegative(pausedHours, "pausedHours", "h");
    }

    /** Returns a clean face. */
    public static MouldIndex clean() {
        return new MouldIndex(0.0, 0.0);
    }

    /**
     * Returns the humidity below which nothing grows on pine.
     *
     * <p>{@code -0.00267 t^3 + 0.160 t^2 - 3.13 t + 100} up to 20 C, 80 above. <b>Source:</b> Hukka and Viitanen 1999, Wood
     * Science and Technology 33, 475-485 (S60), FROM MEMORY. <b>Valid:</b> 0 to 50 C. <b>Accuracy:</b> that of the
     * laboratory tests behind it, a few percent of humidity.
     *
     * @param celsius temperature of the face, C
     * @return relative humidity, percent; 100 below 0 C
     */
    public static double criticalPercent(double celsius) {
        Check.finite(celsius, "celsius", "C");
        if (celsius <= 0.0) {
            return 100.0;
        }
        return celsius > 20.0 ? 80.0 : ((-0.00267 * celsius + 0.160) * celsius - 3.13) * celsius + 100.0;
    }

    /**
     * Returns the index after some time in one climate, in one explicit step: an hour moves it by less than 0.02.
     *
     * <p>Growth {@code dM/dt = k1 k2 / (7 t_m)} a day, {@code t_m = exp(-0.68 ln t - 13.9 ln phi + 66.02)} weeks to index 1,
     * {@code k1 = 1} below index 1 and {@code 2 / (t_v/t_m - 1)} from there with
     * {@code t_v = exp(-0.74 ln t - 12.72 ln phi + 61.50)} weeks to index 3, {@code k2 = max(0, 1 - exp(2.3 (M - M_max)))},
     * {@code M_max = 1 + 7 x - 2 x^2}, {@code x = (phi_crit - phi)/(phi_crit - 100)}; pine, sawn. Else it falls by 0.032 a
     * day for 6 hours, stands until 24 hours, then falls by 0.016 a day. <b>Source:</b> Hukka and Viitanen 1999 (S60), FROM
     * MEMORY. <b>Valid:</b> above 0 to 50 C; outside it stands still. <b>Accuracy:</b> the index of a real face may differ
     * by one or two.
     *
     * @param celsius temperature of the face, C
     * @param relativeHumidity at the face, fraction; at least 0
     * @param hours how long, h; at least 0
     */
    public MouldIndex after(double celsius, double relativeHumidity, double hours) {
        Check.nonNegative(relativeHumidity, "relativeHumidity", "fraction");
        Check.nonNegative(hours, "hours", "h");
        double percent = Math.min(100.0, Units.percentFromFraction(relativeHumidity));
        if (celsius <= 0.0 || celsius > WARMEST_CELSIUS) {
            return this;
        }
        double days = hours / 24.0;
        if (percent > criticalPercent(celsius)) {
            return new MouldIndex(Math.min(MOST, index + days * growthPerDay(celsius, percent)), 0.0);
        }
        return new MouldIndex(Math.max(0.0, index - days * lossPerDay()), pausedHours + hours);
    }

    private double growthPerDay(double celsius, double percent) {
        double begunWeeks = Math.exp(-0.68 * Math.log(celsius) - 13.9 * Math.log(percent) + 66.02);
        double seenWeeks = Math.exp(-0.74 * Math.log(celsius) - 12.72 * Math.log(percent) + 61.50);
        double whenBegun = index < BEGUN ? 1.0 : 2.0 / (seenWeeks / begunWeeks - 1.0);
        double critical = criticalPercent(celsius);
        double over = (critical - percent) / (critical - 100.0);
        double most = 1.0 + 7.0 * over - 2.0 * over * over;
        double nearMost = Math.max(0.0, 1.0 - Math.exp(2.3 * (index - most)));
        return whenBegun * nearMost / (DAYS_PER_WEEK * begunWeeks);
    }

    private double lossPerDay() {
        if (pausedHours < FALLS_BACK_HOURS) {
            return QUICK_LOSS_PER_DAY;
        }
        return pausedHours < STANDS_UNTIL_HOURS ? 0.0 : SLOW_LOSS_PER_DAY;
    }
}
