package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.limedry.air.MoistAir;

final class DryingPowerTest {
    private static final double PRESSURE_PA = 101_325.0;
    private static final MoistAir INSIDE = MoistAir.of(8.0, 0.85, PRESSURE_PA);
    private static final MoistAir OUTSIDE = MoistAir.of(5.0, 0.90, PRESSURE_PA);

    // COMPUTED: Python 3.11, a(T, h) = h 611.2 exp(17.62 T / (243.12 + T)) / (461.5 (T + 273.15)): a(8, .85) - a(5, .9)
    // =
    // 0.90701 g/m3; standard deviation of 200 000 draws with random.seed(1), random.gauss(0, .5) on each T and
    // random.gauss(0, .03) on each h: 0.44139 g/m3.
    @Test
    void between_ordinaryWinterDay_isHalfItsOwnError() {
        DryingPower power = DryingPower.between(INSIDE, OUTSIDE, SensorError.usual());

        assertEquals(0.90701e-3, power.kgPerM3(), 0.0005e-3); // digits of the gas constant
        assertEquals(0.44139e-3, power.errorKgPerM3(), 0.002e-3); // three times 1/sqrt(2n) of the draws
        assertTrue(power.isTold());
    }

    // EXACT: no error gives none; turned round the sign turns and the error stays; it grows in proportion.
    @Test
    void between_errors_scaleAndSignTurns() {
        DryingPower none = DryingPower.between(INSIDE, OUTSIDE, new SensorError(0.0, 0.0));
        DryingPower usual = DryingPower.between(INSIDE, OUTSIDE, SensorError.usual());
        DryingPower turned = DryingPower.between(OUTSIDE, INSIDE, SensorError.usual());
        DryingPower triple = DryingPower.between(INSIDE, OUTSIDE, new SensorError(1.5, 0.09));

        assertEquals(0.0, none.errorKgPerM3());
        assertEquals(-usual.kgPerM3(), turned.kgPerM3());
        assertEquals(usual.errorKgPerM3(), turned.errorKgPerM3(), 1e-18); // order of a sum of four
        assertEquals(3.0 * usual.errorKgPerM3(), triple.errorKgPerM3(), 1e-15); // rounding
        assertFalse(triple.isTold());
    }

    // EXACT: from 8:00 to 8:30.
    @Test
    void readings_outOfOrderOrEmpty_areRefused() {
        LoggedReading first = reading("2026-11-09T08:00:00Z");
        LoggedReading second = reading("2026-11-09T08:30:00Z");

        assertThrows(IllegalArgumentException.class, () -> new Readings(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Readings(List.of(second, first)));
        assertThrows(IllegalArgumentException.class, () -> new Readings(List.of(first, first)));
        assertEquals(30, new Readings(List.of(first, second)).interval().toMinutes());
    }

    private static LoggedReading reading(String at) {
        return new LoggedReading(
                Instant.parse(at),
                OptionalDouble.of(8.5),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    @Test
    void sensorError_belowZeroOrNan_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SensorError(-0.1, 0.03));
        assertThrows(IllegalArgumentException.class, () -> new SensorError(0.5, Double.NaN));
    }
}
