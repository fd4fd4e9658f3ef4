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
import org.limedry.room.Plant.Drying;
import org.limedry.room.Plant.Rating;
import org.limedry.wall.Constants;

final class DehumidifierOutputTest {
    private static final Constants CONSTANTS = Constants.ordinary();
    private static final double PRESSURE_PA = 101_325.0;
    private static final double TWELVE_LITRES_A_DAY = 12.0 / 86_400.0;

    // COMPUTED: the same formula in Python 3.11.7.
    @ParameterizedTest
    @CsvSource({"20, 0.60, 0.4273128", "15, 0.80, 0.3805702", "30, 0.80, 1", "6, 0.80, 0", "2, 0.90, 0"})
    void refrigerant_awayFromItsRating_isDerated(double celsius, double relativeHumidity, double expectedShare) {
        Plant.Dehumidifier machine = machine(Drying.REFRIGERANT, Rating.AT_30C_80, OptionalDouble.empty());

        double share = output(machine, celsius, relativeHumidity).waterKgPerS() / TWELVE_LITRES_A_DAY;

        assertEquals(expectedShare, share, 1e-7); // digits printed
    }

    // EXACT: a machine rated at 20 C/60 % does its rating there.
    @Test
    void refrigerant_atItsOwnRating_doesItsRating() {
        Plant.Dehumidifier machine = machine(Drying.REFRIGERANT, Rating.AT_20C_60, OptionalDouble.empty());

        assertEquals(TWELVE_LITRES_A_DAY, output(machine, 20.0, 0.60).waterKgPerS(), 1e-18); // a few roundings
    }

    // PUBLISHED: S54 of materials/sources: 12 l/day at 30 C/80 % is 4 to 5 l/day at 15 C/80 %; the curve was fitted to
    // it.
    @Test
    void refrigerant_inTheTradeExample_liesInTheBand() {
        Plant.Dehumidifier machine = machine(Drying.REFRIGERANT, Rating.AT_30C_80, OptionalDouble.empty());

        double litresPerDay = output(machine, 15.0, 0.80).waterKgPerS() * 86_400.0;

        assertTrue(litresPerDay >= 4.0 && litresPerDay <= 5.0);
    }

    // COMPUTED: humidity ratio over that of 20 C/60 %, Python 3.11.7; EXACT: never above the rating, which ever it is.
    @ParameterizedTest
    @CsvSource({
        "AT_20C_60, 10, 0.80, 0.697885677",
        "AT_20C_60, 5, 0.80, 0.494819138",
        "AT_20C_60, 20, 0.60, 1",
        "AT_20C_60, 25, 0.80, 1",
        "AT_30C_80, 30, 0.80, 1"
    })
    void desiccant_isLimitedByTheVapourInTheAir(
            Rating rating, double celsius, double relativeHumidity, double expectedShare) {
        Plant.Dehumidifier machine = machine(Drying.DESICCANT, rating, OptionalDouble.empty());

        double share = output(machine, celsius, relativeHumidity).waterKgPerS() / TWELVE_LITRES_A_DAY;

        assertEquals(expectedShare, share, 1e-9); // digits printed
    }

    // EXACT: proportional over 2 % about 65 %; the desiccant at 20 C is at its rating there.
    @ParameterizedTest
    @CsvSource({"0.63, 0", "0.645, 0.25", "0.65, 0.5", "0.655, 0.75", "0.66, 1", "0.8, 1"})
    void output_withHumidistat_isProportional(double relativeHumidity, double expectedShare) {
        Plant.Dehumidifier machine = machine(Drying.DESICCANT, Rating.AT_20C_60, OptionalDouble.of(0.65));

        DehumidifierOutput output = output(machine, 20.0, relativeHumidity);

        double waterKgPerS = expectedShare * TWELVE_LITRES_A_DAY;
        assertEquals(waterKgPerS, output.waterKgPerS(), 1e-16); // roundings of the humidity, 50 to the band
        assertEquals(2.5e6 * waterKgPerS + 250.0 * expectedShare, output.heatW(), 1e-9); // the same
    }

    // EXACT: latent heat 2.5 MJ/kg of the water caught, and 250 W.
    @Test
    void heat_isLatentAndElectric() {
        Plant.Dehumidifier machine = machine(Drying.DESICCANT, Rating.AT_20C_60, OptionalDouble.empty());

        DehumidifierOutput output = output(machine, 20.0, 0.70);

        assertEquals(2.5e6 * TWELVE_LITRES_A_DAY + 250.0, output.heatW(), 1e-9); // a few roundings
    }

    // EXACT: too cold to dry it still uses its power.
    @Test
    void heat_ofARefrigerantInTheCold_isItsPower() {
        Plant.Dehumidifier machine = machine(Drying.REFRIGERANT, Rating.AT_30C_80, OptionalDouble.empty());

        assertEquals(250.0, output(machine, 3.0, 0.9).heatW());
    }

    @Property
    void output_inWarmerOrWetterAir_isNeverLess(
            @ForAll @DoubleRange(min = -5.0, max = 30.0) double celsius,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) double relativeHumidity,
            @ForAll @DoubleRange(min = 0.0, max = 5.0) double warmerK,
            @ForAll @DoubleRange(min = 0.0, max = 0.05) double wetter) {
        for (Drying drying : Drying.values()) {
            Plant.Dehumidifier machine = machine(drying, Rating.AT_30C_80, OptionalDouble.of(0.5));
            double water = output(machine, celsius, relativeHumidity).waterKgPerS();

            double warmer = output(machine, celsius + warmerK, relativeHumidity).waterKgPerS();
            double moreHumid =
                    output(machine, celsius, relativeHumidity + wetter).waterKgPerS();

            assertTrue(water >= 0.0);
            // The humidity that the humidistat reads rounds by 1e-16, over a band of 0.02.
            assertTrue(warmer >= water - 1e-14 * TWELVE_LITRES_A_DAY);
            assertTrue(moreHumid >= water - 1e-14 * TWELVE_LITRES_A_DAY);
        }
    }

    @Property
    void output_acrossAnySmallChange_doesNotJump(
            @ForAll @DoubleRange(min = -5.0, max = 30.0) double celsius,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) double relativeHumidity) {
        for (Drying drying : Drying.values()) {
            Plant.Dehumidifier machine = machine(drying, Rating.AT_30C_80, OptionalDouble.of(0.5));

            double here = output(machine, celsius, relativeHumidity).waterKgPerS();
            double beside =
                    output(machine, celsius + 1e-6, relativeHumidity + 1e-6).waterKgPerS();

            // The steepest is the humidistat: the rating in 2 % of humidity.
            assertEquals(here, beside, 1e-4 * TWELVE_LITRES_A_DAY);
        }
    }

    private static DehumidifierOutput output(Plant.Dehumidifier machine, double celsius, double relativeHumidity) {
        double vapourKgPerM3 =
                relativeHumidity * CONSTANTS.saturation().pressurePa(celsius) / (461.5 * (celsius + 273.15));
        return DehumidifierOutput.of(machine, CONSTANTS, PRESSURE_PA, celsius, vapourKgPerM3);
    }

    private static Plant.Dehumidifier machine(Drying drying, Rating rating, OptionalDouble humidistat) {
        return new Plant.Dehumidifier(
                "machine", drying, TWELVE_LITRES_A_DAY, rating, 250.0, humidistat, RoomFixture.BY_DAY);
    }
}
