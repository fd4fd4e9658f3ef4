package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class MixTest {
    // EXACT: 10 % of the whole beside 1 lime and 2.5 sand: 3.5 / 9.
    @Test
    void addition_isAShareOfTheWholeMix() {
        Mix mix = Mixes.mix(LimeKind.QUICKLIME, 2.0, 5.0, Mix.SandState.DAMP, 10.0);

        assertEquals(2.5, mix.sandPerLime());
        assertEquals(3.5 / 9.0, mix.additionPerLime(), 1e-15);
        assertTrue(mix.hasAddition());
        assertFalse(Mixes.plain(LimeKind.PUTTY, 1.0, 3.0).hasAddition());
    }

    @ParameterizedTest
    @CsvSource({"PUTTY, 1.5, true", "PUTTY, 1.6, false", "QUICKLIME, 1.0, true", "NHL_2, 1.0, false"})
    void finish_isARichAirLimeMix(LimeKind lime, double sandParts, boolean finish) {
        assertEquals(finish, Mixes.plain(lime, 1.0, sandParts).isFinish());
    }

    @Test
    void partsThatCannotBe_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> Mixes.plain(LimeKind.PUTTY, 0.0, 3.0));
        assertThrows(IllegalArgumentException.class, () -> Mixes.plain(LimeKind.PUTTY, Double.NaN, 3.0));
        assertThrows(IllegalArgumentException.class, () -> Mixes.plain(LimeKind.PUTTY, 1.0, -1.0));
        assertThrows(
                IllegalArgumentException.class, () -> Mixes.mix(LimeKind.PUTTY, 1.0, 3.0, Mix.SandState.DRY, 51.0));
        assertThrows(IllegalArgumentException.class, () -> Mixes.measured(LimeKind.PUTTY, 3.0, -0.1));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Mix(
                        "",
                        LimeKind.PUTTY,
                        1.0,
                        3.0,
                        Mix.SandState.DRY,
                        Mix.Addition.POZZOLAN,
                        0.0,
                        OptionalDouble.empty(),
                        true));
    }
}
