package org.limedry.lime;

/**
 * Masses in the life of lime: {@code CaO + H2O -> Ca(OH)2} and {@code Ca(OH)2 + CO2 -> CaCO3 + H2O}, from molar masses.
 *
 * <p>Source: abridged standard atomic weights (IUPAC 2021), FROM MEMORY: H 1.008, C 12.011, O 15.999, Ca 40.078 g/mol.
 */
public final class Stoichiometry {
    private static final double HYDROGEN = 1.008;
    private static final double CARBON = 12.011;
    private static final double OXYGEN = 15.999;
    private static final double CALCIUM = 40.078;

    private static final double WATER = 2.0 * HYDROGEN + OXYGEN;
    private static final double CARBON_DIOXIDE = CARBON + 2.0 * OXYGEN;
    private static final double QUICKLIME = CALCIUM + OXYGEN;
    private static final double HYDROXIDE = QUICKLIME + WATER;

    /** Water bound by slaking, kg per kg CaO. */
    public static final double SLAKING_WATER_PER_QUICKLIME = WATER / QUICKLIME;

    /** Calcium hydroxide made by slaking, kg per kg CaO. */
    public static final double HYDROXIDE_PER_QUICKLIME = HYDROXIDE / QUICKLIME;

    /** Water set free by carbonation, kg per kg Ca(OH)2. */
    public static final double WATER_PER_CARBONATED_HYDROXIDE = WATER / HYDROXIDE;

    /** Carbon dioxide taken by carbonation, kg per kg Ca(OH)2. */
    public static final double CARBON_DIOXIDE_PER_HYDROXIDE = CARBON_DIOXIDE / HYDROXIDE;

    private Stoichiometry() {}
}
