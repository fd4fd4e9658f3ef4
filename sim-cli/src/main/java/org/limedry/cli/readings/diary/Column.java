package org.limedry.cli.readings.diary;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The columns of a diary. A blank cell is something not written down; none of a thing is written as 0 or "no". */
public enum Column {
    DATE("date"),
    DOORS("doors open"),
    HEATER("heater hours"),
    DEHUMIDIFIER("dehumidifier hours"),
    LITRES("litres emptied"),
    GAS("gas kg"),
    MISTED("misted at"),
    HAND_TESTS("hand tests"),
    WET("running wet"),
    COVERS("covers"),
    BY("written by"),
    NOTE("note");

    private final String heading;

    Column(String heading) {
        this.heading = heading;
    }

    /** Returns what stands over it. */
    public String heading() {
        return heading;
    }

    static Optional<Column> of(String heading) {
        String small = heading.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(column -> column.heading.equals(small))
                .findFirst();
    }
}
