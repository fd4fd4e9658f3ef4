package org.limedry.study;

import org.limedry.units.Check;

/**
 * One input that nobody on site can know: low, likely and high.
 *
 * <p>Half of the chance lies between low and likely and half between likely and high, evenly in the value or, for
 * quantities known to a factor, evenly in its logarithm. Judgement, not a measured distribution.
 *
 * @param key short name, unique on a site ("leakage.store"); not blank
 * @param words what the report calls it; not blank
 * @param unit unit as printed
 * @param low low value
 * @param likely value of the likely run; from {@code low} to {@code high}
 * @param high high value
 * @param byFactor whether the range is one of factors
 * @param status how the value was obtained, in the words of the reference data
 * @param source source or basis as printed
 */
public record Uncertain(
        String key,
        String words,
        String unit,
        double low,
        double likely,
        double high,
        boolean byFactor,
        String status,
        String source) {
    public Uncertain {
        Check.notBlank(key, "key");
        Check.notBlank(words, "words");
        Check.inClosed(likely, low, high, key, unit);
        if (byFactor) {
            Check.positive(low, key, unit);
        }
    }

    /**
     * Returns something that is told by its place alone, from 0 to 1: which of several ways it is.
     *
     * @param key short name, unique on a site; not blank
     * @param words what the report calls it; not blank
     * @param status how the ways were obtained
     * @param source which ways there are, as printed
     */
    public static Uncertain byPlace(String key, String words, String status, String source) {
        return new Uncertain(key, words, "", 0.0, 0.5, 1.0, false, status, source);
    }

    /** Returns the value in this draw. */
    public double in(Draw draw) {
        double u = draw.quantile(key);
        double from = u < 0.5 ? low : likely;
        double to = u < 0.5 ? likely : high;
        double share = u < 0.5 ? 2.0 * u : 2.0 * u - 1.0;
        return byFactor ? from * Math.pow(to / from, share) : from + (to - from) * share;
    }
}
