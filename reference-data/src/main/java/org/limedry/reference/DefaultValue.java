package org.limedry.reference;

import java.util.OptionalDouble;

/**
 * A default of {@code materials/defaults}: what is taken when nobody says otherwise.
 *
 * @param row the row of the table
 */
public record DefaultValue(ReferenceTable.Row row) {
    /** Letter of the section of the table: A mix, B suction, C properties, D carbonation, E curing, F plant, H timber. */
    public String section() {
        return row.text("section");
    }

    /** Name of the quantity, which is also its key. */
    public String parameter() {
        return row.text("parameter");
    }

    /** Unit of all figures of this row. */
    public String unit() {
        return row.text("unit");
    }

    /**
     * The value to use.
     *
     * @throws IllegalStateException if the table gives words or a range instead of one number
     */
    public double likely() {
        return row.number("default");
    }

    /** The value to use as the table words it, which in one row is a range. */
    public String likelyText() {
        return row.text("default");
    }

    /** Lower end of the range; empty when the table gives none. */
    public OptionalDouble low() {
        return row.optionalNumber("low");
    }

    /** Upper end of the range; empty when the table gives none. */
    public OptionalDouble high() {
        return row.optionalNumber("high");
    }

    /**
     * The value with its range; an end that the table does not give is the value itself.
     *
     * @throws IllegalStateException if the table gives words or a range instead of one number
     */
    public Estimate estimate() {
        return row.estimate("default", "low", "high");
    }

    /** How the figure was obtained. */
    public String status() {
        return row.text("status");
    }

    /** Source number (see {@code materials/sources}) or reasoning; empty when there is none. */
    public String basis() {
        return row.text("basis");
    }
}
