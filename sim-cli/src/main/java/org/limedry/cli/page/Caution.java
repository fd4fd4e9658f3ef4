package org.limedry.cli.page;

/**
 * One caution: the danger first, then the act.
 *
 * @param danger the danger, to be followed by a colon
 * @param act what to do or not to do
 * @param brief both in a few words of plain ASCII, for the console
 */
public record Caution(String danger, String act, String brief) {}
