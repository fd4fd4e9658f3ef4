package org.limedry.cli.site;

/**
 * Something that was taken since nobody said otherwise, as the report lists it.
 *
 * @param words what it is
 * @param value what was taken, in words or figures
 * @param unit unit; empty for words
 * @param range range tried, such as "0.2 to 2"; empty where none was
 * @param source where it comes from, "from memory" where from nowhere else
 */
public record Assumption(String words, String value, String unit, String range, String source) {}
