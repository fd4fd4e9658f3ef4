package org.limedry.lime;

import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Age at 20 C: how fast a coat sets at another temperature.
 *
 * <p>Does not know the difference between one lime and another beyond the activation energy, and no dormant period.
 */
public final class EquivalentAge {
    private static final double REFERENCE_CELSIUS = 20.0;
    /** Molar gas constant, J/(mol K) (BIPM, SI brochure 9th edition, exact since 2019; rounded). */
    private static final double GAS_CONSTANT_J_PER_MOL_K = 8.314462618;

    private EquivalentAge() {}

    /**
     * Returns the days at 20 C gained in a day at this temperature.
     *
     * <p>{@code exp(-E/R (1/T - 1/293.15 K))}, and nothing below 0 C.
     *
     * <p><b>Source:</b> Arrhenius. 30 kJ/mol is implied by the trade's rule for hydraulic lime, 18 kJ/mol was measured for
     * slag with lime at 15 to 50 C (material notes, S33 and S30). The stop at 0 C is judgement. <b>Valid:</b> -60 to 80 C
     * as arithmetic, 0 to 50 C as a model. <b>Accuracy:</b> not stated.
     *
     * @param celsius temperature of the coat, C; in [-60, 80]
     * @param activationJPerMol activation energy, J/mol; above 0
     * @return days per day
     */
    public static double rate(double celsius, double activationJPerMol) {
        Check.inClosed(celsius, -60.0, 80.0, "celsius", "C");
        Check.positive(activationJPerMol, "activationJPerMol", "J/mol");
        if (celsius < 0.0) {
            return 0.0;
        }
        double inverse = 1.0 / Units.kelvin(celsius) - 1.0 / Units.kelvin(REFERENCE_CELSIUS);
        return Math.exp(-activationJPerMol / GAS_CONSTANT_J_PER_MOL_K * inverse);
    }
}
