package org.limedry.lime;

import org.limedry.material.Assumed;
import org.limedry.material.Catalogue;
import org.limedry.material.MaterialSheet;
import org.limedry.reference.DefaultsTable;
import org.limedry.reference.Estimate;
import org.limedry.units.Units;

/**
 * From a mix to the mortar of a coat, with the defaults of the reference table.
 *
 * <p>A coat keeps one set of functions for life: what hardening changes in its pores is not modelled. Lime used up by a
 * pozzolan is not taken from what can carbonate.
 */
public final class CoatMortars {
    /** Saturation at which a coat is laid: its free saturation is its free water over this. */
    public static final double LAID_SATURATION = 0.97;

    /** Purity of quicklime and hydrated lime, kg/kg. FROM MEMORY (CL 90 asks for 85 to 90 % CaO + MgO). */
    private static final double FAT_LIME_PURITY = 0.93;

    /** Free lime of natural hydraulic limes: makers' sheets for 2 and 3.5 (S10, S9), FROM MEMORY for 5 (S11: 12 % least). */
    private static final double NHL_2_HYDROXIDE = 0.55;

    private static final double NHL_3_5_HYDROXIDE = 0.25;
    private static final double NHL_5_HYDROXIDE = 0.15;

    /** Loose bulk density of NHL 5, kg/m3. FROM MEMORY. */
    private static final double NHL_5_BULK = 700.0;

    /** Loose bulk density of the finer sand of a finish, kg/m3. FROM MEMORY. */
    private static final double FINISH_SAND_BULK = 1450.0;

    /** Air in fresh mortar, m3/m3. FROM MEMORY. */
    private static final double AIR_LIME_AIR = 0.03;

    private static final double FINISH_AIR = 0.02;
    private static final double NHL_AIR = 0.04;

    /**
     * Free water of a hot mix, kg per kg Ca(OH)2. Assumed: between 0.9 and 1.3, so that 1:3 and 1:4 come within 3 % of the
     * defaults of the table.
     */
    private static final double HOT_MIX_WATER = 1.05;

    /** Range of free water when the water of the batch was measured. Judgement: gauging of water and moisture of sand. */
    private static final double MEASURED_WATER_RANGE = 0.10;

    /** Share of slag or pozzolan that reacts in the end. FROM MEMORY. */
    private static final double ADDITION_REACTED = 0.6;

    private static final double J_PER_KJ = 1000.0;

    private final DefaultsTable defaults;
    private final Catalogue catalogue;

    private CoatMortars(DefaultsTable defaults, Catalogue catalogue) {
        this.defaults = defaults;
        this.catalogue = catalogue;
    }

    /** Returns the mortars that these tables give. */
    public static CoatMortars of(DefaultsTable defaults, Catalogue catalogue) {
        return new CoatMortars(defaults, catalogue);
    }

    /** Returns the likely figures of a mix. */
    public MixFigures figures(Mix mix) {
        double sandBulk = mix.isFinish() ? FINISH_SAND_BULK : likely("sand loose bulk dry");
        double moisture = mix.sand() == Mix.SandState.DRY ? 0.0 : likely("site sand moisture");
        FreshWater water = water(mix);
        return switch (mix.lime()) {
            case QUICKLIME ->
                new MixFigures(
                        likely("quicklime bulk density"), FAT_LIME_PURITY, sandBulk, moisture, AIR_LIME_AIR, water);
            case PUTTY ->
                new MixFigures(
                        likely("lime putty density"),
                        1.0,
                        sandBulk,
                        moisture,
                        mix.isFinish() ? FINISH_AIR : AIR_LIME_AIR,
                        water);
            case HYDRATED ->
                new MixFigures(
                        likely("hydrated lime bulk density"), FAT_LIME_PURITY, sandBulk, moisture, AIR_LIME_AIR, water);
            case NHL_2 ->
                new MixFigures(likely("NHL 2 bulk density"), NHL_2_HYDROXIDE, sandBulk, moisture, NHL_AIR, water);
            case NHL_3_5 ->
                new MixFigures(likely("NHL 3.5 bulk density"), NHL_3_5_HYDROXIDE, sandBulk, moisture, NHL_AIR, water);
            case NHL_5 -> new MixFigures(NHL_5_BULK, NHL_5_HYDROXIDE, sandBulk, moisture, NHL_AIR, water);
        };
    }

    private FreshWater water(Mix mix) {
        if (mix.waterPerLimeVolume().isPresent()) {
            return new FreshWater.Measured(
                    mix.waterPerLimeVolume().getAsDouble(), likely("water lost as steam in hot mixing"));
        }
        return switch (mix.lime()) {
            case QUICKLIME -> new FreshWater.PerHydroxide(HOT_MIX_WATER);
            case PUTTY -> new FreshWater.AsItComes();
            case HYDRATED, NHL_2, NHL_3_5, NHL_5 -> new FreshWater.PerVolume(likely(freeWaterRow(mix)));
        };
    }

    /** Returns what is in a m3 of a mix, at its likely figures. */
    public MixMasses masses(Mix mix) {
        return MixMasses.of(mix, figures(mix));
    }

