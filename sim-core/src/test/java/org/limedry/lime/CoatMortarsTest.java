package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.material.Assumed;
import org.limedry.material.CapillaryLaw;
import org.limedry.material.Catalogue;
import org.limedry.material.MaterialSheet;
import org.limedry.material.VanGenuchten;

final class CoatMortarsTest {
    private final CoatMortars mortars = Mixes.mortars();

    // COMPUTED: rows "free water in fresh ..." of materials/defaults, by the same closure of volumes.
    @ParameterizedTest
    @CsvSource({ // lime, sand, default, low, high
        "PUTTY, 3, 300, 255, 350",
        "NHL_3_5, 2.5, 315, 260, 355",
        "QUICKLIME, 3, 340, 290, 395",
        "QUICKLIME, 4, 305, 250, 345",
        "HYDRATED, 2.5, 300, 255, 350",
        "PUTTY, 1, 455, 400, 520"
    })
    void freeWater_ofCommonMixes_isThatOfTheDefaults(
            LimeKind lime, double sandParts, double likely, double low, double high) {
        Mix.SandState sand = sandParts == 1.0 ? Mix.SandState.DRY : Mix.SandState.DAMP;

        Assumed water = mortars.freeWater(Mixes.mix(lime, 1.0, sandParts, sand, 0.0));

        // The defaults are rounded to 5 and lie between mixes and sands: 3 %.
        assertEquals(likely, water.estimate().likely(), 0.03 * likely);
        assertEquals(low, water.estimate().low(), 0.03 * low);
        assertEquals(high, water.estimate().high(), 0.03 * high);
    }

    // EXACT: the range of a hot mix is that of its row, 290 to 395 of 340 below 1:3.5 and 250 to 345 of 305 from there
    // on, in proportion.
    @ParameterizedTest
    @CsvSource({"3.4, 340, 290, 395", "3.5, 305, 250, 345"})
    void freeWater_ofAHotMix_hasTheRangeOfItsRow(double sandParts, double likely, double low, double high) {
        Assumed water = mortars.freeWater(Mixes.plain(LimeKind.QUICKLIME, 1.0, sandParts));

        double found = water.estimate().likely();
        assertEquals(low / likely, water.estimate().low() / found, 1e-12); // rounding
        assertEquals(high / likely, water.estimate().high() / found, 1e-12); // rounding
    }

    // EXACT: the suction as laid is the one at which the material holds its free water, 0.97 of all it can hold.
    @Test
    void mortar_asLaid_holdsItsFreeWater() {
        CoatMortar mortar = mortars.mortar(Mixes.plain(LimeKind.PUTTY, 1.0, 2.5), MortarChoice.likely());
        VanGenuchten retention = (VanGenuchten) mortar.material().retention();

        double laidPa = mortar.laidSuctionPa();

        assertEquals(retention.suctionPa(0.97), laidPa, 1e-9 * laidPa); // root found to 1e-12 of ln p
    }

    // EXACT: only slag has the figure of slag, and what air lime holds besides hydroxide binds no water.
    @Test
    void mortar_ofAirLimeWithAPozzolan_setsByTheTradesRule() {
        Mix slag = Mixes.mix(LimeKind.HYDRATED, 1.0, 2.5, Mix.SandState.DAMP, 10.0);
        Mix pozzolan = new Mix(
                "pozzolan",
                LimeKind.HYDRATED,
                1.0,
                2.5,
                Mix.SandState.DAMP,
                Mix.Addition.POZZOLAN,
                10.0,
                OptionalDouble.empty(),
                false);

        assertEquals(18e3, mortars.mortar(slag, MortarChoice.likely()).settingActivationJPerMol());
        assertEquals(30e3, mortars.mortar(pozzolan, MortarChoice.likely()).settingActivationJPerMol());
        Mix plain = Mixes.plain(LimeKind.HYDRATED, 1.0, 2.5);
        assertTrue(mortars.masses(plain).limeKgPerM3() > mortars.masses(plain).calciumHydroxideKgPerM3());
        assertEquals(0.0, mortars.mortar(plain, MortarChoice.likely()).boundWaterKgPerM3());
    }

    // EXACT: 10 % either way when the water was measured.
    @Test
    void freeWater_measured_isSurer() {
        Assumed water = mortars.freeWater(Mixes.measured(LimeKind.NHL_3_5, 2.5, 0.8));

        double likely = water.estimate().likely();
        assertEquals(0.9 * likely, water.estimate().low(), 1e-12);
        assertEquals(1.1 * likely, water.estimate().high(), 1e-12);
        assertTrue(water.basis().contains("batch"), water.basis());
    }

