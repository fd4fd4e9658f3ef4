package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class MoistAirTest {
    private static final double PRESSURE_PA = 100_250.0;
    private static final Saturation OVER_ICE =
            new Saturation(SaturationFormula.WMO8_MAGNUS, Phase.ICE, Enhancement.NONE);

    @Property
    void dewPoint_saturatesTheVapour(
            @ForAll @DoubleRange(min = -40.0, max = 59.0) double celsius,
            @ForAll @DoubleRange(min = 0.001, max = 1.0) @Scale(6) double relativeHumidity) {
        MoistAir air = MoistAir.of(celsius, relativeHumidity, PRESSURE_PA);

        double dewPoint = air.dewPointCelsius().orElseThrow();

        double vapour = air.vapourPressurePa();
        // EXACT: the definition of the dew point. A few ulp of exp and ln.
        assertEquals(vapour, MagnusForm.WMO_WATER.pressurePa(dewPoint), vapour * 1e-13);
    }

    @Property
    void wetBulb_liesBetweenDewPointAndAir(
            @ForAll @DoubleRange(min = -40.0, max = 59.0) double celsius,
            @ForAll @DoubleRange(min = 0.001, max = 1.0) @Scale(6) double relativeHumidity) {
        MoistAir air = MoistAir.of(celsius, relativeHumidity, PRESSURE_PA);

        double wetBulb = air.wetBulbCelsius().orElseThrow();

        // EXACT for any air; rounding near saturation, where all three meet.
        assertTrue(wetBulb <= celsius + 1e-8);
        assertTrue(wetBulb >= air.dewPointCelsius().orElseThrow() - 1e-8);
    }

    @Property
    void wetBulb_overIce_liesBetweenFrostPointAndAir(
            @ForAll @DoubleRange(min = -40.0, max = 59.0) double celsius,
            @ForAll @DoubleRange(min = 0.001, max = 1.0) @Scale(6) double relativeHumidity) {
        MoistAir air = new MoistAir(celsius, relativeHumidity, PRESSURE_PA, OVER_ICE);

        double wetBulb = air.wetBulbCelsius().orElseThrow();

        // EXACT for any air; rounding near saturation.
        assertTrue(wetBulb <= celsius + 1e-8);
        assertTrue(wetBulb >= air.surfaceCelsiusAt(1.0).orElseThrow() - 1e-8);
    }

    @Property
    void wetBulb_givesTheHumidityRatioBack(
            @ForAll @DoubleRange(min = -40.0, max = 50.0) double celsius,
            @ForAll @DoubleRange(min = 0.001, max = 1.0) @Scale(6) double relativeHumidity) {
        MoistAir air = new MoistAir(celsius, relativeHumidity, PRESSURE_PA, OVER_ICE);
        double wetBulb = air.wetBulbCelsius().orElseThrow();
        Phase wick = wetBulb < 0.0 ? Phase.ICE : Phase.WATER;

        double ratio = AdiabaticSaturation.humidityRatio(celsius, wetBulb, PRESSURE_PA, wick, OVER_ICE);

        assertEquals(air.humidityRatio(), ratio, 1e-12); // dW/dtw is below 0.006 per K, and the root is good to 1e-10 K
    }

    @Property
    void moreVapour_raisesEveryMeasureOfIt(
            @ForAll @DoubleRange(min = -40.0, max = 50.0) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(6) double relativeHumidity) {
        MoistAir drier = MoistAir.of(celsius, relativeHumidity, PRESSURE_PA);
        MoistAir moister = MoistAir.of(celsius, relativeHumidity + 0.005, PRESSURE_PA);

        assertTrue(moister.dewPointCelsius().orElseThrow()
                > drier.dewPointCelsius().orElseThrow());
        assertTrue(
                moister.wetBulbCelsius().orElseThrow() > drier.wetBulbCelsius().orElseThrow());
        assertTrue(moister.humidityRatio() > drier.humidityRatio());
        assertTrue(moister.absoluteHumidityKgPerM3() > drier.absoluteHumidityKgPerM3());
        assertTrue(moister.enthalpyKJPerKg() > drier.enthalpyKJPerKg());
        assertTrue(moister.specificVolumeM3PerKg() > drier.specificVolumeM3PerKg());
        assertTrue(moister.densityKgPerM3() < drier.densityKgPerM3(), "moist air is lighter");
    }

    @Property
    void humidityRatio_andVapourPressure_areInverse(
            @ForAll @DoubleRange(min = 0.0, max = 90_000.0) double vapourPressurePa) {
        double ratio = HumidityRatio.ofVapourPressure(vapourPressurePa, PRESSURE_PA);

        assertEquals(
                vapourPressurePa, HumidityRatio.vapourPressurePa(ratio, PRESSURE_PA), 1e-9); // ulp of the pressures
    }

    // COMPUTED: Python 3.11, 420e-6*101325*0.044009/(8.314462618*283.15) = 7.955e-4.
    @Test
    void carbonDioxide_ofOutdoorAirAt10C() {
        assertEquals(
                7.955e-4, CarbonDioxideContent.kgPerM3(420.0, 10.0, 101_325.0), 5e-8); // rounding of the value given
    }

    // EXACT: a surface at the dew point sees saturation, a warmer one less, and dew falls on colder ones only.
    @Test
    void surface_takesDew_fromItsDewPointDown() {
        MoistAir air = MoistAir.of(17.5, 0.63, PRESSURE_PA);
        double dewPoint = air.dewPointCelsius().orElseThrow();

        assertEquals(1.0, air.relativeHumidityAt(dewPoint), 1e-13); // rounding
        assertTrue(air.condensesOn(dewPoint - 1e-6));
        assertFalse(air.condensesOn(dewPoint + 1e-6));
        assertEquals(0.63, air.relativeHumidityAt(17.5), 1e-15); // rounding
    }

    // EXACT: below 0 °C the phase that counts decides; over ice the same vapour is nearer to saturation.
    @Test
    void frozenSurface_isCountedOverThePhaseAskedFor() {
        MoistAir meteorology = MoistAir.of(3.5, 0.60, PRESSURE_PA);
        MoistAir overIce = new MoistAir(3.5, 0.60, PRESSURE_PA, OVER_ICE);

        double ratio = overIce.relativeHumidityAt(-4.0) / meteorology.relativeHumidityAt(-4.0);

        assertEquals(
                MagnusForm.WMO_WATER.pressurePa(-4.0) / MagnusForm.WMO_ICE.pressurePa(-4.0), ratio, 1e-13); // rounding
        assertTrue(ratio > 1.03);
    }

    // EXACT: dry air has no dew point.
    @Test
    void dryAir_hasNoDewPoint_andIsOtherwiseDefined() {
        MoistAir dry = MoistAir.of(21.5, 0.0, PRESSURE_PA);

        assertEquals(OptionalDouble.empty(), dry.dewPointCelsius());
        assertEquals(OptionalDouble.empty(), dry.frostPointCelsius());
        assertEquals(0.0, dry.humidityRatio());
        assertEquals(1.006 * 21.5, dry.enthalpyKJPerKg(), 1e-12); // rounding
        double wetBulb = dry.wetBulbCelsius().orElseThrow();
        assertEquals(
                0.0,
                AdiabaticSaturation.humidityRatio(21.5, wetBulb, PRESSURE_PA, Phase.WATER, Saturation.METEOROLOGY),
                1e-14); // root accuracy
    }

    @Test
    void formulaWithoutSupercooledWater_leavesOpenWhatItCannotSay() {
        Saturation iso = new Saturation(SaturationFormula.ISO13788, Phase.WATER, Enhancement.NONE);
        MoistAir air = new MoistAir(6.0, 0.20, PRESSURE_PA, iso);

        assertEquals(OptionalDouble.empty(), air.dewPointCelsius(), "its dew point is below 0 °C");
        assertTrue(air.frostPointCelsius().orElseThrow() < 0.0);
        assertEquals(OptionalDouble.empty(), air.wetBulbCelsius(), "its wet bulb is below 0 °C");
        assertThrows(IllegalArgumentException.class, () -> new MoistAir(-6.0, 0.20, PRESSURE_PA, iso));
    }

    @Test
    void formulaOfOnePhase_leavesTheOtherOpen() {
        Saturation fao = new Saturation(SaturationFormula.FAO56, Phase.ICE, Enhancement.NONE);
        MoistAir air = new MoistAir(6.0, 0.20, PRESSURE_PA, fao);

        assertEquals(OptionalDouble.empty(), air.frostPointCelsius());
        assertEquals(OptionalDouble.empty(), air.wetBulbCelsius());
    }

    // EXACT: W(f) with f on the saturation pressure; the dew point of saturated air is its temperature all the same.
    @Test
    void enhancement_multipliesTheSaturationPressure() {
        Saturation enhanced = new Saturation(SaturationFormula.WMO8_MAGNUS, Phase.WATER, Enhancement.WMO8);
        MoistAir air = new MoistAir(12.5, 1.0, PRESSURE_PA, enhanced);

        assertEquals(
                Enhancement.WMO8.factor(PRESSURE_PA) * MagnusForm.WMO_WATER.pressurePa(12.5),
                air.vapourPressurePa(),
                1e-12); // rounding
        assertEquals(12.5, air.dewPointCelsius().orElseThrow(), 1e-12); // rounding
        assertEquals(12.5, air.wetBulbCelsius().orElseThrow(), 1e-9); // the band within which air counts as saturated
        assertThrows(IllegalArgumentException.class, () -> Enhancement.WMO8.factor(49_999.0));
        assertThrows(IllegalArgumentException.class, () -> Enhancement.WMO8.factor(Double.NaN));
    }

    @Test
    void state_outsideItsRanges_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(60.1, 0.5, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(-45.1, 0.5, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(Double.NaN, 0.5, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(12.0, 1.0001, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(12.0, -0.0001, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(12.0, Double.NaN, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(12.0, 0.5, 19_999.0));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(12.0, 0.5, 120_001.0));
        assertThrows(IllegalArgumentException.class, () -> MoistAir.of(12.0, 0.5, Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> MoistAir.of(12.0, 0.5, PRESSURE_PA).surfaceCelsiusAt(0.0));
        Saturation steam = new Saturation(SaturationFormula.WAGNER_PRUSS_AUX, Phase.WATER, Enhancement.NONE);
        var e = assertThrows(IllegalArgumentException.class, () -> new MoistAir(110.0, 0.5, PRESSURE_PA, steam));
        assertTrue(e.getMessage().startsWith("pressurePa: must be above the saturation pressure"), e.getMessage());
    }

    @Test
    void smallFunctions_refuseWhatTheyCannotUse() {
        assertThrows(IllegalArgumentException.class, () -> HumidityRatio.ofVapourPressure(PRESSURE_PA, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> HumidityRatio.ofVapourPressure(-1.0, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> HumidityRatio.vapourPressurePa(-0.001, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> HumidityRatio.vapourPressurePa(0.005, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideContent.kgPerM3(1e6 + 1.0, 10.0, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideContent.kgPerM3(420.0, -273.15, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideContent.kgPerM3(Double.NaN, 10.0, PRESSURE_PA));
        assertThrows(IllegalArgumentException.class, () -> TemperatureFactor.ofSurface(12.0, 7.5, 7.5));
        assertThrows(IllegalArgumentException.class, () -> TemperatureFactor.ofSurface(Double.NaN, 17.5, 7.5));
        assertThrows(IllegalArgumentException.class, () -> TemperatureFactor.ofTransmittance(2.0, 0.51));
        assertThrows(IllegalArgumentException.class, () -> TemperatureFactor.ofTransmittance(Double.NaN, 0.25));
        assertThrows(IllegalArgumentException.class, () -> new Psychrometer(0.0, 0.001));
        assertThrows(
                IllegalArgumentException.class,
                () -> Psychrometer.FERREL.vapourPressurePa(
                        Double.NaN, 9.0, PRESSURE_PA, Phase.WATER, SaturationFormula.WMO8_MAGNUS));
    }
}
