package org.limedry.study.airing;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * One thing to try in a room.
 *
 * @param airing how it is aired
 * @param heat what heats it; empty for a cold room
 * @param shutDays days on which doors stay shut whatever the hours say
 */
public record AiringLevel(Airing airing, Optional<SteadyHeat> heat, Set<LocalDate> shutDays) {
    public AiringLevel {
        shutDays = Set.copyOf(shutDays);
    }

    /** Returns a level that is the same on every day. */
    public static AiringLevel daily(Airing airing, Optional<SteadyHeat> heat) {
        return new AiringLevel(airing, heat, Set.of());
    }
}
