package org.limedry.cli.page;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Text for any terminal: plain ASCII, 80 columns. */
public final class Ascii {
    /** Columns of an answer. */
    public static final int COLUMNS = 80;

    private static final String INDENT = "  ";

    private Ascii() {}

    /** Returns the text in printable ASCII: accents dropped, units written out, anything else as a question mark. */
    public static String of(String text) {
        String known = text.replace("\u2212", "-")
                .replace("\u00b0C", "C")
                .replace("m\u00b2", "m2")
                .replace("m\u00b3", "m3")
                .replace("\u2019", "'")
                .replace("\u2013", "-")
                .replaceAll("(?<!\\d)\u00bd", "0.5")
                .replace("\u00bd", ".5");
        return Normalizer.normalize(known, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^\\x20-\\x7e]", "?");
    }

    /** Returns the text in lines of at most 80 columns, the second and later ones indented; long words are broken. */
    public static List<String> wrap(String text) {
        List<String> lines = new ArrayList<>();
        String rest = of(text).stripTrailing();
        while (rest.length() > COLUMNS) {
            int space = rest.lastIndexOf(' ', COLUMNS);
            boolean betweenWords = !rest.substring(0, Math.max(0, space)).isBlank();
            int cut = betweenWords ? space : COLUMNS;
            lines.add(rest.substring(0, cut).stripTrailing());
            rest = INDENT + rest.substring(cut).strip();
        }
        lines.add(rest);
        return lines;
    }

    /** Returns the text cut to a width, with two dots where something is missing, and padded to it. */
    public static String cell(String text, int width) {
        String ascii = of(text);
        String cut = ascii.length() < width ? ascii : ascii.substring(0, width - 3) + "..";
        return cut + " ".repeat(width - cut.length());
    }
}
