package org.limedry.material;

import org.limedry.units.Check;

/**
 * One material: a name, four functions of its state and a dry heat capacity.
 *
 * <p>Does not model hysteresis, salts, swelling, freezing, or sensible heat carried by moving water.
 *
 * @param name what a report calls it; not blank
 * @param retention water held by suction
 * @param liquid liquid conductivity by suction
 * @param vapourPermeabilityKgPerMSPa vapour permeability by water, kg/(m s Pa)
 * @param conductivityWPerMK thermal conductivity by water, W/(m K)
 * @param dryHeatCapacityJPerM3K volumetric heat capacity when dry, J/(m3 K); above 0
 */
public record Material(
        String name,
        Retention retention,
        LiquidTransport liquid,
        WaterFunction vapourPermeabilityKgPerMSPa,
        WaterFunction conductivityWPerMK,
        double dryHeatCapacityJPerM3K) {
    public Material {
        Check.notBlank(name, "name");
        Check.positive(dryHeatCapacityJPerM3K, "dryHeatCapacityJPerM3K", "J/(m3 K)");
    }
}
