package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class ValueScaleTest {
    private static List<String> words(ValueScale scale) {
        return scale.ticks().stream().map(scale::words).toList();
    }

    // EXACT: from 0 to 6 % above the highest value, as the page standard asks.
    @Test
    void fromZero_threeLitres_topIsSixPercentHigher() {
        ValueScale scale = ValueScale.fromZero(3.3);

        assertEquals(3.498, scale.high(), 1e-12); // rounding of one product
        assertEquals(List.of("0", "1", "2", "3"), words(scale));
    }

    @Test
    void fromZero_nothing_stillHasAScale() {
        assertTrue(ValueScale.fromZero(0).high() > 0);
    }

    // EXACT: multiples of 2 that hold 4.0 to 10.4 with some room.
    @Test
    void celsius_someDegrees_stepsByTwo() {
        assertEquals(List.of("2", "4", "6", "8", "10", "12"), words(ValueScale.celsius(4.0, 10.4)));
    }

    // EXACT: multiples of 5 that hold -6 to 11 with some room; 2-degree steps would be eleven lines.
    @Test
    void celsius_manyDegrees_stepsWiderWithATrueMinus() {
        assertEquals(List.of("\u221210", "\u22125", "0", "5", "10", "15"), words(ValueScale.celsius(-6, 11)));
    }

    @Property(tries = 300)
    void celsius_anyValues_areHeldByThreeToSevenLines(
            @ForAll @DoubleRange(min = -40, max = 60) double low, @ForAll @DoubleRange(min = 0, max = 60) double span) {
        ValueScale scale = ValueScale.celsius(low, low + span);

        int lines = scale.ticks().size();
        assertTrue(scale.low() < low && scale.high() > low + span, () -> scale.toString());
        assertTrue(lines >= 3 && lines <= 7, () -> scale + " has lines " + lines);
    }

    @Property(tries = 300)
    void fromZero_anyValue_hasThreeToSixLines(@ForAll @DoubleRange(min = 0.01, max = 90) double highest) {
        int lines = ValueScale.fromZero(highest).ticks().size();

        assertTrue(lines >= 3 && lines <= 6, () -> highest + " has lines " + lines);
    }
}
