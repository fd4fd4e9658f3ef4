package org.limedry.air;

/** Saturation vapour pressure as a function of temperature alone, wherever it is asked. */
public interface SaturationCurve {
    /** Returns the saturation vapour pressure at a temperature in C, Pa. */
    double pressurePa(double celsius);

    /** Returns the slope of the saturation vapour pressure by temperature, Pa/K. */
    double slopePaPerK(double celsius);

    /** Returns the temperature at which a vapour pressure in Pa is the saturation pressure, C. */
    double celsius(double pressurePa);
}
