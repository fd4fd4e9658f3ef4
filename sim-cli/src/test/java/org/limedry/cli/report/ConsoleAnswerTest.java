package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.simulation.WaterAccount;

final class ConsoleAnswerTest {
    // EXACT: the figures are those of the fixture, by hand; its wording is ours.
    @Test
    void lines_ofOneRoom_areTheAnswer() {
        List<String> lines = ConsoleAnswer.lines(Invented.oneRoom(), "out");

        assertEquals("""
                Old net loft, store (invented), 2 Nov 2026 to 31 Jan 2027
                rule: green-hard        laid      earliest   LIKELY     latest
                north wall, coat 1      2 Nov     17 Dec     7 Jan      22 Jan
                ceiling, coat 1         4 Nov     24 Nov     2 Dec      9 Dec
                north wall, coat 2      8 Jan     11 Jan     29 Jan     after the run (31 Jan)
                  1 in 5 before earliest, 1 in 5 after latest. A hand test overrules.
                Water, litres: 235 put in (23.5 buckets) = 103 out by air + 70 dehumidifier + 13
                  other ways out + 41 still in the coats + 8 in walls and room air
                  On the way 41 condensed, 28 of them sucked back. Glass ran for 214 hours.
                Why slow: the north wall was colder than the dew point of the room air for 664
                  hours of 1,584: 26 litres that had left were sucked back.
                Do 1: Open the yard door and the window for longer on dry days.
                Do 2: Bring the electric heater in sooner than 30 Nov, and let the wet air out.
                Do 3: Test the north wall, coat 1 by hand from 17 December.
                Care: No unflued heater indoors (carbon monoxide, water). Heaters: clear of
                  timber and sheets. By night: only electric kit made for it; all else off. Wet
                  electrics: competent person. Lime burns: goggles, gloves. In the eye: rinse 20
                  min, get help. Quicklime spits: trained hands, face shield, no closed tub.
                  Open doors: somebody stays; by night ask owner and insurer. Local codes and
                  the competent person first.
                Wrote out: report.html, 3 charts (svg, png), hours.csv, summary.json""".lines().toList(), lines);
    }

    static List<Findings> many() {
        Findings one = Invented.oneRoom();
        return List.of(
                one,
                Varied.quick(one),
                Varied.twoRooms(),
                Varied.nineCoats(),
                Varied.site(one, "Caf\u00e9 \u201cOs\u00edris\u201d \u2013 \u6c34 " + "long ".repeat(60)),
                Varied.gaveUp(one, Invented.hour(1700)));
    }

    @ParameterizedTest
    @MethodSource("many")
    void lines_ofAnySite_arePlainAsciiOf80Columns(Findings findings) {
        List<String> lines = ConsoleAnswer.lines(findings, "out");

        assertTrue(lines.stream().allMatch(line -> line.length() <= 80), () -> String.join("\n", lines));
        assertTrue(lines.stream().allMatch(line -> line.matches("[\\x20-\\x7e]*")), () -> String.join("\n", lines));
    }

    @Test
    void lines_ofThreeCoats_areUnderTwentyOfTextBeforeTheCautions() {
        List<String> lines = ConsoleAnswer.lines(Invented.oneRoom(), "out").stream()
                .takeWhile(line -> !line.startsWith("Care: "))
                .toList();

        // Cautions are as many as are due.
        assertTrue(lines.size() < 17, () -> String.join("\n", lines));
    }

    @Test
    void lines_ofMoreThanEightCoats_showTheThreeReadyLast() {
        List<String> lines = ConsoleAnswer.lines(Varied.nineCoats(), "out");

        assertEquals(
                List.of(
                        "rule: green-hard        laid      LIKELY",
                        "bay 7, coat 1           2 Nov     7 Dec",
                        "bay 8, coat 1           2 Nov     8 Dec",
                        "bay 9, coat 1           2 Nov     9 Dec",
                        "... and 6 more in report.html"),
                lines.subList(1, 6));
    }

    @Test
    void lines_ofAQuickRun_sayThatThereAreNoRanges() {
        List<String> lines = ConsoleAnswer.lines(Varied.quick(Invented.oneRoom()), "out");

        assertTrue(lines.contains("north wall, coat 1      2 Nov     7 Jan"));
        assertTrue(lines.contains("  Likely dates only (quick run, no ranges). A hand test overrules."));
    }

    @Test
    void waterThatIsMostlyNotOurs_saysHowMuchWasLaid() {
        WaterAccount account = new WaterAccount(
                40.0, 0.0, 0.0, 70.0, 0.0, 0.0, 0.0, 90.0, 0.0, 0.0, 0.0, 0.0, 10.0, 10.0, 0.0, 0.0, 0.0, 0.0);

        List<String> lines = ConsoleAnswer.lines(Varied.account(Invented.oneRoom(), account), "out");

        assertTrue(
                lines.contains("Water, litres: 110 put in (11.0 buckets; 40 litres of it laid) = 90 out by air +"),
                () -> String.join("\n", lines));
    }

    @Test
    void lines_ofACoatNotReady_giveNoDateAndGuessNone() {
        Findings findings = Varied.coat(
                Invented.oneRoom(),
                0,
                Invented.result("store north", 1, "2026-11-02", "", 2.0),
                Invented.range("store north", 1, "2027-01-20", "", ""));

        List<String> lines = ConsoleAnswer.lines(findings, "out");

        assertTrue(
                lines.contains("north wall, coat 1      2 Nov     20 Jan     after run  after the run (31 Jan)"),
                () -> String.join("\n", lines));
    }

    @Test
    void lines_ofACoatPassedByHand_nameTheTest() {
        Findings findings = Varied.coat(
                Invented.oneRoom(),
                1,
                Varied.byHand("store ceiling", 1, "2026-11-04", "2026-11-21"),
                Invented.range("store ceiling", 1, "2026-11-21", "2026-11-21", "2026-11-21"));

        List<String> lines = ConsoleAnswer.lines(findings, "out");

        assertTrue(
                lines.contains("ceiling, coat 1         4 Nov     your test  21 Nov     your test"),
                () -> String.join("\n", lines));
    }
}
