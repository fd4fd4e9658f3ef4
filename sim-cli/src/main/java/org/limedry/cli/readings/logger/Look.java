package org.limedry.cli.readings.logger;

import java.util.List;

/** By what a line is seen to be a reading. */
enum Look {
    /** It has a date and a number. */
    DATED,

    /** Its date stands in columns of its own: it has numbers for year, month and day, and one more. */
    DATE_IN_PARTS;

    private static final int LEAST_NUMBERS = 4;

    boolean takes(Row row) {
        return this == DATED ? row.looksLikeReading() : row.numbers() >= LEAST_NUMBERS;
    }

    /** Returns that by which lines of a file are readings. */
    static Look of(List<Row> rows) {
        boolean parts = rows.stream().noneMatch(Row::looksLikeReading)
                && rows.stream().anyMatch(row -> DateParts.of(row.cells()).isPresent());
        return parts ? DATE_IN_PARTS : DATED;
    }
}
