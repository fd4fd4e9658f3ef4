package org.limedry.wall;

/** What passes one face of a wall, read only; per m2 of face and positive into the wall. */
public interface FaceFlow {
    /** Returns the vapour flow into the face in the state last looked at, kg/(m2 s); at a held face with the liquid. */
    double vapourKgPerM2S();

    /**
     * Returns the vapour taken up by the face over the accepted step, kg/m2; negative when it dries; at a held face with
     * the liquid.
     */
    double stepVapourKgPerM2();

    /** Returns the heat taken up by the face over the accepted step, latent heat of vapour included, J/m2. */
    double stepHeatJPerM2();

    /** Returns what ran off the face over the accepted step, kg/m2. */
    double stepRunOffKgPerM2();

    /** Returns the heat given to the face by the air, without latent heat, W/m2. */
    double convectionWPerM2();

    /** Returns the heat given to the face by the radiant node, W/m2. */
    double radiationWPerM2();
}
