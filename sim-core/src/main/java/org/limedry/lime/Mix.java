package org.limedry.lime;

import java.util.OptionalDouble;
import org.limedry.units.Check;

/**
 * A mortar by the gauge box: parts by volume.
 *
 * @param name what the user calls it; not blank
 * @param lime the binder
 * @param limeParts parts of it, loose powder or putty as it comes; above 0
 * @param sandParts parts of sand, loose; at least 0
 * @param sand whether the sand is dry or as it lies in the yard
 * @param addition what is put in to make it set with water
 * @param additionPercentOfMix the addition as percent by volume of all dry parts together, itself included; in [0, 50]
 * @param waterPerLimeVolume litres of water put in for each litre of lime gauged (for a hot mix all the water, slaking
 *     included), if known
 * @param haired whether hair is beaten in
 */
public record Mix(
        String name,
        LimeKind lime,
        double limeParts,
        double sandParts,
        SandState sand,
        Addition addition,
        double additionPercentOfMix,
        OptionalDouble waterPerLimeVolume,
        boolean haired) {
    /** Sand over lime by volume up to which a mix of air lime is a finish, not a backing coat. */
    private static final double RICHEST_BACKING = 1.5;

    /** How wet the sand is. */
    public enum SandState {
        /** Kiln-dried or bagged. */
        DRY,
        /** As it lies in the yard. */
        DAMP
    }

    /** A powder that reacts with lime and water. Densities FROM MEMORY. */
    public enum Addition {
        /** Ground granulated slag. */
        SLAG(1100.0, 2900.0),
        /** Brick dust, trass, metakaolin and the like. */
        POZZOLAN(800.0, 2600.0);

        private final double bulkKgPerM3;
        private final double grainKgPerM3;

        Addition(double bulkKgPerM3, double grainKgPerM3) {
            this.bulkKgPerM3 = bulkKgPerM3;
            this.grainKgPerM3 = grainKgPerM3;
        }

        /** Returns the loose bulk density, kg/m3. */
        public double bulkKgPerM3() {
            return bulkKgPerM3;
        }

        /** Returns the density of its grains, kg/m3. */
        public double grainKgPerM3() {
            return grainKgPerM3;
        }
    }

    public Mix {
        Check.notBlank(name, "name");
        Check.positive(limeParts, "limeParts", "");
        Check.nonNegative(sandParts, "sandParts", "");
        Check.inClosed(additionPercentOfMix, 0.0, 50.0, "additionPercentOfMix", "%");
        if (waterPerLimeVolume.isPresent()) {
            Check.nonNegative(waterPerLimeVolume.getAsDouble(), "waterPerLimeVolume", "litres per litre");
        }
    }

    /** Returns sand over lime, by volume. */
    public double sandPerLime() {
        return sandParts / limeParts;
    }

    /** Returns the addition over lime, by volume. */
    public double additionPerLime() {
        double share = additionPercentOfMix / 100.0;
        return share / (1.0 - share) * (1.0 + sandPerLime());
    }

    /** Tells whether it has a hydraulic addition. */
    public boolean hasAddition() {
        return additionPercentOfMix > 0.0;
    }

    /** Tells whether it is a fine, rich finish of air lime. */
    public boolean isFinish() {
        return !lime.isHydraulic() && sandPerLime() <= RICHEST_BACKING;
    }
}
