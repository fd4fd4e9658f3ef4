package org.limedry.room;

import java.util.Optional;
import org.limedry.climate.Schedule;
import org.limedry.units.Check;

/**
 * A door or window that can stand open.
 *
 * @param name what the user calls it
 * @param widthM clear width, m; above 0
 * @param heightM clear height, m; above 0
 * @param sillM height of its lower edge above the floor, m
 * @param facing compass side ("N", "NE", ...) or empty text if not said
 * @param toRoom name of the room on its other side, or empty for outdoors
 * @param open when it stands open
 */
public record Opening(
        String name,
        double widthM,
        double heightM,
        double sillM,
        String facing,
        Optional<String> toRoom,
        Schedule open) {
    public Opening {
        Check.notBlank(name, "name");
        Check.positive(widthM, "widthM", "m");
        Check.positive(heightM, "heightM", "m");
        Check.nonNegative(sillM, "sillM", "m");
    }

    /** Returns the clear area, m2. */
    public double areaM2() {
        return widthM * heightM;
    }

    /** Tells whether it leads outdoors. */
    public boolean leadsOutdoors() {
        return toRoom.isEmpty();
    }

    /** Returns this opening standing open at other times. */
    public Opening openAt(Schedule other) {
        return new Opening(name, widthM, heightM, sillM, facing, toRoom, other);
    }
}
