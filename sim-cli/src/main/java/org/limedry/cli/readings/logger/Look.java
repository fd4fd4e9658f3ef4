package org.limedry.cli.readings.logger;

import java.util.List;
import java.util.function.Predicate;

/** By what a line is seen to be a reading. Listed in the order in which they are tried. */
enum Look {
    /** It has a date and a number. */
    DATED(Row::looksLikeReading);

    private final Predicate<Row> test;

    Look(Predicate<Row> test) {
        this.test = test;
    }

    boolean takes(Row row) {
        return test.test(row);
    }

    /** Returns the first by which any line is a reading; the first of all if there is none. */
    static Look of(List<Row> rows) {
        for (Look look : values()) {
            if (rows.stream().anyMatch(look::takes)) {
                return look;
            }
        }
        return DATED;
    }
}
