package org.limedry.proof.tables;

import java.math.BigDecimal;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import org.limedry.reference.ReferenceTable;

/**
 * How far a finding may lie from a cell of a table.
 *
 * @param size its size for a row and its finding, in the unit of the cell
 * @param reason why so much
 */
record Tolerance(ToDoubleBiFunction<ReferenceTable.Row, Double> size, String reason) {
    /** Half a unit is as a decimal; what stands in a table is a decimal too. */
    private static final double ROUNDING = 1.0 + 1.0e-9;

    /** Returns the same size for every row. */
    static Tolerance of(double size, String reason) {
        return new Tolerance((row, found) -> size, reason);
    }

    /** Returns a size by row. */
    static Tolerance of(ToDoubleFunction<ReferenceTable.Row> size, String reason) {
        return new Tolerance((row, found) -> size.applyAsDouble(row), reason);
    }

    /** Returns a share of the finding beside half of the last digit that is printed in a column. */
    static Tolerance printed(String column, double relative, String reason) {
        return new Tolerance((row, found) -> halfUnit(row, column) * ROUNDING + relative * Math.abs(found), reason);
    }

    /** Returns half of the last digit that is printed in a cell. */
    static double halfUnit(ReferenceTable.Row row, String column) {
        return 0.5 * new BigDecimal(row.text(column)).ulp().doubleValue();
    }
}
