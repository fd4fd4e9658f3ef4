package org.limedry.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LinearTableTest {
    private final LinearTable table =
            new LinearTable(new double[] {3.0, 50.0, 210.0}, new double[] {2.0e-11, 1.5e-11, 0.0});

    // EXACT: rows, chords between them, ends held.
    @ParameterizedTest
    @CsvSource({
        "0, 2.0e-11, 0",
        "3, 2.0e-11, 0",
        "26.5, 1.75e-11, -1.0638297872340425e-13",
        "50, 1.5e-11, -9.375e-14",
        "130, 7.5e-12, -9.375e-14",
        "210, 0, 0",
        "999, 0, 0"
    })
    void table_isLinearAndHeldPastItsEnds(double water, double value, double slope) {
        assertEquals(value, table.at(water), 1.0e-26); // rounding
        assertEquals(slope, table.slopeAt(water), 1.0e-27); // rounding
    }

    @Test
    void table_waterNotRising_isRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new LinearTable(new double[] {3.0, 3.0}, new double[] {1.0, 2.0}));
        assertThrows(
                IllegalArgumentException.class,
                () -> new LinearTable(new double[] {3.0, Double.NaN}, new double[] {1.0, 2.0}));
    }
}
