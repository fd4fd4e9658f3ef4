package org.limedry.cli.wallcase;

import org.limedry.wall.LayerPlan;

/**
 * One layer of a wall case.
 *
 * @param plan what it is and how it starts
 * @param laidAtHour hour at which it is laid; 0 if it is there from the start
 */
record CaseLayer(LayerPlan plan, double laidAtHour) {}
