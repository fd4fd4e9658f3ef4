package org.limedry.proof.figure;

import org.limedry.units.Check;

/**
 * Where an expected number comes from.
 *
 * @param label how it is known
 * @param where table and row, sheet or document; not blank
 */
public record Source(Label label, String where) {
    public Source {
        Check.notBlank(where, "where");
    }

    /** Returns both in one line. */
    public String words() {
        return label + ": " + where;
    }
}
