package org.limedry.cli.site;

/**
 * A gang.
 *
 * @param name what the user calls it
 * @param people how many people it is
 * @param m2PerDay one coat that it lays in a day, m2
 * @param outputGiven whether the file says that output; else it is common practice
 */
public record GangPlan(String name, int people, double m2PerDay, boolean outputGiven) {}
