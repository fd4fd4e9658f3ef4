package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.limedry.room.Plant.Fuel;

final class HeaterOutputTest {
    // EXACT: molar masses over heating values, to three digits. Propane: 4 * 18.015 / 44.097 / 12.8 = 0.1277 and
    // 3 * 44.009 / 44.097 / 12.8 = 0.2339; dodecane: 13 * 18.015 / 170.34 / 11.97 = 0.1149 and 12 * 44.009 / 170.34 /
    // 11.97
    // = 0.2590. Heating values, kWh/kg: 12.8 PUBLISHED (S50 of materials/sources), 11.97 FROM MEMORY.
    @ParameterizedTest
    @CsvSource({"UNFLUED_LPG, 0.128, 0.234", "UNFLUED_PARAFFIN, 0.115, 0.259", "ELECTRIC, 0, 0", "FLUED, 0, 0"})
    void burning_perKwh_givesTheMassesOfTheEquation(Fuel fuel, double waterKg, double carbonDioxideKg) {
        HeaterOutput output =
                HeaterOutput.of(heater(3.6e6, fuel, 0.0, OptionalDouble.empty()), 12.0); // 1 kWh each second

        assertEquals(waterKg, output.waterKgPerS(), 0.0005); // half of the last printed digit
        assertEquals(carbonDioxideKg, output.carbonDioxideKgPerS(), 0.0005); // half of the last printed digit
    }

    // COMPUTED: the band of trade check T14, 0.127 to 0.128 kg of water per kWh, from the same molar masses.
    @Test
    void burning_ofBottledGas_liesInTheTradeBand() {
        double waterKg = HeaterOutput.waterKgPerKwh(Fuel.UNFLUED_LPG);

        assertTrue(waterKg >= 0.127 && waterKg <= 0.128);
    }

    // EXACT: C12H26 + 18.5 O2 and C3H8 + 5 O2: mass of water and carbon dioxide less fuel is the oxygen, 31.998
    // kg/kmol.
    @ParameterizedTest
    @CsvSource({"UNFLUED_LPG, 12.8, 44.097, 5", "UNFLUED_PARAFFIN, 11.97, 170.34, 18.5"})
    void burning_takesTheOxygenOfTheEquation(Fuel fuel, double kwhPerKg, double fuelKgPerKmol, double oxygenKmol) {
        double productsKg = (HeaterOutput.waterKgPerKwh(fuel) + HeaterOutput.carbonDioxideKgPerKwh(fuel)) * kwhPerKg;

        assertEquals(1.0 + oxygenKmol * 31.998 / fuelKgPerKmol, productsKg, 1e-4); // molar masses to 5 digits
    }

    // EXACT: 1500 W, 40 % radiant.
    @Test
    void heat_isSharedBetweenAirAndRadiantNode() {
        HeaterOutput output = HeaterOutput.of(heater(1500.0, Fuel.ELECTRIC, 0.4, OptionalDouble.empty()), 12.0);

        assertEquals(900.0, output.airW(), 1e-12); // a rounding of the share
        assertEquals(600.0, output.radiantW(), 1e-12); // a rounding of the share
    }

    // EXACT: proportional over 1 K about 15 C.
    @ParameterizedTest
    @CsvSource({"10, 2000", "14.5, 2000", "14.75, 1500", "15, 1000", "15.25, 500", "15.5, 0", "22, 0"})
    void heat_withThermostat_isProportional(double roomCelsius, double expectedW) {
        HeaterOutput output = HeaterOutput.of(heater(2000.0, Fuel.ELECTRIC, 0.0, OptionalDouble.of(15.0)), roomCelsius);

        assertEquals(expectedW, output.airW(), 1e-11); // roundings of the temperature difference
    }

    @Property
    void heat_inAWarmerRoom_isNeverMore(
            @ForAll @DoubleRange(min = 5.0, max = 25.0) double roomCelsius,
            @ForAll @DoubleRange(min = 0.0, max = 3.0) double warmerK) {
        Plant.Heater heater = heater(2000.0, Fuel.UNFLUED_LPG, 0.3, OptionalDouble.of(15.0));

        HeaterOutput colder = HeaterOutput.of(heater, roomCelsius);
        HeaterOutput warmer = HeaterOutput.of(heater, roomCelsius + warmerK);

        assertTrue(warmer.airW() <= colder.airW());
        assertTrue(warmer.waterKgPerS() <= colder.waterKgPerS());
    }

    // EXACT: at its setting a thermostat gives half.
    @ParameterizedTest
    @EnumSource
    void burning_followsTheThermostat(Fuel fuel) {
        HeaterOutput half = HeaterOutput.of(heater(2000.0, fuel, 0.3, OptionalDouble.of(15.0)), 15.0);
        HeaterOutput full = HeaterOutput.of(heater(2000.0, fuel, 0.3, OptionalDouble.empty()), 15.0);

        assertEquals(0.5 * full.waterKgPerS(), half.waterKgPerS(), 1e-18); // halving is exact
        assertEquals(0.5 * full.carbonDioxideKgPerS(), half.carbonDioxideKgPerS(), 1e-18); // halving is exact
    }

    private static Plant.Heater heater(double watts, Fuel fuel, double radiantShare, OptionalDouble thermostatCelsius) {
        return new Plant.Heater("heater", watts, fuel, radiantShare, thermostatCelsius, false, RoomFixture.BY_DAY);
    }
}
