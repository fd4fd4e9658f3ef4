package org.limedry.air;

import org.limedry.units.Check;

/** The temperature factor fRsi of a wall: how far its inner face stays above the outdoor temperature, 0 to 1. */
public final class TemperatureFactor {
    private TemperatureFactor() {}

    /**
     * Returns the temperature factor of an inner face, {@code f = (tsi - te) / (ti - te)}.
     *
     * <p><b>Source:</b> ISO 13788, DIN 4108-2, second-hand. Above 1 for a face warmer than the room, below 0 for one colder
     * than outdoors.
     *
     * @param surfaceCelsius inner face, °C
     * @param insideCelsius room air, °C; not equal to {@code outsideCelsius}
     * @param outsideCelsius outdoor air, °C
     * @return temperature factor, dimensionless
     * @throws IllegalArgumentException if an argument is not finite or the two airs are equally warm
     */
    public static double ofSurface(double surfaceCelsius, double insideCelsius, double outsideCelsius) {
        Check.finite(surfaceCelsius, "surfaceCelsius", "°C");
        Check.finite(insideCelsius, "insideCelsius", "°C");
        Check.finite(outsideCelsius, "outsideCelsius", "°C");
        Check.that(insideCelsius != outsideCelsius, "insideCelsius", "different from outsideCelsius °C", insideCelsius);
        return (surfaceCelsius - outsideCelsius) / (insideCelsius - outsideCelsius);
    }

    /**
     * Returns the temperature factor of a plane wall in the steady state, {@code f = 1 - U·Rsi}.
     *
     * <p><b>Source:</b> ISO 13788, second-hand. The resistance must be the one that the thermal transmittance contains.
     *
     * @param transmittanceWPerM2K thermal transmittance U, W/(m² K); above 0
     * @param innerResistanceM2KPerW inner surface resistance Rsi, m² K/W; in (0, 1/U]
     * @return temperature factor, dimensionless
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double ofTransmittance(double transmittanceWPerM2K, double innerResistanceM2KPerW) {
        Check.positive(transmittanceWPerM2K, "transmittanceWPerM2K", "W/(m² K)");
        Check.inOpenClosed(innerResistanceM2KPerW, 0.0, 1.0 / transmittanceWPerM2K, "innerResistanceM2KPerW", "m² K/W");
        return 1.0 - transmittanceWPerM2K * innerResistanceM2KPerW;
    }
}
