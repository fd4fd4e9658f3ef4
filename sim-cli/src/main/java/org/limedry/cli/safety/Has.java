package org.limedry.cli.safety;

/** What a site has that calls for care. */
public enum Has {
    /** Lime is laid. */
    LIME,
    /** A mix is made with quicklime. */
    QUICKLIME,
    /** A heater burns bottled gas in the room air. */
    UNFLUED_GAS,
    /** A heater burns paraffin in the room air. */
    UNFLUED_PARAFFIN,
    /** A stove or heater with a flue. */
    FLUED_HEATER,
    /** An electric heater. */
    ELECTRIC_HEATER,
    /** A fan that draws air out of a room. */
    FAN,
    /** A dehumidifier. */
    DEHUMIDIFIER,
    /** A heater, fan or dehumidifier runs by night, when nobody is there. */
    RUNS_BY_NIGHT,
    /** Mist is sprayed. */
    MISTING,
    /** A door or window to outdoors stands open by night. */
    OPEN_BY_NIGHT,
    /** Old paint on a wall that is plastered. */
    OLD_PAINT,
    /** A plastered face that cannot be reached from the floor or a hop-up. */
    HEIGHT,
    /** Carbon dioxide above the working limit. */
    BAD_AIR,
    /** Frost while a coat is young. */
    FROST,
    /** Air or wall too cold for lime. */
    COLD,
    /** A shut room dries but does not harden. */
    DRY_BUT_SOFT,
    /** Laths wet enough to rot. */
    WET_LATHS,
    /** Mould. */
    MOULD
}
