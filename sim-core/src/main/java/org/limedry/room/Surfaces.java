package org.limedry.room;

import org.limedry.units.Check;

/**
 * Transfer of heat and vapour at faces.
 *
 * @param stillWPerM2K convection at a face in a still room, W/(m2 K)
 * @param doorOpenWPerM2K convection with an opening of the room open, W/(m2 K)
 * @param aimedWPerM2K convection where a fan or heater is aimed at plaster, W/(m2 K)
 * @param radiantWPerM2K long-wave exchange with the radiant node, W/(m2 K); at 0 the node takes the air's temperature
 * @param vapourPerConvectionKPerJ vapour transfer per convection (Lewis), kg/(m2 s Pa) per W/(m2 K)
 * @param outsideStillWPerM2K convection outdoors without wind, W/(m2 K)
 * @param outsideWindWPerM2KPerMPerS convection outdoors added per m/s of wind
 */
public record Surfaces(
        double stillWPerM2K,
        double doorOpenWPerM2K,
        double aimedWPerM2K,
        double radiantWPerM2K,
        double vapourPerConvectionKPerJ,
        double outsideStillWPerM2K,
        double outsideWindWPerM2KPerMPerS) {
    /** Returns the coefficients used for sites. FROM MEMORY (EN ISO 6946; Lewis), see the physics notes. */
    public static Surfaces ordinary() {
        return new Surfaces(3.0, 5.0, 10.0, 5.0, 7.0e-9, 4.0, 4.0);
    }

    public Surfaces {
        Check.positive(stillWPerM2K, "stillWPerM2K", "W/(m2 K)");
        Check.positive(doorOpenWPerM2K, "doorOpenWPerM2K", "W/(m2 K)");
        Check.positive(aimedWPerM2K, "aimedWPerM2K", "W/(m2 K)");
        Check.nonNegative(radiantWPerM2K, "radiantWPerM2K", "W/(m2 K)");
        Check.nonNegative(vapourPerConvectionKPerJ, "vapourPerConvectionKPerJ", "s/m per W/(m2 K)");
        Check.nonNegative(outsideStillWPerM2K, "outsideStillWPerM2K", "W/(m2 K)");
        Check.nonNegative(outsideWindWPerM2KPerMPerS, "outsideWindWPerM2KPerMPerS", "W/(m2 K) per m/s");
    }
}
