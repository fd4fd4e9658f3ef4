package org.limedry.cli.report;

/**
 * What finding the answer took.
 *
 * @param rangeRuns runs made for the ranges; 0 if only the likely dates were asked for
 * @param rangeRunsStopped of these, runs that stopped early
 * @param computeSeconds time from the start of the first run to the end of the last, s
 * @param version the version of limedry
 */
record Effort(int rangeRuns, int rangeRunsStopped, double computeSeconds, String version) {}
