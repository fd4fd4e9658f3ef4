package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equivalent age, hydraulic set and carbonation. */
final class HardeningTest {
    private static final double K = CoatMortars.mPerSqrtS(1.4);

    // EXACT: exp(-E/R (1/T - 1/293.15)), rates against 20 C to two digits: 30 kJ/mol at 5 C; 14.5, 17.9, 22.6 kJ/mol at
    // 5 and 10 C.
    @ParameterizedTest
    @CsvSource({
        "5, 30.0, 0.51",
        "5, 14.5, 0.73",
        "5, 17.9, 0.67",
        "5, 22.6, 0.61",
        "10, 14.5, 0.81",
        "10, 17.9, 0.77",
        "10, 22.6, 0.72"
    })
    void rate_inTheCold_isThatOfTheNotes(double celsius, double kJPerMol, double expected) {
        // Printed to two digits: half a digit.
        assertEquals(expected, EquivalentAge.rate(celsius, kJPerMol * 1e3), 0.0055);
    }

    // PUBLISHED: trade rule S33: 5 K cooler takes about 25 % longer, 10 K about 50 %; 30 kJ/mol was drawn from it.
    @ParameterizedTest
    @CsvSource({"15, 1.25", "10, 1.50"})
    void rate_cooler_takesLongerAsTheTradeSays(double celsius, double times) {
        // "About": 5 %.
        assertEquals(times, 1.0 / EquivalentAge.rate(celsius, 30e3), 0.05 * times);
    }

    // EXACT: one day a day at 20 C; none below freezing.
    @Test
    void rate_atTwentyAndBelowZero() {
        assertEquals(1.0, EquivalentAge.rate(20.0, 30e3));
        assertEquals(0.0, EquivalentAge.rate(-0.01, 30e3));
        assertEquals(0.47, EquivalentAge.rate(0.0, 25e3), 0.01); // 25 kJ/mol, 20 K: exp(-0.751)
        assertThrows(IllegalArgumentException.class, () -> EquivalentAge.rate(Double.NaN, 30e3));
        assertThrows(IllegalArgumentException.class, () -> EquivalentAge.rate(20.0, 0.0));
    }

    // PUBLISHED: strength of NHL 3.5 at 1:2.5 (S9): 0.57, 1.47, 5.34 of 5.90 MPa after 7, 28, 183 days.
    @ParameterizedTest
    @CsvSource({"7, 0.57", "28, 1.47", "183, 5.34"})
    void degree_followsTheStrengthOfNhl(double days, double strengthMPa) {
        // One exponential through four points: 0.04 of the whole.
        assertEquals(strengthMPa / 5.90, HydraulicSet.degree(days), 0.04);
    }

    // EXACT: what is bound in parts is bound in the whole, and in the end it is all.
    @Property
    void bound_inParts_isTheWhole(
            @ForAll @DoubleRange(min = 0.0, max = 100.0) double first,
            @ForAll @DoubleRange(min = 0.0, max = 100.0) double second) {
        double whole = HydraulicSet.boundKgPerM3(20.0, 0.0, first + second);

        double parts =
                HydraulicSet.boundKgPerM3(20.0, 0.0, first) + HydraulicSet.boundKgPerM3(20.0, first, first + second);

        assertEquals(whole, parts, 1e-12); // some ulp of 20
        assertEquals(20.0, HydraulicSet.boundKgPerM3(20.0, 0.0, 1e6));
    }

    @Test
    void bound_backwards_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> HydraulicSet.boundKgPerM3(20.0, 2.0, 1.9));
        assertThrows(IllegalArgumentException.class, () -> HydraulicSet.boundKgPerM3(-1.0, 0.0, 1.9));
        assertThrows(IllegalArgumentException.class, () -> HydraulicSet.degree(Double.NaN));
    }

    // EXACT: drained and at 420 ppm the front is 1.4 mm deep after a day and 2.8 mm after four.
    @Test
    void front_ofADrainedCoat_growsWithTheRootOfTime() {
        double rate = Carbonation.squaredDepthRateM2PerS(K, 420.0, 0.0, 0.70, 10.0);

        assertEquals(1.4e-3, Math.sqrt(rate * 86_400.0), 1e-15);
        assertEquals(2.8e-3, Math.sqrt(rate * 4.0 * 86_400.0), 1e-15);
    }

    // EXACT: linear in carbon dioxide, square in what the pores have free, by the humidity, and nothing in frost.
    @ParameterizedTest
    @CsvSource({
        "420, 0.0, 0.70, 10, 1",
        "1260, 0.0, 0.70, 10, 3",
        "420, 0.4, 0.70, 10, 0.36",
        "420, 1.0, 0.99, 10, 0",
        "420, 0.0, 0.70, -0.1, 0",
        "0, 0.0, 0.70, 10, 0",
        "420, 0.0, 0.40, 10, 0.25",
        "420, 0.0, 0.70, 0, 1"
    })
    void front_isHeldBack(double ppm, double saturation, double humidity, double celsius, double factor) {
        double rate = Carbonation.squaredDepthRateM2PerS(K, ppm, saturation, humidity, celsius);

        assertEquals(factor * K * K, rate, 1e-14 * K * K + 1e-30); // some ulp
    }

    // FROM MEMORY: the shape: 0 below 30 %, half at 50 %, full from 60 % up, since wet pores count by saturation only.
    @ParameterizedTest
    @CsvSource({"0.1, 0", "0.3, 0", "0.4, 0.25", "0.5, 0.5", "0.55, 0.75", "0.6, 1", "0.85, 1", "0.99, 1", "1.02, 1"})
    void humidityFactor_risesFrom30To60Percent(double humidity, double expected) {
        assertEquals(expected, Carbonation.humidityFactor(humidity), 1e-15); // some ulp
    }

    // EXACT: 0.010 * 225 * 0.85 * 0.2431 = 0.465 kg/m2 set free; 0.020 * 200 * 0.85 * 0.5940 = 2.02 kg/m2 of CO2 taken
    // up.
    @Test
    void carbonated_setsWaterFreeAndTakesCarbonDioxide() {
        double tenMm = Carbonation.carbonatedKgPerM2(225.0, 0.010);
        double twentyMm = Carbonation.carbonatedKgPerM2(200.0, 0.020);

        assertEquals(0.46, Carbonation.waterReleasedKgPerM2(tenMm), 0.006); // printed to two digits
        assertEquals(2.0, Carbonation.carbonDioxideTakenKgPerM2(twentyMm), 0.05);
    }

    @Test
    void carbonation_ofNonsense_isRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> Carbonation.squaredDepthRateM2PerS(K, 420.0, 1.01, 0.7, 10.0));
        assertThrows(
                IllegalArgumentException.class,
                () -> Carbonation.squaredDepthRateM2PerS(K, Double.NaN, 0.5, 0.7, 10.0));
        assertThrows(
                IllegalArgumentException.class,
                () -> Carbonation.squaredDepthRateM2PerS(K, 420.0, 0.5, 0.7, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Carbonation.humidityFactor(-0.1));
        assertThrows(IllegalArgumentException.class, () -> Carbonation.carbonatedKgPerM2(200.0, -1e-6));
    }
}
