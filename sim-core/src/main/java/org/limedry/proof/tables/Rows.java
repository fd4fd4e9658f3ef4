package org.limedry.proof.tables;

import org.limedry.air.Enhancement;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** What the rows of several tables have in common. */
final class Rows {
    static final double ONE_ATMOSPHERE_PA = 101_325.0;

    private Rows() {}

    static double celsius(ReferenceTable.Row row) {
        return row.number("t_C");
    }

    static Phase phase(ReferenceTable.Row row) {
        return row.text("phase").equals("ice") ? Phase.ICE : Phase.WATER;
    }

    /** Returns ordinary air of the columns t_C and rh_pct at one atmosphere. */
    static MoistAir air(ReferenceTable.Row row) {
        return MoistAir.of(celsius(row), Units.fractionFromPercent(row.number("rh_pct")), ONE_ATMOSPHERE_PA);
    }

    /** Returns a formula that counts over ice below 0 C. */
    static Saturation overIce(SaturationFormula formula) {
        return new Saturation(formula, Phase.ICE, Enhancement.NONE);
    }

    /** Returns the reference equation of a phase. */
    static SaturationFormula iapws(Phase phase) {
        return phase == Phase.ICE ? SaturationFormula.IAPWS_R14_08 : SaturationFormula.WAGNER_PRUSS_AUX;
    }
}
