package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.function.Supplier;
import org.limedry.reference.ReferenceTable;

/** Figures of a table as they are printed, and the rounding that goes with them. */
final class Printed {
    private Printed() {}

    /** Half of the last digit that is printed in a cell. */
    static double halfUnit(ReferenceTable.Row row, String column) {
        return new BigDecimal(row.text(column)).ulp().doubleValue() / 2.0;
    }

    /** Fails with the line of the table unless the found figure is as near to the printed one as the tolerance says. */
    static void assertNear(ReferenceTable.Row row, String column, double found, double tolerance) {
        double expected = row.number(column);
        assertTrue(Math.abs(found - expected) <= tolerance, text(row, column, found, tolerance));
    }

    /** The same with a relative tolerance on top of the rounding of the printed figure. */
    static void assertSame(ReferenceTable.Row row, String column, double found, double relative) {
        assertNear(row, column, found, halfUnit(row, column) * (1.0 + 1e-9) + relative * Math.abs(found));
    }

    /** Fails if the found figure is as near to the printed one as the tolerance: a flagged misprint must stay one. */
    static void assertMisprint(ReferenceTable.Row row, String column, double found, double tolerance) {
        double printed = row.number(column);
        assertTrue(Math.abs(found - printed) > tolerance, text(row, column, found, tolerance));
    }

    private static Supplier<String> text(ReferenceTable.Row row, String column, double found, double tolerance) {
        return () -> column + " in line " + row.line() + ": printed " + row.text(column) + ", found " + found
                + ", tolerance " + tolerance;
    }
}
