package org.limedry.cli.delay;

/**
 * A row of dates and conditions side by side.
 *
 * @param item what it is about
 * @param planned as planned
 * @param actual as it happened
 * @param difference the difference, in words
 * @param kind how much it matters where room is short
 */
record LetterRow(String item, String planned, String actual, String difference, Kind kind) {
    /** How much a row matters. */
    enum Kind {
        /** It stays. */
        NEEDED,
        /** A coat between the first and the last. */
        BETWEEN,
        /** The row that the page is about. */
        ANSWER
    }

    /** Tells the template whether it is the row that the page is about. */
    boolean isAnswer() {
        return kind == Kind.ANSWER;
    }
}
