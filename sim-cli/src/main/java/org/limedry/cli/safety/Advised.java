package org.limedry.cli.safety;

/** What an answer tells its reader to do, or lays before him as a way. */
public enum Advised {
    /** Bring in heat. */
    HEAT,
    /** Open doors or windows. */
    OPEN,
    /** Leave them open by night. */
    OPEN_BY_NIGHT,
    /** Keep a room shut. */
    SHUT,
    /** Sheet its openings over. */
    SHEET,
    /** Bring in a dehumidifier. */
    DEHUMIDIFY,
    /** Bring in a fan. */
    BLOW,
    /** Leave a machine or heater on by night. */
    RUN_BY_NIGHT,
    /** Spray mist. */
    MIST,
    /** Drill into a wall. */
    DRILL,
    /** Scrape, hack off or open up what is old. */
    OPEN_UP,
    /** Paint, paper or limewash. */
    FINISH,
    /** Touch the plaster: a hand test, wiping down. */
    TOUCH
}