    /**
     * Returns the free water of a fresh mix, kg/m3: likely by closure of volumes, low and high in the proportions of the
     * table's range for the nearest mix, or within 10 % where the water of the batch was measured.
     */
    public Assumed freeWater(Mix mix) {
        double likely = masses(mix).freeWaterKgPerM3();
        if (mix.waterPerLimeVolume().isPresent()) {
            Estimate measured =
                    new Estimate(likely, likely * (1.0 - MEASURED_WATER_RANGE), likely * (1.0 + MEASURED_WATER_RANGE));
            return new Assumed(
                    mix.name() + ", free water", "kg/m3", measured, true, "COMPUTED", "water of the batch as given");
        }
        var row = defaults.of(freeWaterRow(mix));
        Estimate range = row.estimate().times(likely / row.likely());
        return new Assumed(mix.name() + ", free water", "kg/m3", range, true, row.status(), row.basis());
    }

    private static String freeWaterRow(Mix mix) {
        if (mix.lime().isHydraulic()) {
            return "free water in fresh NHL 3.5 backing coat 1:2-1:3";
        }
        if (mix.isFinish()) {
            return "free water in fresh putty finish 1:1";
        }
        if (mix.lime() == LimeKind.QUICKLIME) {
            return mix.sandPerLime() < 3.5
                    ? "free water in fresh hot-mixed 1:3 (quicklime:sand) backing coat"
                    : "free water in fresh hot-mixed 1:4 backing coat";
        }
        return "free water in fresh putty backing coat 1:2.5-1:3";
    }

    /** Returns the name of the catalogue material whose moisture figures a mix takes. */
    public String materialName(Mix mix) {
        if (mix.lime().isHydraulic()) {
            return Catalogue.NHL_PLASTER;
        }
        if (mix.isFinish()) {
            return Catalogue.PUTTY_FINISH;
        }
        return mix.hasAddition() ? Catalogue.SLAG_PLASTER : Catalogue.AIR_LIME_PLASTER;
    }

    /** Returns the depth coefficient of carbonation of a drained coat in outdoor air, mm/day^0.5. */
    public Assumed carbonation() {
        var row = defaults.of("carbonation coefficient at 420 ppm drained coat");
        return new Assumed(
                "carbonation, depth coefficient", row.unit(), row.estimate(), true, row.status(), row.basis());
    }

    /**
     * Returns the mortar of a mix.
     *
     * @param mix parts by volume
     * @param choice values that stand in for likely ones
     */
    public CoatMortar mortar(Mix mix, MortarChoice choice) {
        MixMasses masses = masses(mix);
        double freeWater = choice.freeWaterKgPerM3().orElse(masses.freeWaterKgPerM3());
        MaterialSheet row = catalogue.sheet(materialName(mix));
        MaterialSheet sheet = row.named(mix.name())
                .withFreeSaturation(freeWater / LAID_SATURATION)
                .withEntrySuction(choice.entrySuctionPa().orElse(row.storage().entrySuctionPa()))
                .withAbsorption(
                        choice.absorptionKgPerM2SqrtS().orElse(row.transport().absorptionKgPerM2SqrtS()))
                .withVapourResistance(
                        choice.vapourResistance().orElse(row.transport().vapourResistance()));
        return new CoatMortar(
                mix.name(),
                sheet.material(),
                freeWater,
                masses.calciumHydroxideKgPerM3(),
                boundWaterKgPerM3(mix, masses),
                settingActivationJPerMol(mix),
                mix.haired(),
                choice.carbonationMPerSqrtS()
                        .orElse(mPerSqrtS(carbonation().estimate().likely())));
    }

    /** Returns m/s^0.5 from mm/day^0.5. */
    public static double mPerSqrtS(double mmPerSqrtDay) {
        return Units.metresFromMm(mmPerSqrtDay) / Math.sqrt(Units.SECONDS_PER_DAY);
    }

    /** The table's figure for NHL 3.5 goes with its hydraulic part, and so serves the other two. */
    private double boundWaterKgPerM3(Mix mix, MixMasses masses) {
        double perHydraulicPart = likely("water bound by NHL 3.5 hydration (final)") / (1.0 - NHL_3_5_HYDROXIDE);
        double hydraulicPart = mix.lime().isHydraulic() ? masses.limeKgPerM3() - masses.calciumHydroxideKgPerM3() : 0.0;
        double perAddition = likely("water bound by slag (final)") * ADDITION_REACTED;
        return perHydraulicPart * hydraulicPart + perAddition * masses.additionKgPerM3();
    }

    /** Slag's own figure with air lime and slag; the trade's rule otherwise. */
    private double settingActivationJPerMol(Mix mix) {
        boolean slagSets = mix.hasAddition()
                && mix.addition() == Mix.Addition.SLAG
                && !mix.lime().isHydraulic();
        String row =
                slagSets ? "slag+Ca(OH)2 activation energy" : "NHL setting activation energy (implied by trade rule)";
        return likely(row) * J_PER_KJ;
    }

    private double likely(String parameter) {
        return defaults.of(parameter).likely();
    }
}
