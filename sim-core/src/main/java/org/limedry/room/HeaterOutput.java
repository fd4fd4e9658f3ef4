package org.limedry.room;

/**
 * What a heater gives to a room.
 *
 * <p>Does not model carbon monoxide, warming up, a half-open flue or the oxygen that a flame uses. Unflued heaters kill by
 * carbon monoxide: every report that shows one says so and defers to local codes and competent persons.
 *
 * @param airW heat to the air, W
 * @param radiantW heat to the radiant node, W
 * @param waterKgPerS water vapour from burning, kg/s
 * @param carbonDioxideKgPerS carbon dioxide from burning, kg/s
 */
public record HeaterOutput(double airW, double radiantW, double waterKgPerS, double carbonDioxideKgPerS) {
    private static final double JOULES_PER_KWH = 3.6e6;

    // Molar masses, kg/kmol, from the abridged standard atomic weights (CIAAW), FROM MEMORY: C 12.011, H 1.008, O
    // 15.999.
    private static final double WATER_KG_PER_KMOL = 18.015;
    private static final double CARBON_DIOXIDE_KG_PER_KMOL = 44.009;
    private static final double PROPANE_KG_PER_KMOL = 44.097;
    private static final double DODECANE_KG_PER_KMOL = 170.340;

    /** Lower heating value of bottled gas, kWh/kg, as a supplier prints it (vedelgaas.ee, page on LPG). */
    private static final double LPG_KWH_PER_KG = 12.8;

    /** Lower heating value of paraffin, kWh/kg. FROM MEMORY. */
    private static final double PARAFFIN_KWH_PER_KG = 11.97;

    /**
     * Returns what {@code heater} gives while it is on.
     *
     * <p>{@code power = watts · clamp(setting - t + 1/2, 0, 1)} with a thermostat, else {@code watts}: proportional over
     * 1 K about the setting, half power at it. Burning in the room: {@code C3H8 + 5 O2 -> 3 CO2 + 4 H2O}, {@code C12H26 +
     * 18.5 O2 -> 12 CO2 + 13 H2O}. The rating is sensible heat (lower heating value): the vapour comes on top.
     *
     * <p><b>Source:</b> stoichiometry; heating values above. <b>Valid:</b> bottled gas as propane (butane gives 5 % less
     * water), paraffin as dodecane. <b>Accuracy:</b> 3 %, by the heating value.
     *
     * @param heater the heater
     * @param roomCelsius room air, °C
     * @return what it gives
     */
    public static HeaterOutput of(Plant.Heater heater, double roomCelsius) {
        double share = heater.thermostatCelsius().isEmpty()
                ? 1.0
                : Control.heating(heater.thermostatCelsius().getAsDouble(), roomCelsius);
        double watts = share * heater.watts();
        double kwhPerS = watts / JOULES_PER_KWH;
        return new HeaterOutput(
                watts * (1.0 - heater.radiantShare()),
                watts * heater.radiantShare(),
                kwhPerS * waterKgPerKwh(heater.fuel()),
                kwhPerS * carbonDioxideKgPerKwh(heater.fuel()));
    }

    /** Returns the water that burning {@code fuel} in the room makes, kg per kWh of heat: 0.128 gas, 0.115 paraffin. */
    public static double waterKgPerKwh(Plant.Fuel fuel) {
        return switch (fuel) {
            case ELECTRIC, FLUED -> 0.0;
            case UNFLUED_LPG -> 4.0 * WATER_KG_PER_KMOL / PROPANE_KG_PER_KMOL / LPG_KWH_PER_KG;
            case UNFLUED_PARAFFIN -> 13.0 * WATER_KG_PER_KMOL / DODECANE_KG_PER_KMOL / PARAFFIN_KWH_PER_KG;
        };
    }

    /** Returns the carbon dioxide that burning {@code fuel} in the room makes, kg per kWh of heat: 0.234 gas, 0.259 paraffin. */
    public static double carbonDioxideKgPerKwh(Plant.Fuel fuel) {
        return switch (fuel) {
            case ELECTRIC, FLUED -> 0.0;
            case UNFLUED_LPG -> 3.0 * CARBON_DIOXIDE_KG_PER_KMOL / PROPANE_KG_PER_KMOL / LPG_KWH_PER_KG;
            case UNFLUED_PARAFFIN -> 12.0 * CARBON_DIOXIDE_KG_PER_KMOL / DODECANE_KG_PER_KMOL / PARAFFIN_KWH_PER_KG;
        };
    }
}
