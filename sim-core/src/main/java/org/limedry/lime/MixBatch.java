package org.limedry.lime;

import org.limedry.units.Check;

/** A batch of mortar that takes one m3 of lime as gauged. */
final class MixBatch {
    private static final double WATER_KG_PER_M3 = 1000.0;
    /** Water that a fine powder takes up to keep the same consistency, kg/kg. FROM MEMORY. */
    private static final double ADDITION_WATER = 0.35;

    private final Mix mix;
    private final MixFigures figures;
    private final double quicklimeKg;
    private final double limeKg;
    private final double hydroxideKg;
    private final double additionKg;
    private final double sandKg;

    MixBatch(Mix mix, MixFigures figures) {
        this.mix = mix;
        this.figures = figures;
        double bulk = figures.limeBulkKgPerM3();
        this.quicklimeKg = mix.lime() == LimeKind.QUICKLIME ? bulk * figures.purity() : 0.0;
        this.limeKg = switch (mix.lime()) {
            case QUICKLIME -> quicklimeKg * Stoichiometry.HYDROXIDE_PER_QUICKLIME;
            case PUTTY -> MixMasses.HYDROXIDE_KG_PER_M3 * puttySolids(bulk);
            case HYDRATED, NHL_2, NHL_3_5, NHL_5 -> bulk;
        };
        this.hydroxideKg = mix.lime() == LimeKind.QUICKLIME ? limeKg : limeKg * figures.purity();
        this.additionKg = mix.additionPerLime() * mix.addition().bulkKgPerM3();
        this.sandKg = mix.sandPerLime() * figures.sandBulkKgPerM3();
    }

    MixMasses perCubicMetre() {
        double limeGrain = mix.lime().isHydraulic() ? MixMasses.GRAIN_KG_PER_M3 : MixMasses.HYDROXIDE_KG_PER_M3;
        double solidsM3 =
                limeKg / limeGrain + additionKg / mix.addition().grainKgPerM3() + sandKg / MixMasses.GRAIN_KG_PER_M3;
        double waterKg = freeWaterKg(solidsM3);
        double volumeM3 = (solidsM3 + waterKg / WATER_KG_PER_M3) / (1.0 - figures.airFraction());
        return new MixMasses(
                limeKg / volumeM3,
                hydroxideKg / volumeM3,
                additionKg / volumeM3,
                sandKg / volumeM3,
                waterKg / volumeM3,
                quicklimeKg * Stoichiometry.SLAKING_WATER_PER_QUICKLIME / volumeM3,
                figures.airFraction());
    }

    private double freeWaterKg(double solidsM3) {
        double broughtKg = puttyWaterKg() + sandKg * figures.sandMoisture();
        FreshWater water = figures.water();
        if (water instanceof FreshWater.PerVolume given) {
            double share = given.kgPerM3() / WATER_KG_PER_M3;
            double roomForSolids = 1.0 - figures.airFraction() - share;
            Check.positive(roomForSolids, "room for solids beside water and air", "m3/m3");
            return solidsM3 * share / roomForSolids * WATER_KG_PER_M3;
        }
        if (water instanceof FreshWater.PerHydroxide ratio) {
            return ratio.kgPerKgHydroxide() * hydroxideKg + ADDITION_WATER * additionKg;
        }
        if (water instanceof FreshWater.Measured measured) {
            double lost = Stoichiometry.SLAKING_WATER_PER_QUICKLIME + measured.steamPerQuicklime();
            double freeKg = broughtKg + measured.litresPerLimeVolume() * WATER_KG_PER_M3 - lost * quicklimeKg;
            Check.positive(freeKg, "water left after slaking and steam", "kg per m3 of lime");
            return freeKg;
        }
        return broughtKg + ADDITION_WATER * additionKg;
    }

    private double puttyWaterKg() {
        return mix.lime() == LimeKind.PUTTY ? WATER_KG_PER_M3 * (1.0 - puttySolids(figures.limeBulkKgPerM3())) : 0.0;
    }

    /** Returns the share of the volume of putty that is solid: {@code rho = 1000 (1 - f) + 2240 f}. */
    private static double puttySolids(double densityKgPerM3) {
        double solids = (densityKgPerM3 - WATER_KG_PER_M3) / (MixMasses.HYDROXIDE_KG_PER_M3 - WATER_KG_PER_M3);
        Check.inOpen(solids, 0.0, 1.0, "solid share of the putty", "m3/m3");
        return solids;
    }
}
