package org.limedry.material;

import org.limedry.reference.Estimate;
import org.limedry.units.Check;

/**
 * A figure that nobody on site can know: what is taken, in what range, and on what ground. Printed under "what we
 * assumed" and varied for the range of the dates.
 *
 * @param words what it is, to a reader; not blank
 * @param unit unit of the estimate as printed; empty for a plain number
 * @param estimate likely, low and high
 * @param byFactor whether the range is one of factors (low above 0) rather than of differences
 * @param status how it was obtained, in the words of the reference data: READ, COMPUTED, MEMORY, assumed
 * @param basis source number or reasoning; may be empty
 */
public record Assumed(String words, String unit, Estimate estimate, boolean byFactor, String status, String basis) {
    public Assumed {
        Check.notBlank(words, "words");
        Check.notBlank(status, "status");
        if (byFactor) {
            Check.positive(estimate.low(), words, unit);
        }
    }
}
