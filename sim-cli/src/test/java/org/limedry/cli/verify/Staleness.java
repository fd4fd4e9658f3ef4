package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Tells whether a file still says what is found, whatever the last digits of a machine. */
final class Staleness {
    /** Pieces of the row of a benchmark figure, split at its bars, and the piece that holds the band. */
    private static final int FIGURE_PIECES = 10;

    private static final int BAND_PIECE = 7;

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+\\.?[0-9]*(e[+-]?[0-9]+)?");

    private Staleness() {}

    /** Returns the lines in which two pages differ by more than a fiftieth of the accepted difference. */
    static List<String> ofPage(String committed, String now) {
        return differences(committed, now, (old, fresh) -> isSame(old.split("\\|", -1), fresh.split("\\|", -1)));
    }

    /** Returns the lines in which two drawings differ by more than half a px, or in words. */
    static List<String> ofDrawing(String committed, String now) {
        return differences(committed.replace(">", ">\n"), now.replace(">", ">\n"), Staleness::isSameDrawing);
    }

    private interface Sameness {
        boolean holds(String old, String fresh);
    }

    private static List<String> differences(String committed, String now, Sameness same) {
        List<String> old = committed.lines().toList();
        List<String> fresh = now.lines().toList();
        if (old.size() != fresh.size()) {
            return List.of("lines: " + old.size() + " against " + fresh.size());
        }
        List<String> different = new ArrayList<>();
        for (int k = 0; k < old.size(); k++) {
            if (!old.get(k).equals(fresh.get(k)) && !same.holds(old.get(k), fresh.get(k))) {
                different.add(old.get(k) + "  <>  " + fresh.get(k));
            }
        }
        return different;
    }

    private static boolean isSame(String[] old, String[] fresh) {
        boolean isFigure = fresh.length == FIGURE_PIECES && isNumber(fresh[BAND_PIECE]);
        double slack = 0.02 * (isFigure ? Double.parseDouble(fresh[BAND_PIECE]) : 1.0);
        boolean same = old.length == fresh.length;
        for (int k = 0; same && k < old.length; k++) {
            same = old[k].equals(fresh[k]) || isClose(old[k], fresh[k], slack);
        }
        return same;
    }

    private static boolean isClose(String one, String other, double slack) {
        if (!isNumber(one) || !isNumber(other)) {
            return false;
        }
        double value = Double.parseDouble(one);
        // The page has five digits.
        return Math.abs(value - Double.parseDouble(other)) <= slack + 1.0e-4 * Math.abs(value);
    }

    private static boolean isNumber(String text) {
        return NUMBER.matcher(text.strip()).matches();
    }

    private static boolean isSameDrawing(String old, String fresh) {
        List<String> before = numbers(old);
        List<String> after = numbers(fresh);
        boolean same = before.size() == after.size()
                && NUMBER.matcher(old)
                        .replaceAll("#")
                        .equals(NUMBER.matcher(fresh).replaceAll("#"));
        for (int k = 0; same && k < before.size(); k++) {
            same = Math.abs(Double.parseDouble(before.get(k)) - Double.parseDouble(after.get(k))) <= 0.5;
        }
        return same;
    }

    private static List<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(found -> found.group()).toList();
    }
}
