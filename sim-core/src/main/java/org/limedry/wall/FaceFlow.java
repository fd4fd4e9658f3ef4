package org.limedry.wall;

/** What passes one face of a wall, read only; per m2 of face and positive into the wall. */
public interface FaceFlow {
    /** Returns the vapour flow into the face in the state last looked at, kg/(m2 s). */
    double vapourKgPerM2S();

    /** Returns the vapour taken up by the face over the accepted step, kg/m2; negative when it dries. */
    double stepVapourKgPerM2();

    /** Returns what ran off the face over the accepted step, kg/m2. */
    double stepRunOffKgPerM2();
}
