package org.limedry.room;

import org.limedry.units.Units;

/**
 * What people at work give to a room.
 *
 * <p>Figures for light work on one's feet; hard plastering gives up to twice as much of all three.
 *
 * @param waterKgPerS water vapour, kg/s
 * @param heatW sensible heat to the air, W
 * @param carbonDioxideKgPerS carbon dioxide, kg/s
 */
public record PeopleOutput(double waterKgPerS, double heatW, double carbonDioxideKgPerS) {
    /** Average activity 60 to 120 g/h, exhausting 120 to 200. Northern Architecture, Solar housing, Table 10.1.1. */
    private static final double WATER_KG_PER_H = 0.090;

    /** Standing, light work. FROM MEMORY (ASHRAE Handbook Fundamentals, heat gain from occupants); range 60 to 120. */
    private static final double SENSIBLE_W = 75.0;

    /** 0.0052 l/s of carbon dioxide at 1.2 met, 20 °C. FROM MEMORY (ASHRAE 62.1, appendix); range 0.03 to 0.09 kg/h. */
    private static final double CARBON_DIOXIDE_KG_PER_H = 0.034;

    /** Returns what {@code count} people give; their number may be a mean with a fraction. */
    public static PeopleOutput of(double count) {
        return new PeopleOutput(
                count * Units.perSecondFromPerHour(WATER_KG_PER_H),
                count * SENSIBLE_W,
                count * Units.perSecondFromPerHour(CARBON_DIOXIDE_KG_PER_H));
    }
}
