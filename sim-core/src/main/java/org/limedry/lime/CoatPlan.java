package org.limedry.lime;

import org.limedry.units.Check;

/**
 * One coat to be laid on a wall.
 *
 * @param wall name of the wall
 * @param number 1 for the first coat on that wall, then 2, 3, ...; at least 1
 * @param mortar what it is made of
 * @param thicknessM mean thickness, dubbing out included, m; above 0
 * @param laidCelsius temperature of the mortar when laid, C
 * @param prewettingKgPerM2 water put on the wall just before, kg/m2; at least 0
 * @param laying when it goes on
 */
public record CoatPlan(
        String wall,
        int number,
        CoatMortar mortar,
        double thicknessM,
        double laidCelsius,
        double prewettingKgPerM2,
        Laying laying) {
    public CoatPlan {
        Check.notBlank(wall, "wall");
        Check.positive(number, "number", "");
        Check.positive(thicknessM, "thicknessM", "m");
        Check.finite(laidCelsius, "laidCelsius", "C");
        Check.nonNegative(prewettingKgPerM2, "prewettingKgPerM2", "kg/m2");
    }

    /** Returns the same coat, laid otherwise. */
    public CoatPlan with(Laying other) {
        return new CoatPlan(wall, number, mortar, thicknessM, laidCelsius, prewettingKgPerM2, other);
    }
}
