package org.limedry.room;

import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Air exchanged by an open door between two rooms, as much one way as the other.
 *
 * <p>Driven by temperature alone: no draught through the house, no people walking through. The factor on openings of
 * {@link AirExchange} is one on openings to outdoors and does not act here.
 *
 * @param coefficientM3PerS flow each way for {@code dT / T = 1}, m3/s; above 0
 */
public record DoorFlow(double coefficientM3PerS) {
    private static final double ORIFICE_SHARE = 1.0 / 3.0;

    public DoorFlow {
        Check.positive(coefficientM3PerS, "coefficientM3PerS", "m3/s");
    }

    /** Returns the flow law of {@code door} when it stands open. */
    public static DoorFlow of(Opening door, AirExchange air) {
        double heightM = door.heightM();
        double root = Math.sqrt(AirFlow.GRAVITY_M_PER_S2 * heightM * heightM * heightM);
        return new DoorFlow(air.dischargeCoefficient() * door.widthM() * ORIFICE_SHARE * root);
    }

    /**
     * Returns the air that passes each way.
     *
     * <p>{@code Q = (Cd W / 3) sqrt(g H^3 sqrt(dT^2 + 0.01^2) / T)}, T the mean of the two rooms in kelvin.
     *
     * <p><b>Source:</b> Brown and Solvason 1962, Natural convection through rectangular openings in partitions, Int. J.
     * Heat Mass Transfer 5, 859-868, FROM MEMORY; rounded at 0 K by us. <b>Valid:</b> rooms without stratification of
     * their own. <b>Accuracy:</b> not stated.
     *
     * @param oneCelsius air of one room, °C
     * @param otherCelsius air of the other, °C
     * @return flow each way, m3/s
     */
    public double eachWayM3PerS(double oneCelsius, double otherCelsius) {
        double meanKelvin = Units.kelvin(0.5 * (oneCelsius + otherCelsius));
        return coefficientM3PerS * AirFlow.rootOfBuoyancy(oneCelsius - otherCelsius, meanKelvin);
    }
}
