package org.limedry.proof.tables;

import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Standing;
import org.limedry.reference.ReferenceTable;

/**
 * One column of a table against what this library finds for its rows.
 *
 * @param column the column
 * @param by what finds it, empty if the column says so
 * @param label how the numbers of the column are known
 * @param unit their unit; empty if the table has a column for it
 * @param rows which rows are compared
 * @param found what is found for a row
 * @param tolerance what is accepted
 * @param standing what is known of a row beforehand
 */
record Comparison(
        String column,
        String by,
        Label label,
        String unit,
        Predicate<ReferenceTable.Row> rows,
        ToDoubleFunction<ReferenceTable.Row> found,
        Tolerance tolerance,
        Function<ReferenceTable.Row, Standing> standing) {

    /** Compares every row in which the cell is not missing. */
    Comparison(String column, Label label, String unit, ToDoubleFunction<ReferenceTable.Row> found, Tolerance within) {
        this(column, "", label, unit, row -> !row.text(column).isEmpty(), found, within, row -> new Standing.Sound());
    }

    /** Returns the same, found by what these words say. */
    Comparison by(String words) {
        return new Comparison(column, words, label, unit, rows, found, tolerance, standing);
    }

    /** Returns the same for some of its rows. */
    Comparison where(Predicate<ReferenceTable.Row> some) {
        return new Comparison(column, by, label, unit, rows.and(some), found, tolerance, standing);
    }

    /** Returns the same for the rows with a flag. */
    Comparison flagged(String flag) {
        return where(row -> row.text("flag").equals(flag));
    }

    /** Returns the same for rows whose source is in error. */
    Comparison inError(Function<ReferenceTable.Row, String> reason) {
        return new Comparison(
                column, by, label, unit, rows, found, tolerance, row -> new Standing.SourceInError(reason.apply(row)));
    }

    /** Returns what is compared. */
    String part() {
        return by.isEmpty() ? column : column + " by " + by;
    }
}
