package org.limedry.cli.site;

import org.limedry.lime.ReadinessRule;
import org.limedry.lime.ReadinessRules;

/**
 * The rule that the firm picked for when the next coat may go on.
 *
 * @param named the rule at its likely limits
 * @param kind where its limits come from
 */
record Rule(ReadinessRule named, Kind kind) {
    /** Where the limits of a rule come from. */
    enum Kind {
        /** Our calibrated limits for suction and age. */
        GREEN_HARD,
        /** The same, and a dry face. */
        DRY_WHITE,
        /** Limits that the firm states. */
        STATED
    }

    /**
     * Returns the rule with other limits where they are ours.
     *
     * @param suctionPa mean suction, Pa
     * @param ageDays age at 20 C, days
     * @param faceRelativeHumidity relative humidity at the face, fraction
     */
    ReadinessRule with(double suctionPa, double ageDays, double faceRelativeHumidity) {
        return switch (kind) {
            case GREEN_HARD -> ReadinessRules.greenHard(suctionPa, ageDays);
            case DRY_WHITE -> ReadinessRules.dryWhite(suctionPa, ageDays, faceRelativeHumidity);
            case STATED -> named;
        };
    }
}
