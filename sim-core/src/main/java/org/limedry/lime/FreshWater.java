package org.limedry.lime;

import org.limedry.units.Check;

/** What settles the free water of a fresh mix. */
public sealed interface FreshWater {
    /** Nothing is put in: the water of the putty and of the sand. */
    record AsItComes() implements FreshWater {}

    /**
     * Water by what was measured into the batch; what slaking binds and steam carries off is taken away, what the sand
     * brings is added.
     *
     * @param litresPerLimeVolume litres for each litre of lime gauged; at least 0
     * @param steamPerQuicklime water lost as steam in a hot mix, kg per kg CaO; at least 0
     */
    record Measured(double litresPerLimeVolume, double steamPerQuicklime) implements FreshWater {
        public Measured {
            Check.nonNegative(litresPerLimeVolume, "litresPerLimeVolume", "litres per litre");
            Check.nonNegative(steamPerQuicklime, "steamPerQuicklime", "kg/kg");
        }
    }

    /**
     * Free water by the fineness of the lime: a hot mix made to plastering consistency.
     *
     * @param kgPerKgHydroxide kg for each kg of calcium hydroxide; above 0
     */
    record PerHydroxide(double kgPerKgHydroxide) implements FreshWater {
        public PerHydroxide {
            Check.positive(kgPerKgHydroxide, "kgPerKgHydroxide", "kg/kg");
        }
    }

    /**
     * Free water by the volume of mortar: a powder gauged to plastering consistency.
     *
     * @param kgPerM3 kg in a m3 of fresh mortar; in (0, 900)
     */
    record PerVolume(double kgPerM3) implements FreshWater {
        public PerVolume {
            Check.inOpen(kgPerM3, 0.0, 900.0, "kgPerM3", "kg/m3");
        }
    }
}
