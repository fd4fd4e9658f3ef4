package org.limedry.lime;

import java.util.OptionalDouble;

/**
 * Values that stand in for a mix's likely ones: a measurement, or one draw of the unknowns. Empty means likely.
 *
 * @param freeWaterKgPerM3 free water as laid, kg/m3
 * @param entrySuctionPa entry suction, Pa
 * @param absorptionKgPerM2SqrtS water absorption coefficient, kg/(m2 s^0.5)
 * @param vapourResistance vapour resistance factor
 * @param carbonationMPerSqrtS depth coefficient, m/s^0.5
 */
public record MortarChoice(
        OptionalDouble freeWaterKgPerM3,
        OptionalDouble entrySuctionPa,
        OptionalDouble absorptionKgPerM2SqrtS,
        OptionalDouble vapourResistance,
        OptionalDouble carbonationMPerSqrtS) {
    /** Returns the choice of every likely value. */
    public static MortarChoice likely() {
        OptionalDouble none = OptionalDouble.empty();
        return new MortarChoice(none, none, none, none, none);
    }
}
