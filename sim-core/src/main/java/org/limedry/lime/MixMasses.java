package org.limedry.lime;

/**
 * What is in a m3 of fresh mortar, by closure of volumes: {@code lime + addition + sand + water + air = 1 m3}.
 *
 * <p>Does not model the bulking of damp sand (a gauge box of damp sand holds less sand: the real mix is richer and wetter
 * than this), the inert part of quicklime (about 1 % of the volume; free water comes out 1 % high), shrinkage, or hair.
 *
 * @param limeKgPerM3 dry lime: Ca(OH)2 of air limes, the whole powder of natural hydraulic lime, kg/m3
 * @param calciumHydroxideKgPerM3 lime that can carbonate, kg/m3
 * @param additionKgPerM3 slag or pozzolan, kg/m3
 * @param sandKgPerM3 dry sand, kg/m3
 * @param freeWaterKgPerM3 water to be dried or bound by setting, kg/m3
 * @param slakingWaterKgPerM3 water bound by slaking before, not in the other figures, kg/m3
 * @param airFraction air, m3/m3
 */
public record MixMasses(
        double limeKgPerM3,
        double calciumHydroxideKgPerM3,
        double additionKgPerM3,
        double sandKgPerM3,
        double freeWaterKgPerM3,
        double slakingWaterKgPerM3,
        double airFraction) {
    /** Density of solid calcium hydroxide, kg/m3. FROM MEMORY. */
    public static final double HYDROXIDE_KG_PER_M3 = 2240.0;

    /** Density of the grains of sand and of natural hydraulic lime, kg/m3. FROM MEMORY. */
    public static final double GRAIN_KG_PER_M3 = 2650.0;

    /**
     * Returns the masses of a mix.
     *
     * @param mix parts by volume
     * @param figures bulk densities, purity, moisture and water
     * @throws IllegalArgumentException if measured water does not even cover slaking and steam
     */
    public static MixMasses of(Mix mix, MixFigures figures) {
        return new MixBatch(mix, figures).perCubicMetre();
    }

    /** Returns the density of the fresh mortar, kg/m3. */
    public double freshDensityKgPerM3() {
        return limeKgPerM3 + additionKgPerM3 + sandKgPerM3 + freeWaterKgPerM3;
    }
}
