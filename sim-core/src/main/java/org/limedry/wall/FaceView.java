package org.limedry.wall;

/**
 * What may be read of one face in the course of a run.
 *
 * <p>All flows are per m2 of face and positive into the wall, run-off positive away from it.
 */
public sealed interface FaceView permits FaceExchange {
    /** Returns the vapour taken up by the face over the accepted step, kg/m2; negative when it dries. */
    double stepVapourKgPerM2();

    /** Returns what ran off the face over the accepted step, kg/m2. */
    double stepRunOffKgPerM2();

    /** Returns the vapour flow into the face in the state last looked at, kg/(m2 s). */
    double vapourKgPerM2S();

    /** Returns the heat given to the face by the air, without latent heat, W/m2. */
    double convectionWPerM2();

    /** Returns the heat given to the face by the radiant node, W/m2. */
    double radiationWPerM2();
}
