package org.limedry.cli.site;

import org.limedry.lime.CoatMortars;
import org.limedry.material.Catalogue;
import org.limedry.reference.DefaultsTable;
import org.limedry.reference.MaterialTable;

/**
 * The shipped tables from which defaults are taken.
 *
 * @param defaults single figures
 * @param table materials as the table gives them
 * @param catalogue the same, ready for use
 * @param mortars mixes made into mortars
 */
record Library(DefaultsTable defaults, MaterialTable table, Catalogue catalogue, CoatMortars mortars) {
    /** Reads the tables. */
    static Library load() {
        DefaultsTable defaults = DefaultsTable.load();
        MaterialTable table = MaterialTable.load();
        Catalogue catalogue = Catalogue.of(table);
        return new Library(defaults, table, catalogue, CoatMortars.of(defaults, catalogue));
    }
}
