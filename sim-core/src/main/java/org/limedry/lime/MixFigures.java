package org.limedry.lime;

import org.limedry.units.Check;

/**
 * The figures that turn parts by volume into masses.
 *
 * @param limeBulkKgPerM3 loose bulk density of the powder, or density of the putty, kg/m3; above 0
 * @param purity CaO in quicklime, Ca(OH)2 in hydrated or natural hydraulic lime, kg/kg; 1 for putty; in (0, 1]
 * @param sandBulkKgPerM3 loose bulk density of dry sand, kg/m3; above 0
 * @param sandMoisture water in the sand, kg per kg dry; at least 0
 * @param airFraction air in the fresh mortar, m3/m3; in [0, 0.3]
 * @param water what settles the free water
 */
public record MixFigures(
        double limeBulkKgPerM3,
        double purity,
        double sandBulkKgPerM3,
        double sandMoisture,
        double airFraction,
        FreshWater water) {
    public MixFigures {
        Check.positive(limeBulkKgPerM3, "limeBulkKgPerM3", "kg/m3");
        Check.inOpenClosed(purity, 0.0, 1.0, "purity", "");
        Check.positive(sandBulkKgPerM3, "sandBulkKgPerM3", "kg/m3");
        Check.nonNegative(sandMoisture, "sandMoisture", "kg/kg");
        Check.inClosed(airFraction, 0.0, 0.3, "airFraction", "");
    }
}
