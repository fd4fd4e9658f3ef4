package org.limedry.air;

/**
 * Constants of ideal moist air.
 *
 * <p>Source: ASHRAE Handbook Fundamentals (SI) 2017, chapter 1 (second-hand); the gas constant of vapour is the rounded
 * 461.5 of building physics. Other usual sets of constants change the humidity ratio by 0.02 % and the enthalpy by 0.1 %.
 */
public final class AirConstants {
    /** Molar mass of water over that of dry air, dimensionless. */
    public static final double WATER_TO_DRY_AIR_MASS_RATIO = 0.621945;

    /** Gas constant of water vapour, J/(kg K). */
    public static final double VAPOUR_GAS_CONSTANT_J_PER_KG_K = 461.5;

    /** Gas constant of dry air, J/(kg K). */
    public static final double DRY_AIR_GAS_CONSTANT_J_PER_KG_K = 287.042;

    /** Specific heat of dry air, kJ/(kg K). */
    public static final double DRY_AIR_HEAT_CAPACITY_KJ_PER_KG_K = 1.006;

    /** Specific heat of water vapour, kJ/(kg K). */
    public static final double VAPOUR_HEAT_CAPACITY_KJ_PER_KG_K = 1.86;

    /** Heat of evaporation of water at 0 °C, kJ/kg. */
    public static final double EVAPORATION_HEAT_KJ_PER_KG = 2501.0;

    /** Molar mass of dry air over that of water, as printed in the equation of specific volume, dimensionless. */
    static final double DRY_AIR_TO_WATER_MASS_RATIO = 1.607858;

    private AirConstants() {}
}
