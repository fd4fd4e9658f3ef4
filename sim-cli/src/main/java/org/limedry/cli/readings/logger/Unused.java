package org.limedry.cli.readings.logger;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A column with figures that was taken for nothing.
 *
 * @param number its number, from 1
 * @param words its number and its heading
 * @param looksLikeWind whether its heading speaks of wind
 */
public record Unused(int number, String words, boolean looksLikeWind) {
    private static final Pattern WIND = Pattern.compile("wind(?!ow)(?!.*(dir|gust|max))");

    /** Returns them in the order of the file; cells that only a spoilt line has are no column. */
    static List<Unused> of(Sheet sheet, Tally tally, Collection<Integer> used) {
        return IntStream.range(
                        0, Math.max(sheet.usualColumns(), sheet.headings().size()))
                .filter(column -> !used.contains(column))
                .filter(tally::hasFigure)
                .mapToObj(column -> new Unused(
                        column + 1,
                        sheet.words(column),
                        WIND.matcher(sheet.heading(column).toLowerCase(Locale.ROOT))
                                .find()))
                .toList();
    }

    /** Returns the column, with what to say if it is wind. */
    String wordsOnItsOwn(boolean windIsKnown) {
        return words
                + (looksLikeWind && !windIsKnown ? " (wind is taken in m/s only: --wind " + number + " if it is)" : "");
    }
}
