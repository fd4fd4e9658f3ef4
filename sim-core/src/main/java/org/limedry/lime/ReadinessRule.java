package org.limedry.lime;

import java.util.OptionalDouble;
import org.limedry.units.Check;

/**
 * A named rule for when the next coat may go on: every limit that is given must be met.
 *
 * <p>A calibrated proxy for firmness, never a measurement: the hand test overrules it.
 *
 * @param name what the user calls it ("green-hard"); not blank
 * @param suctionPa geometric mean suction of the coat at or above which it is firm enough, Pa
 * @param equivalentAgeDays age at 20 C that it must have reached, days
 * @param faceRelativeHumidity relative humidity its face must have fallen below, fraction
 * @param days days on the calendar that must have passed since it was laid
 */
public record ReadinessRule(
        String name,
        OptionalDouble suctionPa,
        OptionalDouble equivalentAgeDays,
        OptionalDouble faceRelativeHumidity,
        OptionalDouble days) {
    /**
     * Activation energy of the age that the rules count, J/mol: one for all mixes, 30 kJ/mol (implied by a supplier's rule
     * that 5 K colder takes 25 % longer, S33).
     */
    public static final double AGE_ACTIVATION_J_PER_MOL = 30_000.0;

    public ReadinessRule {
        Check.notBlank(name, "name");
        if (suctionPa.isEmpty() && equivalentAgeDays.isEmpty() && faceRelativeHumidity.isEmpty() && days.isEmpty()) {
            throw new IllegalArgumentException("rule: must have at least one limit, had none");
        }
    }

    /** Tells whether a coat in this state meets every limit. */
    public boolean isMetBy(CoatState state) {
        return !(state.meanSuctionPa() < suctionPa.orElse(0.0))
                && !(state.equivalentAgeDays() < equivalentAgeDays.orElse(0.0))
                && state.faceRelativeHumidity() < faceRelativeHumidity.orElse(Double.POSITIVE_INFINITY)
                && !(state.ageDays() < days.orElse(0.0));
    }
}
