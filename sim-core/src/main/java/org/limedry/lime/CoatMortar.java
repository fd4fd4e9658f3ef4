package org.limedry.lime;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.limedry.material.Material;
import org.limedry.units.Check;

/**
 * A mixed mortar as a coat needs it.
 *
 * @param name what the user calls the mix; not blank
 * @param material its one set of functions for life, fresh and hardened; free saturation is free water / 0.97
 * @param freeWaterKgPerM3 water to be dried or bound when laid, kg/m3; above 0
 * @param calciumHydroxideKgPerM3 lime that can still carbonate, kg/m3; at least 0
 * @param boundWaterKgPerM3 water that the hydraulic part will have bound in the end, kg/m3; at least 0
 * @param settingActivationJPerMol activation energy of setting for the equivalent age, J/mol; above 0
 * @param isHaired whether hair holds it together
 * @param carbonationMPerSqrtS depth coefficient of a drained coat in outdoor air, m/s^0.5; at least 0
 */
public record CoatMortar(
        String name,
        Material material,
        double freeWaterKgPerM3,
        double calciumHydroxideKgPerM3,
        double boundWaterKgPerM3,
        double settingActivationJPerMol,
        boolean isHaired,
        double carbonationMPerSqrtS) {
    private static final double LEAST_SUCTION_PA = 1.0e-3;
    private static final double LARGEST_SUCTION_PA = 1.0e10;
    private static final double ROOT_ACCURACY = 1.0e-12;
    private static final int MOST_EVALUATIONS = 200;

    public CoatMortar {
        Check.notBlank(name, "name");
        Check.positive(freeWaterKgPerM3, "freeWaterKgPerM3", "kg/m3");
        Check.nonNegative(calciumHydroxideKgPerM3, "calciumHydroxideKgPerM3", "kg/m3");
        Check.nonNegative(boundWaterKgPerM3, "boundWaterKgPerM3", "kg/m3");
        Check.positive(settingActivationJPerMol, "settingActivationJPerMol", "J/mol");
        Check.nonNegative(carbonationMPerSqrtS, "carbonationMPerSqrtS", "m/s^0.5");
    }

    /** Returns the suction at which the material holds the free water of the fresh mix, Pa. */
    public double laidSuctionPa() {
        double logSuction = new BrentSolver(ROOT_ACCURACY)
                .solve(
                        MOST_EVALUATIONS,
                        u -> material.retention().waterKgPerM3(Math.exp(u)) - freeWaterKgPerM3,
                        Math.log(LEAST_SUCTION_PA),
                        Math.log(LARGEST_SUCTION_PA));
        return Math.exp(logSuction);
    }
}
