package org.limedry.cli.wallcase;

import java.util.List;
import java.util.OptionalDouble;
import org.limedry.air.Phase;
import org.limedry.air.SaturationFormula;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.wall.Constants;

/** The constants of a wall case. */
final class CaseConstants {
    /** What stands in for a constant that could not be read, so that the rest of the file can be checked. */
    private static final Constants STAND_IN = Constants.ordinary();

    private CaseConstants() {}

    static Constants of(Entry said) {
        SaturationFormula formula = said.find(CaseKeys.SATURATION).orElse(SaturationFormula.ISO13788);
        Phase belowZero = said.find(CaseKeys.BELOW_ZERO).orElse(Phase.WATER);
        if (!formula.covers(belowZero)) {
            said.at(CaseKeys.BELOW_ZERO)
                    .problem("ice", "must be water: " + CaseKeys.word(formula) + " is published over water only");
            belowZero = Phase.WATER;
        }
        return new Constants(
                formula.curve(belowZero),
                number(said, CaseKeys.GAS_CONSTANT, STAND_IN.gasConstantVapourJPerKgK()),
                STAND_IN.waterDensityKgPerM3(),
                number(said, CaseKeys.LATENT_HEAT, STAND_IN.latentHeatJPerKg()),
                number(said, CaseKeys.WATER_HEAT, STAND_IN.waterHeatCapacityJPerKgK()),
                said.find(CaseKeys.KELVIN_AT).orElse(OptionalDouble.empty()),
                number(said, CaseKeys.PERMEABILITY_EXPONENT, STAND_IN.vapourPermeabilityExponent()));
    }

    private static double number(Entry said, Key<Double> key, double standIn) {
        return said.find(key).orElse(standIn);
    }

    /** Notes what is taken below 0 C where the file does not say it. */
    static void noteBelowZero(Entry said, List<String> notes) {
        SaturationFormula formula = said.get(CaseKeys.SATURATION);
        if (!said.isGiven(CaseKeys.BELOW_ZERO) && formula.minCelsius(Phase.WATER) >= 0.0) {
            notes.add("Below 0 C, if the wall gets there, saturation by " + CaseKeys.word(formula)
                    + " is followed over water; belowZero: ice counts over ice.");
        }
    }
}
