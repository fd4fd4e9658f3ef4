package org.limedry.room;

import org.limedry.units.Check;

/**
 * How air carries vapour and heat between a room and outdoors or another room.
 *
 * @param balance which vapour balance is used
 * @param pressurePa air pressure, Pa; above 0
 * @param openingFactor factor on the air flow of openings, 1 for the published formula
 * @param windPressureDifference difference of wind pressure coefficients across a room with openings on two sides
 * @param dischargeCoefficient discharge coefficient of a plain opening
 */
public record AirExchange(
        Balance balance,
        double pressurePa,
        double openingFactor,
        double windPressureDifference,
        double dischargeCoefficient) {
    /** The three vapour balances in use; they differ by 7 to 12 % in the air needed. */
    public enum Balance {
        /** Equal volume at room temperature: partial pressures at the room's temperature. */
        PARTIAL_PRESSURE,
        /** Equal volume flows, each at its own temperature. */
        EQUAL_VOLUME,
        /** Equal mass of dry air in and out, flow counted at the outdoor state. */
        DRY_AIR_MASS
    }

    /** Returns the exchange used for sites. */
    public static AirExchange ordinary() {
        return new AirExchange(Balance.DRY_AIR_MASS, 101_325.0, 1.0, 0.4, 0.60);
    }

    public AirExchange {
        Check.positive(pressurePa, "pressurePa", "Pa");
        Check.positive(openingFactor, "openingFactor", "");
        Check.nonNegative(windPressureDifference, "windPressureDifference", "");
        Check.positive(dischargeCoefficient, "dischargeCoefficient", "");
    }
}
