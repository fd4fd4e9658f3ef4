package org.limedry.material;

import org.limedry.units.Check;

/**
 * Vapour permeability {@code delta = delta_air / mu (1 - S)}: pores filled with water carry no vapour.
 *
 * <p>Form as in the benchmark sheets; the factor (1 - S) has no measured source.
 *
 * @param airKgPerMSPa permeability of still air, kg/(m s Pa); above 0
 * @param resistanceFactor mu of the dry material; at least 1
 * @param freeSaturationKgPerM3 water at which the pores are full, kg/m3; above 0
 */
public record VapourResistance(double airKgPerMSPa, double resistanceFactor, double freeSaturationKgPerM3)
        implements WaterFunction {
    /** Permeability of still air in the benchmark sheets and for sites, kg/(m s Pa); FROM MEMORY (ISO 13788). */
    public static final double STILL_AIR_KG_PER_M_S_PA = 2.0e-10;

    public VapourResistance {
        Check.positive(airKgPerMSPa, "airKgPerMSPa", "kg/(m s Pa)");
        Check.atLeast(resistanceFactor, 1.0, "resistanceFactor", "");
        Check.positive(freeSaturationKgPerM3, "freeSaturationKgPerM3", "kg/m3");
    }

    @Override
    public double at(double waterKgPerM3) {
        return airKgPerMSPa / resistanceFactor * Math.max(0.0, 1.0 - waterKgPerM3 / freeSaturationKgPerM3);
    }
}
