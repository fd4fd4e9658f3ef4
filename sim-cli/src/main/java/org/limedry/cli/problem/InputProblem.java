package org.limedry.cli.problem;

import java.util.Locale;

/**
 * One thing wrong with one input, printed as {@code site.yaml:23: coats[1].thicknessMm: 110; must be 2 to 60}.
 *
 * @param file the file as the user named it; not blank
 * @param line line in that file, counted from 1; 0 when the whole file is meant
 * @param path path of the field, such as {@code rooms.store.walls.north.areaM2}; empty when the whole file is meant
 * @param rule what should stand there, such as "must be 2 to 60" or "nearest: wetness"
 * @param found what stands there instead, in a word or two
 */
public record InputProblem(String file, int line, String path, String rule, String found) {
    /** Returns the problem as one line of text. */
    public String text() {
        String fileAndLine = line > 0 ? String.format(Locale.ROOT, "%s:%d", file, line) : file;
        String place = path.isEmpty() ? fileAndLine : fileAndLine + ": " + path;
        return oneLine(place + ": " + found + "; " + rule);
    }

    /** Input may hold line breaks and worse; a problem stays on one readable line all the same. */
    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", " ").replaceAll("\\p{Cntrl}", "?");
    }
}
