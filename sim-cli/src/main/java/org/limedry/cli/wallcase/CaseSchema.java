package org.limedry.cli.wallcase;

import org.limedry.cli.site.schema.Block;

/** The form of a wall case file. */
public final class CaseSchema {
    /** What its JSON Schema is called. */
    public static final String TITLE = "limedry wall case file";

    private CaseSchema() {}

    /** Returns the keys. */
    public static Block block() {
        return CaseKeys.BLOCK;
    }
}
