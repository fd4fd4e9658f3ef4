package org.limedry.cli.readings.logger;

import org.limedry.units.Check;

/**
 * One thing found in a file that is not as it should be, or not sure. It is told, and what was done about it too.
 *
 * @param kind what it is
 * @param line the line it is on, or the first
 * @param lastLine the last line
 * @param words what stands there
 */
public record Found(Kind kind, int line, int lastLine, String words) {
    private static final int SHOWN_CHARS = 60;

    /** What can be found, and what is done about it. */
    public enum Kind {
        NOT_A_READING("a mark of the logger and no reading (alarm, power, end): left out"),
        CANNOT_BE_SPLIT("quotation marks that do not pair: left out"),
        OTHER_CELLS("more or fewer cells than the other lines: left out"),
        HEADINGS_AGAIN("the headings again: left out"),
        NO_TIME("no readable date and time: left out"),
        NO_SUCH_TIME(
                "a time that the clock jumped over in spring (a logger on winter time? say --zone +00:00): left out"),
        HOUR_TWICE("the hour that autumn has twice: first taken as summer time, then as winter time"),
        HOUR_ONCE("the hour that autumn has twice stands here once: taken as summer time"),
        NEWEST_FIRST("newest reading first: turned round"),
        OUT_OF_ORDER("earlier than the line before: sorted by time"),
        STRAY_CLOCK("more than a year from all other readings (clock not set?): left out"),
        SAID_TWICE("the same reading again: left out"),
        CONTRADICTION("the same time with other figures (two loggers in one file? see --only): the first was kept"),
        NO_NUMBER("no number where one should be: that figure left out"),
        OUT_OF_RANGE("a figure that no such sensor reads: that figure left out"),
        OVER_100("above 100 %: taken as 100"),
        BLANK("no figure at all: left out"),
        LONE_JUMP("one figure far off both its neighbours: kept"),
        STUCK("the same figure for a long time (stuck sensor?): kept"),
        FULL("100 % for hours (wet sensor, or fog): kept"),
        GAP("no readings: left open");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Returns what it is and what was done. */
        public String words() {
            return words;
        }
    }

    public Found {
        Check.atLeast(lastLine, line, "lastLine");
    }

    /** Returns what was found on a line; of long words, the beginning. */
    static Found on(int line, Kind kind, String words) {
        String one = words.strip();
        return new Found(kind, line, line, one.length() > SHOWN_CHARS ? one.substring(0, SHOWN_CHARS) + "..." : one);
    }

    /** Returns that a line as a whole is not as it should be. */
    static Found on(Row row, Kind kind) {
        return on(row.line(), kind, row.text());
    }

    /** Returns the same as something else. */
    Found as(Kind other) {
        return new Found(other, line, lastLine, words);
    }
}