    @ParameterizedTest
    @CsvSource({
        "PUTTY, 3, 0, " + Catalogue.AIR_LIME_PLASTER,
        "QUICKLIME, 3, 0, " + Catalogue.AIR_LIME_PLASTER,
        "QUICKLIME, 3, 10, " + Catalogue.SLAG_PLASTER,
        "PUTTY, 1, 0, " + Catalogue.PUTTY_FINISH,
        "NHL_5, 2, 0, " + Catalogue.NHL_PLASTER,
        "NHL_2, 2, 10, " + Catalogue.NHL_PLASTER
    })
    void material_isTheRowOfItsKind(LimeKind lime, double sandParts, double slag, String expected) {
        assertEquals(expected, mortars.materialName(Mixes.mix(lime, 1.0, sandParts, Mix.SandState.DAMP, slag)));
    }

    // EXACT: w_f = free water / 0.97, w_80 20 kg/m3 and 32 kPa of the air-lime row give n = 1 +
    // ln(w_f/20)/ln(29.16e6/32e3).
    @Test
    void mortar_ofPutty_holdsItsMixWaterAtTheLaidSaturation() {
        Mix mix = Mixes.plain(LimeKind.PUTTY, 1.0, 2.5);

        CoatMortar mortar = mortars.mortar(mix, MortarChoice.likely());

        VanGenuchten retention = (VanGenuchten) mortar.material().retention();
        double freeSaturation = mortar.freeWaterKgPerM3() / 0.97;
        double exponent =
                1.0 + Math.log(freeSaturation / 20.0) / Math.log(MaterialSheet.SUCTION_AT_80_PERCENT_PA / 32e3);
        assertEquals(mortars.masses(mix).freeWaterKgPerM3(), mortar.freeWaterKgPerM3());
        assertEquals(freeSaturation, retention.freeSaturationKgPerM3(), 1e-12);
        assertEquals(exponent, retention.exponent(), 1e-12);
        assertEquals("trial", mortar.material().name());
        assertEquals(0.0, mortar.boundWaterKgPerM3());
        // 1.4 mm/day^0.5; some ulp.
        assertEquals(1.4e-3 / Math.sqrt(86_400.0), mortar.carbonationMPerSqrtS(), 1e-19);
        assertEquals(30e3, mortar.settingActivationJPerMol());
    }

    // EXACT: each given value stands in the mortar.
    @Test
    void mortar_withChoices_takesEach() {
        MortarChoice choice = new MortarChoice(
                OptionalDouble.of(333.0),
                OptionalDouble.of(64e3),
                OptionalDouble.of(0.22),
                OptionalDouble.of(13.0),
                OptionalDouble.of(4e-6));

        CoatMortar mortar = mortars.mortar(Mixes.plain(LimeKind.PUTTY, 1.0, 2.5), choice);

        VanGenuchten retention = (VanGenuchten) mortar.material().retention();
        CapillaryLaw liquid = (CapillaryLaw) mortar.material().liquid();
        assertEquals(333.0, mortar.freeWaterKgPerM3());
        assertEquals(64e3, retention.entrySuctionPa());
        assertEquals(0.22, liquid.absorptionKgPerM2SqrtS());
        assertEquals(
                2e-10 / 13.0, mortar.material().vapourPermeabilityKgPerMSPa().at(0.0), 1e-25);
        assertEquals(4e-6, mortar.carbonationMPerSqrtS());
    }

    // EXACT: 18 kJ/mol only where slag sets with air lime; 18 PUBLISHED (S30, abstract), 30 COMPUTED from the rule of
    // S33.
    @ParameterizedTest
    @CsvSource({"QUICKLIME, 10, 18e3", "NHL_3_5, 10, 30e3", "QUICKLIME, 0, 30e3"})
    void mortar_setsWithTheActivationOfItsBinder(LimeKind lime, double slag, double expected) {
        CoatMortar mortar = mortars.mortar(Mixes.mix(lime, 1.0, 3.0, Mix.SandState.DAMP, slag), MortarChoice.likely());

        assertEquals(expected, mortar.settingActivationJPerMol());
    }

    // FROM MEMORY: 0.08 kg of water per kg of NHL 3.5 in the end (materials/defaults); under 10 % of the mix water.
    @Test
    void nhl_bindsALittleOfItsWater() {
        Mix mix = Mixes.mix(LimeKind.NHL_3_5, 1.0, 2.5, Mix.SandState.DAMP, 0.0);

        CoatMortar mortar = mortars.mortar(mix, MortarChoice.likely());

        // Rounding of a few products.
        assertEquals(0.08 * mortars.masses(mix).limeKgPerM3(), mortar.boundWaterKgPerM3(), 1e-10);
        assertTrue(mortar.boundWaterKgPerM3() < 0.1 * mortar.freeWaterKgPerM3());
    }

    // EXACT: 0.25 kg per kg reacted, 0.6 of it reacts.
    @Test
    void slag_bindsALittleOfItsWater() {
        Mix mix = Mixes.mix(LimeKind.QUICKLIME, 1.0, 2.5, Mix.SandState.DAMP, 10.0);

        CoatMortar mortar = mortars.mortar(mix, MortarChoice.likely());

        assertEquals(0.15 * mortars.masses(mix).additionKgPerM3(), mortar.boundWaterKgPerM3(), 1e-10);
    }
}
