package org.limedry.room;

/**
 * Fog that forms in the air of a room: vapour above saturation falls out as droplets.
 *
 * <p>The droplets are taken as gone: they settle on sills, floors and sheets and count as run off. Does not model droplets
 * that stay in the air and dry up again when it warms.
 */
public final class Fog {
    /**
     * How fast vapour above saturation falls out: at 1 % above it in ten seconds, faster with more. Judgement: droplets form
     * at once, and this keeps the air within 1 % of saturation; a sharp limit would cost the solver a fifth more steps.
     */
    private static final double SECONDS_BY_EXCESS = 0.1;

    private Fog() {}

    /**
     * Returns the vapour that turns to fog, {@code V (rho_v - rho_sat)^2 / (rho_sat 0.1 s)}, none below saturation.
     *
     * <p><b>Source:</b> definition of saturation; the rate is judgement. <b>Valid:</b> rooms. <b>Accuracy:</b> not stated;
     * the fog itself is set by what comes in, not by the rate.
     *
     * @param volumeM3 air of the room, m3; above 0
     * @param vapourKgPerM3 vapour in it, kg/m3
     * @param saturatedKgPerM3 vapour that it can hold at its temperature, kg/m3; above 0
     * @return vapour lost to fog, kg/s; at least 0
     */
    public static double kgPerS(double volumeM3, double vapourKgPerM3, double saturatedKgPerM3) {
        double excess = Math.max(0.0, vapourKgPerM3 - saturatedKgPerM3);
        return volumeM3 * excess * excess / (saturatedKgPerM3 * SECONDS_BY_EXCESS);
    }
}
