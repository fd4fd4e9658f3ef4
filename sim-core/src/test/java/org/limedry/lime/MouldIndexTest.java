package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

final class MouldIndexTest {
    private static MouldIndex hourly(MouldIndex start, double celsius, double humidity, int hours) {
        MouldIndex index = start;
        for (int hour = 0; hour < hours; hour++) {
            index = index.after(celsius, humidity, 1.0);
        }
        return index;
    }

    // EXACT: the polynomial by hand, -2.67 + 16 - 31.3 + 100 at 10 C; 80 above 20 C.
    @Test
    void criticalPercent_temperatures_followTheCurve() {
        assertEquals(82.03, MouldIndex.criticalPercent(10.0), 1e-9); // rounding of sums
        assertEquals(80.0, MouldIndex.criticalPercent(25.0));
        assertEquals(100.0, MouldIndex.criticalPercent(-3.0));
        assertThrows(IllegalArgumentException.class, () -> MouldIndex.criticalPercent(Double.NaN));
    }

    // COMPUTED (python 3, math.exp and log, the published exponents): at 20 C and 97 % index 1 after 1.48352 weeks,
    // index 3
    // after 2.98272 weeks; the brake near the end takes off under 2 %.
    @Test
    void after_steadyWetTimber_beginsAndIsSeenWhenTheTestsSay() {
        int begun = (int) Math.round(1.48352 * 168.0);
        int seen = (int) Math.round(2.98272 * 168.0);

        assertEquals(1.0, hourly(MouldIndex.clean(), 20.0, 0.97, begun).index(), 0.01); // half an hour, the brake
        assertEquals(3.0, hourly(MouldIndex.clean(), 20.0, 0.97, seen).index(), 0.02); // the brake near the end
    }

    // EXACT: 6 hours at 0.032 a day, 18 hours at rest, 24 hours at 0.016 a day.
    @Test
    void after_drought_fallsStandsAndFallsSlowly() {
        MouldIndex grown = new MouldIndex(2.0, 0.0);

        assertEquals(1.992, hourly(grown, 15.0, 0.5, 6).index(), 1e-12); // rounding of sums
        assertEquals(1.992, hourly(grown, 15.0, 0.5, 24).index(), 1e-12); // rounding of sums
        assertEquals(1.976, hourly(grown, 15.0, 0.5, 48).index(), 1e-12); // rounding of sums
    }

    // EXACT: below the critical humidity and in frost nothing grows; in frost nothing is lost either.
    @Test
    void after_dryOrFrozen_doesNotGrow() {
        assertEquals(0.0, hourly(MouldIndex.clean(), 10.0, 0.81, 500).index());
        assertEquals(2.0, hourly(new MouldIndex(2.0, 0.0), -1.0, 1.0, 500).index());
    }

    // EXACT: bad values are refused.
    @Test
    void mouldIndex_badValues_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new MouldIndex(Double.NaN, 0.0));
        assertThrows(IllegalArgumentException.class, () -> new MouldIndex(6.1, 0.0));
        assertThrows(IllegalArgumentException.class, () -> MouldIndex.clean().after(10.0, Double.NaN, 1.0));
        assertThrows(IllegalArgumentException.class, () -> MouldIndex.clean().after(10.0, 0.9, -1.0));
    }
}
