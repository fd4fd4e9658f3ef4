package org.limedry.study.doors;

/**
 * One night of a plan, from 20 to 6.
 *
 * @param open whether the doors stand open
 * @param frost whether a coat may freeze all the same
 * @param fumes whether a heater without a flue is on
 */
public record DoorNight(boolean open, boolean frost, boolean fumes) {}
