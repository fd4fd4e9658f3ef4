package org.limedry.wall;

/**
 * What one face of a wall exchanges with: set by whoever knows the air, read by the wall.
 *
 * <p>Vapour into the face {@code g = vapourTransfer (airVapour - faceVapour)}; heat into the face {@code q = convection
 * (air - face) + radiation (radiant - face) + latent heat * g}.
 *
 * <p>Mutable on purpose: it is written for every stage of every step by the coupled solver, which owns it.
 */
public final class Face {
    /** Convection, W/(m2 K). */
    public double convectionWPerM2K;

    /** Long-wave exchange, W/(m2 K). */
    public double radiationWPerM2K;

    /** Vapour transfer, kg/(m2 s Pa). */
    public double vapourTransferSPerM;

    /** Air temperature, C. */
    public double airCelsius;

    /** Vapour pressure of the air, Pa. */
    public double airVapourPa;

    /** Temperature of the radiant node, C. */
    public double radiantCelsius;

    /** Rate of the air temperature where it is prescribed, K/s; 0 where it is an unknown. */
    public double airCelsiusPerS;

    /** Rate of the vapour pressure where it is prescribed, Pa/s; 0 where it is an unknown. */
    public double airVapourPaPerS;

    /** Slope of the vapour pressure by the air temperature where that is an unknown, Pa/K; 0 where it is prescribed. */
    public double airVapourByCelsius;

    /** Slope of the vapour pressure by the vapour density where that is an unknown, Pa m3/kg; 0 where prescribed. */
    public double airVapourByDensity;

    Face() {}
}
