package org.limedry.wall;

/** The present state of one wall, read only. Depths count from the outer face, layers and coats as they are laid. */
public interface WallView {
    /** Returns the plan it was built from. */
    WallPlan plan();

    /** Returns how many coats have been laid. */
    int coats();

    /** Returns how many layers there are, coats counted. */
    int layers();

    /** Returns the thickness of all layers, m. */
    double thicknessM();

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

    /** Returns the relative humidity in the pores at a depth, fraction. */
    double relativeHumidityAt(double depthM);

    /** Returns the water at a depth, kg/m3; on a contact, that of the layer on its outer side. */
    double waterKgPerM3At(double depthM);

    /** Returns the least suction in the wall, Pa; below 0 where water stands in full pores of a tabulated material. */
    double wettestSuctionPa();

    /** Returns the heat stored over the accepted step, the sum of (rho c + c_w w) dT, J/m2. */
    double stepHeatStoredJPerM2();

    /** Returns the outer face as it now is; a held one as it is given. */
    FaceLook outerFace();

    /** Returns the inner face as it now is; a held one as it is given. */
    FaceLook innerFace();

    /** Returns what passes the inner face. */
    FaceFlow innerFlow();

    /** Returns what passes the outer face. */
    FaceFlow outerFlow();

    /** Returns the water in the coats, kg/m2. */
    double coatsWaterKgPerM2();
}
