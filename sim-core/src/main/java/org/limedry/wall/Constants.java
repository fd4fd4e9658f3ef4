package org.limedry.wall;

import java.util.OptionalDouble;
import org.limedry.air.MagnusForm;
import org.limedry.air.SaturationCurve;
import org.limedry.units.Check;
import org.limedry.units.Units;

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
        SaturationCurve saturation,
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

    /**
     * Returns the suction of pores in which the air has a relative humidity, by Kelvin's law {@code p = -rho_w R_v T
     * ln(phi)}, Pa.
     *
     * @param relativeHumidity fraction; above 0, at most 1
     * @param celsius local temperature, C; the fixed one counts where there is one
     */
    public double suctionPa(double relativeHumidity, double celsius) {
        double kelvin = Units.kelvin(kelvinReferenceCelsius.orElse(celsius));
        return -waterDensityKgPerM3 * gasConstantVapourJPerKgK * kelvin * Math.log(relativeHumidity);
    }

    /**
     * Returns the relative humidity of the air in pores of a suction, {@code exp(-p / (rho_w R_v T))}, fraction.
     *
     * @param suctionPa suction, Pa
     * @param celsius local temperature, C; the fixed one counts where there is one
     */
    public double relativeHumidity(double suctionPa, double celsius) {
        double kelvin = Units.kelvin(kelvinReferenceCelsius.orElse(celsius));
        return Math.exp(-suctionPa / (waterDensityKgPerM3 * gasConstantVapourJPerKgK * kelvin));
    }

    public Constants {
        Check.positive(gasConstantVapourJPerKgK, "gasConstantVapourJPerKgK", "J/(kg K)");
        Check.positive(waterDensityKgPerM3, "waterDensityKgPerM3", "kg/m3");
        Check.nonNegative(latentHeatJPerKg, "latentHeatJPerKg", "J/kg");
        Check.nonNegative(waterHeatCapacityJPerKgK, "waterHeatCapacityJPerKgK", "J/(kg K)");
        Check.finite(vapourPermeabilityExponent, "vapourPermeabilityExponent", "");
    }
}
