package org.limedry.simulation;

import java.time.Instant;

/**
 * Something the user must be told; the words are the report's.
 *
 * @param kind what it is
 * @param subject wall, room or plant it concerns
 * @param from first hour
 * @param until last hour
 * @param value the figure that belongs to the kind, in its unit
 */
public record Warning(Kind kind, String subject, Instant from, Instant until, double value) {
    /** What can go wrong, each with the meaning of its figure. */
    public enum Kind {
        /** Room air below 0 C with a coat younger than its frost-free period; lowest air temperature, C. */
        FROST_AIR,
        /** Wet face below 0 C though the air is above; lowest face temperature, C. */
        FROST_WET_FACE,
        /** Air below the cold line of the trade while a coat is firming; hours. */
        TOO_COLD,
        /** The first days took out more than lime can give; highest loss, kg/(m2 h). */
        TOO_FAST,
        /** Water ran on a face that does not drink; hours. */
        GLASS_RUNNING,
        /** Fuel is burnt in the room air; litres of water made. */
        UNFLUED_HEATER,
        /** Heat was given and too little air let the vapour out; litres condensed while heated. */
        HEAT_WITHOUT_AIR,
        /** A shut room with a dehumidifier dries but starves of carbon dioxide; lowest content, ppm. */
        DRY_BUT_SOFT,
        /** Carbon dioxide above 5,000 ppm; highest content, ppm. */
        CARBON_DIOXIDE,
        /** Laths wetter than 20 % of their mass; highest moisture content, percent. */
        WET_LATH,
        /** Mould has begun on bare timber or old paint; highest index, 1 to 6. */
        MOULD,
        /** A coat could not be laid before the run ended; its number on the wall. */
        NOT_LAID,
        /** A coat was not ready when the run ended; its number on the wall. */
        NOT_READY,
        /** Rising damp was held back since the wall was full; litres. */
        WALL_FULL
    }
}
