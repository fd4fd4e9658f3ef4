package org.limedry.room;

import java.util.OptionalDouble;
import org.limedry.climate.Schedule;

/** Something brought into a room that heats, dries, moves air or gives off water. */
public sealed interface Plant {
    /** Returns what the user calls it. */
    String name();

    /** Returns when it is on. */
    Schedule on();

    /** Where the heat of a heater comes from, with what burning it adds to the room. */
    enum Fuel {
        /** Electric: heat only. */
        ELECTRIC,
        /** Burns outside the room air: heat only. */
        FLUED,
        /** Bottled gas burnt in the room: adds water and carbon dioxide, and carbon monoxide is a danger. */
        UNFLUED_LPG,
        /** Paraffin burnt in the room: the same dangers. */
        UNFLUED_PARAFFIN
    }

    /** The two common rating points of dehumidifiers. */
    enum Rating {
        /** 30 C and 80 % relative humidity. */
        AT_30C_80,
        /** 20 C and 60 % relative humidity. */
        AT_20C_60
    }

    /** How a dehumidifier dries. */
    enum Drying {
        /** Cools the air on a cold coil; fades below 16 C and stops at 6 C. */
        REFRIGERANT,
        /** Dries the air on a wheel; works in the cold. */
        DESICCANT
    }

    /**
     * A heater.
     *
     * @param watts heat at full power, W
     * @param fuel what it burns
     * @param radiantShare share of the heat given as radiation, fraction
     * @param thermostatCelsius air temperature it holds, C, if it has a thermostat
     * @param aimedAtWall whether its draught meets a plastered face
     */
    record Heater(
            String name,
            double watts,
            Fuel fuel,
            double radiantShare,
            OptionalDouble thermostatCelsius,
            boolean aimedAtWall,
            Schedule on)
            implements Plant {
        /** Returns the same thing on at other times. */
        public Plant onAt(Schedule other) {
            return new Heater(name, watts, fuel, radiantShare, thermostatCelsius, aimedAtWall, other);
        }
    }

    /**
     * A dehumidifier.
     *
     * @param ratedKgPerS water taken at the rating point, kg/s
     * @param watts electric power when running, W
     * @param humidistat relative humidity it holds, fraction, if it has a humidistat
     */
    record Dehumidifier(
            String name,
            Drying drying,
            double ratedKgPerS,
            Rating rating,
            double watts,
            OptionalDouble humidistat,
            Schedule on)
            implements Plant {
        /** Returns the same thing on at other times. */
        public Plant onAt(Schedule other) {
            return new Dehumidifier(name, drying, ratedKgPerS, rating, watts, humidistat, other);
        }
    }

    /**
     * A fan that exchanges air with outdoors.
     *
     * @param flowM3PerS air moved, m3/s
     */
    record Fan(String name, double flowM3PerS, Schedule on) implements Plant {}

    /**
     * People at work.
     *
     * @param count how many
     */
    record People(String name, double count, Schedule on) implements Plant {}

    /**
     * Mist sprayed on a wall.
     *
     * @param wall the wall
     * @param kgPerM2S water while it is on, kg/(m2 s)
     */
    record Misting(String name, String wall, double kgPerM2S, Schedule on) implements Plant {
        /** Returns the same thing on at other times. */
        public Plant onAt(Schedule other) {
            return new Misting(name, wall, kgPerM2S, other);
        }
    }
}
