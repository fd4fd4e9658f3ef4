package org.limedry.cli.readings.logger;

/**
 * One thing that was understood about a file.
 *
 * @param what about what
 * @param words how it was understood, and why if it was not told
 */
public record Said(String what, String words) {}
