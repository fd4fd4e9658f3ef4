package org.limedry.lime;

import org.limedry.air.MoistAir;

/**
 * The watch for frost in a coat that has not the strength to bear it.
 *
 * <p>Two lines, since a wet face is colder than the air: evaporation pulls it down towards the wet bulb. Wind chill does
 * not apply to a dry face. Ice in pores, and the damage it does, are not modelled.
 */
public final class Frost {
    /**
     * Air temperature below which lime is not to be laid, C: the floor common in the trade (S34 to S36). The makers' sheets of
     * natural hydraulic lime say 8 C (S9, S10).
     */
    public static final double COLD_LINE_CELSIUS = 5.0;

    /** Days after laying during which frost does harm: makers' sheet of NHL 2 (S10); full resistance takes 90 (S33). */
    public static final double LEAST_FROST_FREE_DAYS = 10.0;

    private static final double FREEZING_CELSIUS = 0.0;
    /** The wet bulb moves by less than 0.05 K over the pressures of inhabited heights. */
    private static final double PRESSURE_PA = 101_325.0;

    private Frost() {}

    /** What freezes. */
    public enum Risk {
        /** Nothing. */
        NONE,
        /** The wet face, though the air does not. */
        WET_FACE,
        /** The air, and so everything in it. */
        AIR
    }

    /**
     * Returns the temperature towards which a wet face falls: the wet bulb over water, supercooled below 0 C.
     *
     * <p><b>Source:</b> {@link MoistAir#wetBulbCelsius}. <b>Valid:</b> a face that is still wet and gets no heat from wall
     * or radiation; those keep it warmer, so this is the cautious end. <b>Accuracy:</b> that of the wet bulb.
     *
     * @param airCelsius room air, C
     * @param relativeHumidity of the room air over water, fraction; in [0, 1]
     * @return C
     */
    public static double wetFaceCelsius(double airCelsius, double relativeHumidity) {
        return MoistAir.of(airCelsius, relativeHumidity, PRESSURE_PA)
                .wetBulbCelsius()
                .orElseThrow(() -> new IllegalArgumentException(
                        "relativeHumidity: must be high enough for a wet bulb, was " + relativeHumidity));
    }

    /**
     * Returns what freezes, from the air and the face itself.
     *
     * @param airCelsius room air, C
     * @param faceCelsius face of the coat, C: calculated, or {@link #wetFaceCelsius}
     */
    public static Risk risk(double airCelsius, double faceCelsius) {
        if (airCelsius < FREEZING_CELSIUS) {
            return Risk.AIR;
        }
        return faceCelsius < FREEZING_CELSIUS ? Risk.WET_FACE : Risk.NONE;
    }
}
