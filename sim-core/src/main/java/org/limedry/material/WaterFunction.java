package org.limedry.material;

/** A property that depends on the water held: vapour permeability or thermal conductivity. */
@FunctionalInterface
public interface WaterFunction {
    /**
     * Returns the property.
     *
     * @param waterKgPerM3 water held, kg/m3; at least 0
     * @return the property in its own unit
     */
    double at(double waterKgPerM3);
}
