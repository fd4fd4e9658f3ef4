package org.limedry.wall;

import java.util.OptionalDouble;
import org.limedry.air.MagnusForm;
import org.limedry.units.Check;

/**
 * Constants of heat and moisture in porous materials.
 *
 * @param saturation saturation vapour pressure over water, at all temperatures
 * @param gasConstantVapourJPerKgK gas constant of water vapour, J/(kg K)
 * @param waterDensityKgPerM3 density of water, kg/m3
 * @param latentHeatJPerKg latent heat of evaporation, J/kg
 * @param waterHeatCapacityJPerKgK specific heat of water, J/(kg K)
 * @param kelvinReferenceCelsius fixed temperature for the humidity of pores; empty for the local one
 * @param vapourPermeabilityExponent permeability is multiplied by {@code (T / 293.15 K)^exponent}
 */
public record Constants(
        MagnusForm saturation,
        double gasConstantVapourJPerKgK,
        double waterDensityKgPerM3,
        double latentHeatJPerKg,
        double waterHeatCapacityJPerKgK,
        OptionalDouble kelvinReferenceCelsius,
        double vapourPermeabilityExponent) {
    /** Returns the constants used for sites. */
    public static Constants ordinary() {
        return new Constants(MagnusForm.WMO_WATER, 461.5, 1000.0, 2.5e6, 4187.0, OptionalDouble.empty(), 0.0);
    }

    public Constants {
        Check.positive(gasConstantVapourJPerKgK, "gasConstantVapourJPerKgK", "J/(kg K)");
        Check.positive(waterDensityKgPerM3, "waterDensityKgPerM3", "kg/m3");
        Check.nonNegative(latentHeatJPerKg, "latentHeatJPerKg", "J/kg");
        Check.nonNegative(waterHeatCapacityJPerKgK, "waterHeatCapacityJPerKgK", "J/(kg K)");
        Check.finite(vapourPermeabilityExponent, "vapourPermeabilityExponent", "");
    }
}
