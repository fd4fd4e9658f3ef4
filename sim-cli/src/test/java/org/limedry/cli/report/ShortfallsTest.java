package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class ShortfallsTest {
    @Test
    void latestDatePastTheRun_isToldAndDoesNotFailTheRun() {
        Shortfalls shortfalls = Shortfalls.of(Invented.oneRoom());

        assertEquals(
                List.of(
                        "coats[2]: latest date lies past the run, 31 Jan 2027: no date given, not guessed",
                        "coats[2]: set until: 2027-03-31 to see it"),
                shortfalls.lines());
        assertTrue(shortfalls.allLikelyDatesKnown());
    }

    @Test
    void likelyDatePastTheRun_failsIt() {
        Findings findings = Varied.coat(
                Invented.oneRoom(),
                1,
                Invented.result("store ceiling", 1, "2026-11-04", "", 2.0),
                Invented.range("store ceiling", 1, "", "", ""));

        Shortfalls shortfalls = Shortfalls.of(findings);

        assertEquals(
                List.of(
                        "coats[1]: likely date lies past the run, 31 Jan 2027: no date given, not guessed",
                        "coats[2]: latest date lies past the run, 31 Jan 2027: no date given, not guessed",
                        "coats[1], coats[2]: set until: 2027-03-31 to see them"),
                shortfalls.lines());
        assertFalse(shortfalls.allLikelyDatesKnown());
    }

    @Test
    void coatNotLaid_failsTheRun() {
        Findings findings = Varied.coat(
                Varied.quick(Invented.oneRoom()),
                2,
                Invented.result("store north", 2, "", "", 0.0),
                Invented.range("store north", 2, "", "", ""));

        Shortfalls shortfalls = Shortfalls.of(findings);

        assertEquals(
                "coats[2]: not laid before the end of the run, 31 Jan 2027: no date given, not guessed",
                shortfalls.lines().get(0));
        assertFalse(shortfalls.allLikelyDatesKnown());
    }

    @Test
    void quickRunWithAllLikelyDates_lacksNothing() {
        Shortfalls shortfalls = Shortfalls.of(Varied.quick(Invented.oneRoom()));

        assertEquals(List.of(), shortfalls.lines());
        assertTrue(shortfalls.allLikelyDatesKnown());
    }

    @Test
    void runThatStoppedEarly_isNotDone() {
        Shortfalls shortfalls = Shortfalls.of(Varied.gaveUp(Varied.quick(Invented.oneRoom()), Invented.hour(1700)));

        assertEquals(
                List.of("the calculation stopped early, on 11 Jan 2027: all figures belong to that day;"
                        + " please report this site file"),
                shortfalls.lines());
        assertFalse(shortfalls.allLikelyDatesKnown());
    }

    @Test
    void rangeRunsThatStoppedEarly_areCounted() {
        Findings one = Invented.oneRoom();
        Findings findings = new Findings(
                one.notes(), one.scenario(), one.outcome(), one.ranges(), new Effort(16, 3, 2.0, "limedry 0.0"));

        assertTrue(Shortfalls.of(findings)
                .lines()
                .contains("3 of 16 runs for the ranges stopped early: their coats count as not ready from then on"));
    }
}
