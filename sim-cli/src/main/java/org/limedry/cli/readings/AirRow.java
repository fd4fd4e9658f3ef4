package org.limedry.cli.readings;

import java.util.List;
import java.util.OptionalDouble;
import org.limedry.air.MoistAir;

/** One row of a table of air states: its cells as they were written, and what they say. */
public final class AirRow {
    private final List<String> cells;
    private final MoistAir air;
    private final double wallCelsius;

    /**
     * Keeps a row.
     *
     * @param wallCelsius wall temperature, °C; NaN when the row names none
     */
    AirRow(List<String> cells, MoistAir air, double wallCelsius) {
        this.cells = List.copyOf(cells);
        this.air = air;
        this.wallCelsius = wallCelsius;
    }

    /** The cells as they were written, in the order of the heading. */
    public List<String> cells() {
        return cells;
    }

    /** The air. */
    public MoistAir air() {
        return air;
    }

    /** Wall temperature, °C; empty when the row names none. */
    public OptionalDouble wallCelsius() {
        return Double.isNaN(wallCelsius) ? OptionalDouble.empty() : OptionalDouble.of(wallCelsius);
    }
}
