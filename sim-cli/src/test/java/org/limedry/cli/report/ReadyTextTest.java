package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.limedry.simulation.Outcome;
import org.limedry.study.ReadyRange;

final class ReadyTextTest {
    private static final Findings ONE = Invented.oneRoom();

    private static String heading(Findings findings, int coat) {
        return new ReadyText(findings).heading(findings.coats().get(coat));
    }

    private static Findings first(String ready, String earliest, String latest) {
        return Varied.coat(
                ONE,
                0,
                Invented.result("store north", 1, "2026-11-02", ready, 1.0),
                Invented.range("store north", 1, earliest, ready, latest));
    }

    @Test
    void heading_ofACoatWithANextOne_namesAllThreeDates() {
        assertEquals(
                "North wall ready for its second coat: likely Thursday 7 January; 17 December if all goes well, 22 January"
                        + " if not",
                heading(ONE, 0));
    }

    @Test
    void heading_ofALastCoat_namesTheCoat() {
        assertEquals(
                "North wall, coat 2 ready: likely Friday 29 January; 11 January if all goes well, not by 31 January if not",
                heading(ONE, 2));
    }

    @Test
    void heading_ofAQuickRun_hasTheLikelyDateOnly() {
        assertEquals("North wall ready for its second coat: likely Thursday 7 January", heading(Varied.quick(ONE), 0));
    }

    @Test
    void heading_ofACoatNotReady_namesTheEndOfTheRun() {
        assertEquals(
                "North wall not ready for its second coat by 31 January, the end of the run; 20 January if all goes well",
                heading(first("", "2027-01-20", ""), 0));
        assertEquals(
                "North wall not ready for its second coat by 31 January, the end of the run",
                heading(first("", "", ""), 0));
    }

    @Test
    void heading_ofARangeWithinOneDay_saysSo() {
        assertEquals(
                "North wall ready for its second coat: likely Thursday 7 January, early or late the same day",
                heading(first("2027-01-07", "2027-01-07", "2027-01-07"), 0));
    }

    @Test
    void heading_ofACoatPassedByHand_namesTheTest() {
        Findings findings = Varied.coat(
                ONE,
                0,
                Varied.byHand("store north", 1, "2026-11-02", "2026-11-21"),
                Invented.range("store north", 1, "2026-11-21", "2026-11-21", "2026-11-21"));

        assertEquals("North wall ready for its second coat: your test, Saturday 21 November", heading(findings, 0));
        assertEquals(
                "your test, 21 Nov",
                new ReadyText(findings).page(findings.coats().get(0)).latest());
    }

    @Test
    void heading_ofACoatNotLaid_saysSo() {
        Outcome.CoatResult result = Invented.result("store north", 2, "", "", 0.0);
        ReadyRange range = Invented.range("store north", 2, "", "", "");

        assertEquals(
                "North wall, coat 2 not laid by 31 January, the end of the run",
                heading(Varied.coat(ONE, 2, result, range), 2));
    }

    @Test
    void missingDate_isSaidInWordsNeverLeftBlank() {
        ReadyText.Cells cells = new ReadyText(ONE).page(ONE.coats().get(2));

        assertEquals("not by 31 Jan, the end of the run", cells.latest());
        assertEquals("Fri 29 Jan", cells.likely());
    }
}
