package org.limedry.air;

import org.limedry.units.Check;
import org.limedry.units.Units;

/** Carbon dioxide in air: parts per million by volume, and mass per volume. */
public final class CarbonDioxideContent {
    /** Molar gas constant, J/(mol K). Exact by definition (BIPM, The International System of Units, 9th edition). */
    private static final double GAS_CONSTANT_J_PER_MOL_K = 8.314462618;

    /** Molar mass, kg/mol, from standard atomic weights 12.011 and 15.999. */
    private static final double MOLAR_MASS_KG_PER_MOL = 44.009e-3;

    private static final double PER_MILLION = 1e-6;

    private CarbonDioxideContent() {}

    /**
     * Returns the mass of carbon dioxide in a volume of air, {@code c = 1e-6·ppm·p·M / (R·T)}.
     *
     * <p><b>Source:</b> ideal gas. <b>Valid:</b> 0 to 1 000 000 ppm.
     *
     * @param ppm share by volume, parts per million; in [0, 1 000 000]
     * @param celsius air temperature, °C; above absolute zero
     * @param pressurePa barometric pressure, Pa; above 0
     * @return carbon dioxide, kg/m³
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double kgPerM3(double ppm, double celsius, double pressurePa) {
        Check.inClosed(ppm, 0.0, 1e6, "ppm", "parts per million");
        return PER_MILLION * ppm * pureKgPerM3(celsius, pressurePa);
    }

    private static double pureKgPerM3(double celsius, double pressurePa) {
        Check.positive(Units.kelvin(celsius), "kelvin", "K");
        Check.positive(pressurePa, "pressurePa", "Pa");
        return pressurePa * MOLAR_MASS_KG_PER_MOL / (GAS_CONSTANT_J_PER_MOL_K * Units.kelvin(celsius));
    }
}
