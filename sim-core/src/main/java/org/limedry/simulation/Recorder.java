package org.limedry.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Writes one row of figures an hour and turns them into series at the end. */
final class Recorder {
    private final List<Instant> times = new ArrayList<>();
    private final int columns;
    private double[] table;

    Recorder(int columns, int hours) {
        this.columns = columns;
        table = new double[columns * Math.max(1, hours)];
    }

    /** Starts a row. */
    void at(Instant instant) {
        times.add(instant);
        if (times.size() * columns > table.length) {
            table = Arrays.copyOf(table, 2 * table.length);
        }
    }

    /** Writes a figure into the present row. */
    void put(int column, double value) {
        table[(times.size() - 1) * columns + column] = value;
    }

    List<Instant> times() {
        return times;
    }

    Series series(int column) {
        double[] values = new double[times.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = table[i * columns + column];
        }
        return Series.copyOf(values, values.length);
    }
}
