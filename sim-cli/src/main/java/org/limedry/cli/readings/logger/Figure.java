package org.limedry.cli.readings.logger;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a logger writes it, perhaps with its unit behind it.
 *
 * @param value what it says in its own unit
 * @param mark sign before its decimals: a point, a comma, or a blank for none
 * @param unit letter or sign of its unit: C, F, % or nothing
 */
record Figure(double value, char mark, String unit) {
    // A degree sign may have been spoilt by a wrong encoding: anything that is no letter, digit or blank may stand
    // there.
    private static final Pattern FORM = Pattern.compile(
            "([-+\u2212]?)(\\d{1,7})(?:([.,])(\\d{1,12}))?\\s*(?:[^\\p{Alnum}\\s.,;:/-]{0,3}\\s?"
                    + "(C|F)|deg\\.? ?([CF])|(%)(?: ?r\\.?[hF]\\.?)?|m/s)?",
            Pattern.CASE_INSENSITIVE);

    static Optional<Figure> of(String cell) {
        Matcher form = FORM.matcher(cell);
        if (!form.matches()) {
            return Optional.empty();
        }
        String decimals = form.group(4) == null ? "0" : form.group(4);
        double size = Double.parseDouble(form.group(2) + "." + decimals);
        boolean below = form.group(1).equals("-") || form.group(1).equals("\u2212");
        char mark = form.group(3) == null ? ' ' : form.group(3).charAt(0);
        return Optional.of(new Figure(below ? -size : size, mark, unit(form)));
    }

    private static String unit(Matcher form) {
        for (int group = 5; group <= 7; group++) {
            if (form.group(group) != null) {
                return form.group(group).toUpperCase(Locale.ROOT);
            }
        }
        return "";
    }

    /** Returns whether it can be read with this decimal mark. */
    boolean fits(DecimalMark decimals) {
        return mark == ' ' || mark == decimals.sign();
    }
}
