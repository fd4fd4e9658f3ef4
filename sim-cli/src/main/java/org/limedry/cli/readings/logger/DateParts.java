package org.limedry.cli.readings.logger;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Columns over which a heading names a part of the date.
 *
 * @param date year, month and day, in this order
 * @param time hour, and minute if there is one; nothing if no column is headed as the hour
 */
record DateParts(List<Integer> date, List<Integer> time) {
    private static final Pattern YEAR = word("year|yr|yyyy|jahr|ann[e\u00e9]e|a[n\u00f1]o|anno|jaar|\u00e5r|vuosi|rok");
    private static final Pattern MONTH =
            word("month|mon|mm|m|monat|mois|mes|mese|maand|m\u00e5ned|m\u00e5nad|kuukausi|kk|miesi[a\u0105]c");
    private static final Pattern DAY =
            word("day|dd|d|tag|jour|d[i\u00ed]a|giorno|dag|p\u00e4iv\u00e4|pv|dzie[n\u0144]");
    private static final Pattern HOUR =
            word("hour|hr|hh|h|time|stunde|uhrzeit|zeit|heure|hora|ora|uur|timme|klo|godzina");
    private static final Pattern MINUTE = word("minutes?|min|minuten?|minuto");

    /** The word alone, or with something in brackets or a clock behind it. */
    private static Pattern word(String words) {
        return Pattern.compile("(?:" + words + ")(?:\\s*[(\\[].*|\\s+(?:utc|gmt).*)?");
    }

    /** Returns the parts that headings name; nothing unless year, month and day each stand over one column. */
    static Optional<DateParts> of(List<String> headings) {
        List<Integer> date =
                Stream.of(YEAR, MONTH, DAY).flatMap(part -> at(headings, part)).toList();
        List<Integer> hour = at(headings, HOUR).toList();
        List<Integer> minute = at(headings, MINUTE).toList();
        boolean apart = date.size() == 3
                && Stream.of(YEAR, MONTH, DAY)
                        .allMatch(part -> at(headings, part).count() == 1);
        if (!apart) {
            return Optional.empty();
        }
        List<Integer> time = hour.size() == 1 && minute.size() == 1 ? List.of(hour.get(0), minute.get(0)) : hour;
        return Optional.of(new DateParts(date, time));
    }

    private static Stream<Integer> at(List<String> headings, Pattern part) {
        return IntStream.range(0, headings.size())
                .filter(i ->
                        part.matcher(headings.get(i).toLowerCase(Locale.ROOT)).matches())
                .boxed();
    }
}
