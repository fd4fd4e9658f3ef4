package org.limedry.wall;

/** What may be read of one wall in the course of a run. Depths count from the outer face, layers from the outermost. */
public sealed interface WallView permits WallColumn {
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

    /** Returns the water in the coats, kg/m2. */
    default double coatsWaterKgPerM2() {
        double sum = 0.0;
        for (int coat = 1; coat <= coats(); coat++) {
            sum += coatWaterKgPerM2(coat);
        }
        return sum;
    }

    /** Returns the suction at a depth, linear in ln p between nodes, Pa. */
    double suctionPaAt(double depthM);

    /** Returns the temperature at a depth, linear between nodes, C. */
    double celsiusAt(double depthM);

    /** Returns the temperature of the outer face, C. */
    double outerCelsius();

    /** Returns the temperature of the inner face, C. */
    double innerCelsius();

    /** Returns the relative humidity in the pores of the outer face, fraction. */
    double outerRelativeHumidity();

    /** Returns the relative humidity in the pores of the inner face, fraction. */
    double innerRelativeHumidity();

    /** Returns the film on the outer face, kg/m2. */
    double outerFilmKgPerM2();

    /** Returns the film on the inner face, kg/m2. */
    double innerFilmKgPerM2();

    /** Returns the exchange of the outer face. */
    FaceView outerFace();

    /** Returns the exchange of the inner face. */
    FaceView innerFace();
}
