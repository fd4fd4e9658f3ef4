package org.limedry.lime;

/**
 * What a readiness rule looks at.
 *
 * @param meanSuctionPa geometric mean of the suction over the thickness of the coat, Pa
 * @param equivalentAgeDays age at 20 C, days; stands still below 0 C
 * @param faceRelativeHumidity relative humidity in the pores at the face, fraction
 * @param ageDays days on the calendar since it was laid
 */
public record CoatState(double meanSuctionPa, double equivalentAgeDays, double faceRelativeHumidity, double ageDays) {}
