package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.reference.DefaultsTable;

/** Coats that dry too fast, and air too cold to lay lime in. */
final class WatchesTest {
    private static TooFast.Exposure air(double ageDays, double relativeHumidity, boolean draught) {
        return new TooFast.Exposure(ageDays, 0.1, relativeHumidity, draught, false, 0.0, false);
    }

    // PRACTICE: common practice, no source: at 20 C and 40 % with a draught the watch speaks and asks for misting.
    @Test
    void tooFast_warmDryDraught_speaks() {
        TooFast.Finding finding = TooFast.look(air(1.0, 0.40, true));

        assertEquals(TooFast.Level.ACT, finding.level());
        assertEquals(List.of(TooFast.Cause.DRY_AIR, TooFast.Cause.DRAUGHT), finding.causes());
        assertEquals(
                List.of(TooFast.Remedy.MIST, TooFast.Remedy.TURN_DOWN, TooFast.Remedy.SHUT, TooFast.Remedy.SCREEN),
                finding.remedies());
    }

    // PRACTICE: common practice, no source: at 10 C and 85 % in still air it is silent; so it is after three days.
    @Test
    void tooFast_coldDampStillAir_isSilent() {
        TooFast.Finding silent = new TooFast.Finding(TooFast.Level.QUIET, List.of(), List.of());

        assertEquals(silent, TooFast.look(air(1.0, 0.85, false)));
        assertEquals(silent, TooFast.look(air(1.0, 0.85, true)));
        assertEquals(silent, TooFast.look(air(3.1, 0.40, true)));
    }

    // EXACT: the limits as defined.
    @Test
    void tooFast_oneMildCause_isAWatch() {
        assertEquals(TooFast.Level.WATCH, TooFast.look(air(3.0, 0.49, false)).level());
        assertEquals(TooFast.Level.QUIET, TooFast.look(air(3.0, 0.50, false)).level());
        assertEquals(TooFast.Level.WATCH, TooFast.look(air(3.0, 0.64, true)).level());
        assertEquals(
                List.of(TooFast.Remedy.MIST, TooFast.Remedy.WET_THE_WALL),
                TooFast.look(new TooFast.Exposure(0.1, 0.1, 0.8, false, false, 0.7, false))
                        .remedies());
    }

    // EXACT: 0.6 kg/m2h is over the limit without hair and under it with hair.
    @ParameterizedTest
    @CsvSource({"0.6, false, ACT", "0.6, true, QUIET", "0.71, true, ACT", "0.5, false, QUIET"})
    void tooFast_loss_isBorneBetterWithHair(double loss, boolean haired, TooFast.Level expected) {
        TooFast.Finding finding = TooFast.look(new TooFast.Exposure(1.0, loss, 0.8, false, false, 0.0, haired));

        assertEquals(expected, finding.level());
    }

    @Test
    void tooFast_heaterAimed_alwaysSpeaks() {
        TooFast.Finding finding = TooFast.look(new TooFast.Exposure(1.0, 0.1, 0.9, false, true, 0.0, true));

        assertEquals(TooFast.Level.ACT, finding.level());
        assertEquals(List.of(TooFast.Remedy.TURN_AWAY), finding.remedies());
    }

    @Test
    void tooFast_nonsense_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> air(-1.0, 0.4, true));
        assertThrows(IllegalArgumentException.class, () -> air(1.0, Double.NaN, true));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TooFast.Exposure(1.0, Double.NaN, 0.8, false, false, 0.0, false));
        assertThrows(
                IllegalArgumentException.class, () -> new TooFast.Exposure(1.0, 0.1, 0.8, false, false, 1.1, false));
    }

    // PUBLISHED: S9, S10 name 8 C, S34 to S36 name 5 C; the lower of the two, which stand in the defaults, section E,
    // is taken.
    @Test
    void coldLine_isTheTrades() {
        var working = DefaultsTable.load()
                .of("minimum working temperature air lime/NHL")
                .estimate();

        assertEquals(working.low(), Frost.COLD_LINE_CELSIUS);
    }

    // EXACT: at a limit nothing is said; it speaks beyond.
    @Test
    void tooFast_exactlyAtALimit_isSilent() {
        TooFast.Finding atLimits =
                TooFast.look(new TooFast.Exposure(1.0, 0.5, TooFast.DRAUGHT_COUNTS_BELOW, true, false, 0.60, false));
        TooFast.Finding dry = TooFast.look(new TooFast.Exposure(1.0, 0.1, TooFast.DRY_AIR, false, false, 0.1, false));

        assertEquals(List.of(), atLimits.causes());
        assertEquals(List.of(), dry.causes());
    }
}
