package org.limedry.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class UncertainTest {
    private static final Uncertain BY_VALUE =
            new Uncertain("start", "start", "C", 4.0, 8.0, 11.0, false, "FROM MEMORY", "judgement");
    private static final Uncertain BY_FACTOR =
            new Uncertain("leakage", "leakage", "1/h", 0.2, 0.6, 2.4, true, "FROM MEMORY", "judgement");

    // EXACT: half of the chance on each side, even in the value: 4 to 8 to 11.
    @ParameterizedTest
    @CsvSource({"0, 4", "0.25, 6", "0.5, 8", "0.75, 9.5", "1, 11"})
    void in_byValue_isStraightOnEachSide(double quantile, double expected) {
        assertEquals(expected, BY_VALUE.in(new Draw(Map.of("start", quantile))), 1e-15 * expected); // roundings
    }

    // EXACT: even in the logarithm: a quarter is the geometric mean of low and likely, sqrt(0.2 * 0.6), and so above.
    @ParameterizedTest
    @CsvSource({"0, 0.2", "0.25, 0.34641016151377546", "0.5, 0.6", "0.75, 1.2", "1, 2.4"})
    void in_byFactor_isStraightInTheLogarithm(double quantile, double expected) {
        assertEquals(expected, BY_FACTOR.in(new Draw(Map.of("leakage", quantile))), 1e-15 * expected); // roundings
    }

    // EXACT: the likely figures that were put in.
    @Test
    void in_aDrawThatNamesOthers_isLikely() {
        assertEquals(8.0, BY_VALUE.in(new Draw(Map.of("leakage", 0.9))));
        assertEquals(0.6, BY_FACTOR.in(Draw.likely()));
    }

    @Property
    void in_aHigherQuantile_isNeverLower(
            @ForAll @DoubleRange(min = 0.0, max = 0.8) double quantile,
            @ForAll @DoubleRange(min = 0.0, max = 0.2) double more) {
        double lower = BY_FACTOR.in(new Draw(Map.of("leakage", quantile)));

        double higher = BY_FACTOR.in(new Draw(Map.of("leakage", quantile + more)));

        assertTrue(higher >= lower * (1.0 - 1e-15)); // rounding of the power
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -Double.MIN_VALUE, 1.0000000000000002})
    void draw_ofAChanceThatIsNone_isRefused(double quantile) {
        assertThrows(IllegalArgumentException.class, () -> new Draw(Map.of("start", quantile)));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.6, 2", "NaN, 0.6, 2", "0.2, 0.1, 2", "0.2, 2.1, 2", "0.2, NaN, 2", "-1, 0.6, 2"})
    void uncertain_outOfOrderOrAFactorOfNothing_isRefused(double low, double likely, double high) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Uncertain("leakage", "leakage", "1/h", low, likely, high, true, "FROM MEMORY", "judgement"));
    }

    // EXACT: a range by value may reach below 0; only a factor may not.
    @Test
    void uncertain_byValueBelowZero_isTaken() {
        Uncertain frost = new Uncertain("t", "t", "C", -4.0, -1.0, 2.0, false, "FROM MEMORY", "judgement");

        assertEquals(-2.5, frost.in(new Draw(Map.of("t", 0.25))));
    }

    @ParameterizedTest
    @CsvSource({"' ', words", "key, ' '"})
    void uncertain_withoutAName_isRefused(String key, String words) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Uncertain(key, words, "", 1.0, 2.0, 3.0, false, "FROM MEMORY", "judgement"));
    }
}
