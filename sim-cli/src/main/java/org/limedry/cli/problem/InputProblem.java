package org.limedry.cli.problem;

import java.util.Locale;

/**
 * One thing wrong with one input.
 *
 * @param file the file as the user named it; not blank
 * @param line line in that file, counted from 1; 0 when the whole file is meant
 * @param path path of the field, such as {@code rooms.store.walls.north.areaM2}; empty when the whole file is meant
 * @param rule the rule that was broken, to follow the words "must be"
 * @param found what stood there instead
 */
public record InputProblem(String file, int line, String path, String rule, String found) {
    /** Returns the problem as one line of text. */
    public String text() {
        return place() + ": must be " + oneLine(rule) + ", was " + oneLine(found);
    }

    private String place() {
        String fileAndLine = line > 0 ? String.format(Locale.ROOT, "%s line %d", file, line) : file;
        return path.isEmpty() ? fileAndLine : fileAndLine + ": " + path;
    }

    /** Input may hold line breaks; a problem stays on one line all the same. */
    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", " ");
    }
}
