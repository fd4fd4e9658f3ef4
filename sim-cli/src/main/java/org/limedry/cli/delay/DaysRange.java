package org.limedry.cli.delay;

import java.util.List;
import org.limedry.cli.page.Figures;
import org.limedry.units.Check;

/**
 * The least and the most days that a figure came to over all reckonings, the likely one among them.
 *
 * @param low the least, exactly
 * @param high the most, exactly
 * @param lowShown the least as printed, whole days; not above the figure as printed
 * @param highShown the most as printed; not below it
 */
public record DaysRange(double low, double high, long lowShown, long highShown) {
    public DaysRange {
        Check.inClosed(low, Double.NEGATIVE_INFINITY, high, "low", "days");
    }

    /**
     * Returns the range of a figure.
     *
     * @param days the figure in each reckoning; at least one
     * @param shown the likely figure as printed, which the making up of a sum may have moved by a day
     */
    static DaysRange of(List<Double> days, long shown) {
        Check.notEmpty(days, "days");
        double low = days.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double high = days.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return new DaysRange(low, high, Math.min(shown, Math.round(low)), Math.max(shown, Math.round(high)));
    }

    /**
     * Tells whether the figure is none in some reckoning, or has one sign in some and the other in others; one that is none in
     * all is no "may be".
     */
    boolean mayBeNothing() {
        return lowShown <= 0 && highShown >= 0 && lowShown < highShown;
    }

    /** Returns "between 0 and 40", or "7 in every reckoning" where every reckoning says the same. */
    String words() {
        return lowShown == highShown
                ? Figures.whole(lowShown) + " in every reckoning"
                : "between " + Figures.whole(lowShown) + " and " + Figures.whole(highShown);
    }

    /** Returns "0 to 40" for a chart. */
    String brief() {
        return Figures.whole(lowShown) + " to " + Figures.whole(highShown);
    }

    /** Returns the range of a delay, early days named: "between 3 early and 20 late". */
    String lateWords() {
        if (lowShown < 0 && highShown > 0) {
            return "between " + Figures.whole(-lowShown) + " early and " + Figures.whole(highShown) + " late";
        }
        return highShown <= 0 && lowShown < 0 ? new DaysRange(-high, -low, -highShown, -lowShown).words() : words();
    }
}
