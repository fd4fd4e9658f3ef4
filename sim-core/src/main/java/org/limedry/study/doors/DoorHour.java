package org.limedry.study.doors;

import java.time.Instant;
import java.util.Set;

/**
 * One hour at the door: the air outdoors, the room as it would be with its doors shut all day, and what two runs of the
 * same day found, one with doors shut and one with doors open.
 *
 * @param from start of the hour
 * @param outside air outdoors
 * @param inside air of the shut room
 * @param coldestFaceCelsius coldest plastered wall of the shut room, C
 * @param ofRoom what outdoor air takes out of the room's air
 * @param ofFace what outdoor air takes off the coldest plastered wall
 * @param driedOpenKg water that the walls give off in the hour with doors open, kg; negative if they take it up
 * @param driedShutKg the same with doors shut, kg
 * @param ontoWallsKg water that goes into walls in the hour with doors open, kg; what other walls give off not taken away
 * @param dangers what open doors would do besides
 */
public record DoorHour(
        Instant from,
        AirReading outside,
        AirReading inside,
        double coldestFaceCelsius,
        DoorPower ofRoom,
        DoorPower ofFace,
        double driedOpenKg,
        double driedShutKg,
        double ontoWallsKg,
        Set<DoorReason> dangers) {
    public DoorHour {
        dangers = Set.copyOf(dangers);
    }

    /** Returns what open doors are worth in this hour, kg off the walls. */
    public double gainKg() {
        return driedOpenKg - driedShutKg;
    }

    /**
     * Returns the reason that counts: dangers first, then the sign of the drying power.
     *
     * <p>What is known to less than one sigma makes no difference, and neither does dry air that takes nothing more off
     * the walls since it chills them.
     */
    public DoorReason reason() {
        for (DoorReason danger : new DoorReason[] {DoorReason.FUMES, DoorReason.FROST, DoorReason.TOO_FAST}) {
            if (dangers.contains(danger)) {
                return danger;
            }
        }
        return switch (ofRoom.sign()) {
            case DRIES -> gainKg() > 0.0 ? DoorReason.DRIER_OUT : DoorReason.NO_GAIN;
            case WETS -> ofFace.sign() == DoorPower.Sign.WETS ? DoorReason.WETS_WALLS : DoorReason.WETTER_OUT;
            case WITHIN_ERROR -> DoorReason.WITHIN_ERROR;
        };
    }
}
