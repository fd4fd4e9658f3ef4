package org.limedry.wall;

/** The present state of one wall, read only. Depths count from the outer face, layers and coats as they are laid. */
public interface WallView {
    /** Returns the plan it was built from. */
    WallPlan plan();

    /** Returns how many coats have been laid. */
    int coats();

    /** Returns the water in all materials, films left out, kg/m2. */
    double waterKgPerM2();

    /** Returns the water in one layer, 0 for the outermost, coats counted on, kg/m2. */
    double layerWaterKgPerM2(int layer);

    /** Returns the water in one coat, 1 for the first, kg/m2. */
    double coatWaterKgPerM2(int coat);

    /** Returns the film on the inner face, kg/m2. */
    double innerFilmKgPerM2();

    /** Returns the film on the outer face, kg/m2. */
    double outerFilmKgPerM2();

    /** Returns the temperature of the inner face, C. */
    double innerCelsius();

    /** Returns the temperature of the outer face, C. */
    double outerCelsius();

    /** Returns the relative humidity in the pores of the inner face, fraction. */
    double innerRelativeHumidity();

    /** Returns the temperature at a depth, linear between nodes, C. */
    double celsiusAt(double depthM);

    /** Returns the suction at a depth, Pa, its logarithm linear between nodes. */
    double suctionPaAt(double depthM);

    /** Returns what passes the inner face. */
    FaceFlow innerFlow();

    /** Returns what passes the outer face. */
    FaceFlow outerFlow();
}
