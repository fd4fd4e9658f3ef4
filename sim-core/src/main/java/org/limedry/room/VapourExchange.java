package org.limedry.room;

import org.limedry.air.AirConstants;
import org.limedry.room.AirExchange.Balance;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Vapour and heat that a flow of air carries between a room and outdoors, or between two rooms.
 *
 * <p>The three balances differ by 7 to 12 % in the air needed to dry a room. Heat is sensible heat only: the latent heat
 * of the vapour is dealt with where it evaporates and condenses. NaN gives NaN: the arguments of the hot loop are not
 * checked.
 *
 * @param balance which balance
 * @param pressurePa air pressure, Pa; above 0
 * @param gasConstantVapourJPerKgK gas constant of water vapour, J/(kg K); above 0
 * @param heatCapacity how the heat of a cubic metre is counted
 */
public record VapourExchange(
        Balance balance, double pressurePa, double gasConstantVapourJPerKgK, HeatCapacity heatCapacity) {
    private static final double DRY_AIR_J_PER_KG_K = 1006.0;
    private static final double VAPOUR_J_PER_KG_K = 1860.0;

    /** How the heat capacity of the flow is found. */
    public sealed interface HeatCapacity {
        /**
         * The same for every cubic metre, as the room benchmarks have it.
         *
         * @param jPerM3K heat capacity of air, J/(m3 K); above 0
         */
        record Fixed(double jPerM3K) implements HeatCapacity {
            public Fixed {
                Check.positive(jPerM3K, "jPerM3K", "J/(m3 K)");
            }
        }

        /** That of the moist air that comes in, {@code rho_da (cp_a + W cp_v)} at its own state. */
        record OfIncomingAir() implements HeatCapacity {}
    }

    public VapourExchange {
        Check.positive(pressurePa, "pressurePa", "Pa");
        Check.positive(gasConstantVapourJPerKgK, "gasConstantVapourJPerKgK", "J/(kg K)");
    }

    /**
     * Returns the vapour that leaves a room for outdoors, net.
     *
     * <p>{@code PARTIAL_PRESSURE: Q (p_i - p_e) / (R_v T_i)}, {@code EQUAL_VOLUME: Q (p_i / T_i - p_e / T_e) / R_v},
     * {@code DRY_AIR_MASS: m (W_i - W_e)} with {@code m} of {@link #dryAirKgPerS}.
     *
     * <p><b>Source:</b> balances of mass; constants 0.621945 and 287.042 J/(kg K) from ASHRAE Handbook Fundamentals 2017,
     * chapter Psychrometrics, second-hand. <b>Valid:</b> any moist air below boiling. <b>Accuracy:</b> ideal gas, 0.5 %.
     *
     * @param flowM3PerS fresh air Q, m3/s; at least 0
     * @param roomCelsius room air, °C
     * @param roomVapourKgPerM3 vapour in the room air, kg/m3
     * @param outdoorCelsius outdoor air, °C
     * @param outdoorVapourPressurePa vapour pressure outdoors, Pa
     * @return vapour out, kg/s; negative when it comes in
     */
    public double outKgPerS(
            double flowM3PerS,
            double roomCelsius,
            double roomVapourKgPerM3,
            double outdoorCelsius,
            double outdoorVapourPressurePa) {
        double outdoorVapourKgPerM3 = densityKgPerM3(outdoorVapourPressurePa, outdoorCelsius);
        return switch (balance) {
            case PARTIAL_PRESSURE ->
                flowM3PerS * (roomVapourKgPerM3 - densityKgPerM3(outdoorVapourPressurePa, roomCelsius));
            case EQUAL_VOLUME -> flowM3PerS * (roomVapourKgPerM3 - outdoorVapourKgPerM3);
            case DRY_AIR_MASS ->
                dryAirKgPerS(flowM3PerS, outdoorCelsius, outdoorVapourPressurePa)
                        * (humidityRatio(vapourPressurePa(roomVapourKgPerM3, roomCelsius))
                                - humidityRatio(outdoorVapourPressurePa));
        };
    }

    /**
     * Returns the sensible heat that fresh air brings into a room.
     *
     * <p>{@code Q C (T_e - T_i)}; C fixed, or {@code rho_da (1006 + 1860 W_e)} J/(m3 K) at the outdoor state.
     *
     * <p><b>Source:</b> balance of enthalpy with the latent part taken out; heat capacities from ASHRAE Handbook
     * Fundamentals 2017, chapter Psychrometrics, second-hand. <b>Valid:</b> -20 to 50 °C. <b>Accuracy:</b> 0.2 %.
     *
     * @param flowM3PerS fresh air Q, m3/s; at least 0
     * @param roomCelsius room air, °C
     * @param outdoorCelsius outdoor air, °C
     * @param outdoorVapourPressurePa vapour pressure outdoors, Pa
     * @return heat into the room, W; negative when the air cools it
     */
    public double heatInW(
            double flowM3PerS, double roomCelsius, double outdoorCelsius, double outdoorVapourPressurePa) {
        double perM3K = heatCapacity instanceof HeatCapacity.Fixed fixed
                ? fixed.jPerM3K()
                : dryAirKgPerM3(outdoorCelsius, outdoorVapourPressurePa)
                        * (DRY_AIR_J_PER_KG_K + VAPOUR_J_PER_KG_K * humidityRatio(outdoorVapourPressurePa));
        return flowM3PerS * perM3K * (outdoorCelsius - roomCelsius);
    }

    /**
     * Returns the vapour that one room loses to another by an open door, net; what one loses the other gains to the bit.
     *
     * <p>As {@link #outKgPerS}, with the state that a balance takes from one side taken from the mean of both rooms:
     * {@code PARTIAL_PRESSURE} has the mean temperature, {@code DRY_AIR_MASS} the mean density of dry air.
     *
     * @param eachWayM3PerS air that passes each way, m3/s; at least 0
     * @param oneCelsius air of the one room, °C
     * @param oneVapourKgPerM3 vapour in it, kg/m3
     * @param otherCelsius air of the other room, °C
     * @param otherVapourKgPerM3 vapour in it, kg/m3
     * @return vapour from the one room to the other, kg/s
     */
    public double toOtherRoomKgPerS(
            double eachWayM3PerS,
            double oneCelsius,
            double oneVapourKgPerM3,
            double otherCelsius,
            double otherVapourKgPerM3) {
        double onePa = vapourPressurePa(oneVapourKgPerM3, oneCelsius);
        double otherPa = vapourPressurePa(otherVapourKgPerM3, otherCelsius);
        return switch (balance) {
            case PARTIAL_PRESSURE -> eachWayM3PerS * densityKgPerM3(onePa - otherPa, 0.5 * (oneCelsius + otherCelsius));
            case EQUAL_VOLUME -> eachWayM3PerS * (oneVapourKgPerM3 - otherVapourKgPerM3);
            case DRY_AIR_MASS ->
                eachWayM3PerS
                        * 0.5
                        * (dryAirKgPerM3(oneCelsius, onePa) + dryAirKgPerM3(otherCelsius, otherPa))
                        * (humidityRatio(onePa) - humidityRatio(otherPa));
        };
    }

    /**
     * Returns the sensible heat that one room loses to another by an open door, net; what one loses the other gains.
     *
     * <p>{@code Q C (T_1 - T_2)}; C fixed, or the mean of the moist heat capacities of the two rooms.
     *
     * @param eachWayM3PerS air that passes each way, m3/s; at least 0
     * @param oneCelsius air of the one room, °C
     * @param oneVapourKgPerM3 vapour in it, kg/m3
     * @param otherCelsius air of the other room, °C
     * @param otherVapourKgPerM3 vapour in it, kg/m3
     * @return heat from the one room to the other, W
     */
    public double heatToOtherRoomW(
            double eachWayM3PerS,
            double oneCelsius,
            double oneVapourKgPerM3,
            double otherCelsius,
            double otherVapourKgPerM3) {
        double perM3K = heatCapacity instanceof HeatCapacity.Fixed fixed
                ? fixed.jPerM3K()
                : 0.5 * (moistJPerM3K(oneCelsius, oneVapourKgPerM3) + moistJPerM3K(otherCelsius, otherVapourKgPerM3));
        return eachWayM3PerS * perM3K * (oneCelsius - otherCelsius);
    }

    /**
     * Returns the dry air in a flow, {@code Q (P - p_v) / (R_da T)}.
     *
     * @param flowM3PerS flow at the state given, m3/s; at least 0
     * @param celsius its temperature, °C
     * @param vapourPressurePa its vapour pressure, Pa
     * @return dry air, kg/s
     */
    public double dryAirKgPerS(double flowM3PerS, double celsius, double vapourPressurePa) {
        return flowM3PerS * dryAirKgPerM3(celsius, vapourPressurePa);
    }

    /**
     * Returns the dry air in a cubic metre, {@code (P - p_v) / (R_da T)}.
     *
     * @param celsius temperature, °C
     * @param vapourPressurePa vapour pressure, Pa
     * @return dry air, kg/m3
     */
    public double dryAirKgPerM3(double celsius, double vapourPressurePa) {
        return (pressurePa - vapourPressurePa) / (AirConstants.DRY_AIR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(celsius));
    }

    /**
     * Returns the heat capacity of a cubic metre of room air, {@code rho_da cp_a + rho_v cp_v}, whatever the flow uses.
     *
     * @param celsius temperature, °C
     * @param vapourKgPerM3 vapour in it, kg/m3
     * @return heat capacity, J/(m3 K)
     */
    public double moistJPerM3K(double celsius, double vapourKgPerM3) {
        return dryAirKgPerM3(celsius, vapourPressurePa(vapourKgPerM3, celsius)) * DRY_AIR_J_PER_KG_K
                + vapourKgPerM3 * VAPOUR_J_PER_KG_K;
    }

    private double humidityRatio(double vapourPressurePa) {
        return AirConstants.WATER_TO_DRY_AIR_MASS_RATIO * vapourPressurePa / (pressurePa - vapourPressurePa);
    }

    private double densityKgPerM3(double vapourPressurePa, double celsius) {
        return vapourPressurePa / (gasConstantVapourJPerKgK * Units.kelvin(celsius));
    }

    private double vapourPressurePa(double vapourKgPerM3, double celsius) {
        return vapourKgPerM3 * gasConstantVapourJPerKgK * Units.kelvin(celsius);
    }
}
