package org.limedry.room;

/**
 * Water that a bare earth floor gives to a room.
 *
 * <p>Does not model how the earth dries out over a season, and takes up no vapour when it is colder than the dew point.
 */
public final class EarthFloor {
    private EarthFloor() {}

    /**
     * Returns the water given: a fixed rate, held down to what a wet face could give to this air, never below 0.
     *
     * <p>{@code min(most, max(0, beta (p_sat - p_v)))}
     *
     * <p><b>Source:</b> the cap is the evaporation of a wet face; a rate of 0.3 (0.1 to 0.6) kg/(m2 day) is an estimate, no
     * measured rate was found. <b>Valid:</b> damp earth. <b>Accuracy:</b> a factor 2.
     *
     * @param mostKgPerM2S rate of a floor in dry air, kg/(m2 s); at least 0
     * @param vapourTransferSPerM vapour transfer beta of the face, kg/(m2 s Pa); at least 0
     * @param faceSaturationPa saturation pressure p_sat at the temperature of the floor, Pa
     * @param roomVapourPressurePa vapour pressure p_v of the room air, Pa
     * @return water given, kg/(m2 s)
     */
    public static double kgPerM2S(
            double mostKgPerM2S, double vapourTransferSPerM, double faceSaturationPa, double roomVapourPressurePa) {
        double wetFace = vapourTransferSPerM * (faceSaturationPa - roomVapourPressurePa);
        return Math.min(mostKgPerM2S, Math.max(0.0, wetFace));
    }
}
