package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.reference.DefaultsTable;
import org.limedry.reference.GuidanceRule;

/** Too fast, too cold, and what is written down about waits and thickness. */
final class WatchesTest {
    private final Guidance guidance = Guidance.of(GuidanceRule.loadAll());

    private static TooFast.Exposure air(double ageDays, double relativeHumidity, boolean draught) {
        return new TooFast.Exposure(ageDays, 0.1, relativeHumidity, draught, false, 0.0, false);
    }

    // PRACTICE: common practice, no source: at 20 C and 40 % with a draught the watch speaks and asks for misting.
    @Test
    void tooFast_warmDryDraught_speaks() {
        TooFast.Finding finding = TooFast.look(air(1.0, 0.40, true));

        assertEquals(TooFast.Level.ACT, finding.level());
        assertEquals(List.of(TooFast.Cause.DRY_AIR, TooFast.Cause.DRAUGHT), finding.causes());
        assertEquals(List.of(Remedy.MIST, Remedy.TURN_DOWN, Remedy.SHUT, Remedy.SCREEN), finding.remedies());
        assertTrue(Remedy.MIST.words().contains("once or twice a day"));
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
                List.of(Remedy.MIST, Remedy.WET_THE_WALL),
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
        assertEquals(List.of(Remedy.TURN_AWAY), finding.remedies());
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

    // PUBLISHED: S9, S10 name 8 C, S34 to S36 name 5 C; the same two stand in the defaults, section E.
    @Test
    void coldLines_areTheTradesAndTheMakers() {
        var working = DefaultsTable.load()
                .of("minimum working temperature air lime/NHL")
                .estimate();

        assertEquals(working.low(), ColdLine.TRADE.celsius());
        assertEquals(working.likely(), ColdLine.MAKERS.celsius());
        assertEquals(List.of(), ColdLine.brokenBy(8.0));
        assertEquals(List.of(ColdLine.MAKERS), ColdLine.brokenBy(7.9));
        assertEquals(List.of(ColdLine.TRADE, ColdLine.MAKERS), ColdLine.brokenBy(4.9));
        assertEquals("the trade's 5 C", ColdLine.TRADE.words());
        assertEquals("the makers' 8 C", ColdLine.MAKERS.words());
    }

    // PUBLISHED: guidance rules: 72 hours after a hydraulic scratch coat (S38), 3 to 5 days (S48, weak); 24 hours after
    // haired putty on lath (S40).
    @Test
    void waits_areThoseWrittenDown() {
        List<Guidance.Wait> hydraulic = guidance.waits(Mixes.plain(LimeKind.NHL_3_5, 1.0, 2.5), false);
        List<Guidance.Wait> lath = guidance.waits(Mixes.haired(LimeKind.PUTTY, 2.5), true);

        assertEquals(
                List.of(3.0, 3.0), hydraulic.stream().map(Guidance.Wait::days).toList());
        assertEquals("S38", hydraulic.get(0).rule().source());
        assertEquals(1, lath.size());
        assertEquals(1.0, lath.get(0).days());
        assertEquals(List.of(), guidance.waits(Mixes.haired(LimeKind.PUTTY, 2.5), false));
        assertEquals(List.of(), guidance.waits(Mixes.plain(LimeKind.PUTTY, 1.0, 2.5), true));
    }

    // PUBLISHED: guidance rules: NHL base coat up to 10 mm (S83), putty finish to a total of 3 mm (S43). PRACTICE: 12
    // mm.
    @ParameterizedTest
    @CsvSource({
        "NHL_3_5, 2.5, 10, 0",
        "NHL_3_5, 2.5, 10.5, 1",
        "NHL_3_5, 2.5, 13, 2",
        "PUTTY, 1, 3, 0",
        "PUTTY, 1, 3.5, 1",
        "QUICKLIME, 3, 12, 0",
        "QUICKLIME, 3, 12.5, 1"
    })
    void thickness_isToldWhereItPassesARule(LimeKind lime, double sandParts, double thicknessMm, int notes) {
        Mix mix = Mixes.plain(lime, 1.0, sandParts);

        assertEquals(notes, guidance.thicknessNotes(mix, thicknessMm / 1000.0).size());
    }

    // PUBLISHED: guidance rule S83: a coat not thicker or richer than the one before; a thin finish may be richer.
    @ParameterizedTest
    @CsvSource({
        "3, 10, 3, 10, ''",
        "3, 11, 3, 10, thicker than the coat under it",
        "2.5, 10, 3, 10, richer than the coat under it",
        "2.5, 11, 3, 10, thicker and richer than the coat under it",
        "1, 3, 3, 10, ''"
    })
    void coatOverCoat_isToldWhereItPassesTheRule(
            double sandParts, double thicknessMm, double underSand, double underMm, String words) {
        List<Guidance.ThicknessNote> notes = guidance.overCoatNotes(
                Mixes.plain(LimeKind.PUTTY, 1.0, sandParts),
                thicknessMm,
                Mixes.plain(LimeKind.PUTTY, 1.0, underSand),
                underMm);

        assertEquals(
                words,
                String.join(
                        "", notes.stream().map(Guidance.ThicknessNote::words).toList()));
        assertTrue(notes.stream().allMatch(note -> note.source().equals("S83")));
    }

    // EXACT: hair does not make a rule for air lime one for hydraulic lime, and a rule without a figure tells no wait.
    @Test
    void waits_ofRulesThatDoNotApply_areNone() {
        GuidanceRule lath = new GuidanceRule("interval", "haired putty on lath", "24", "hours", "READ", "S40");
        GuidanceRule open = new GuidanceRule("interval", "haired putty on lath", "until firm", "", "READ", "S40");

        assertEquals(List.of(), Guidance.of(List.of(lath)).waits(Mixes.haired(LimeKind.NHL_2, 2.5), true));
        assertEquals(List.of(), Guidance.of(List.of(open)).waits(Mixes.haired(LimeKind.PUTTY, 2.5), true));
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

    @Test
    void guidanceWithoutItsRules_saysSo() {
        Guidance empty = Guidance.of(List.of());
        Mix mix = Mixes.plain(LimeKind.NHL_2, 1.0, 2.0);

        assertThrows(IllegalStateException.class, () -> empty.thicknessNotes(mix, 0.01));
    }
}
