package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

final class HoursCsvTest {
    @Test
    void rows_areOneForEachHourOfTheRun() throws IOException {
        List<String> lines = lines(Invented.oneRoom());

        assertEquals(1 + Invented.HOURS + 1, lines.size()); // EXACT: heading, every hour, and the end of the last
        assertTrue(
                lines.get(1).startsWith("2026-11-02T00:00:00Z,2026-11-02T00:00:00Z,4.0,90.0,6.0,97.0,"), lines.get(1));
    }

    @Test
    void headings_sayWhatWhereAndInWhichUnit() throws IOException {
        List<String> headings = List.of(lines(Invented.oneRoom()).get(0).split(","));

        assertEquals(2 + 2 + 8 + 3 * 4 + 3 * 4, headings.size()); // EXACT: times, outdoors, one room, faces, coats
        assertTrue(headings.containsAll(List.of(
                "timeUtc",
                "timeOnSite",
                "outdoors.celsius",
                "store.carbonDioxidePpm",
                "store.freshAirM3PerH",
                "store north.faceRhPercent",
                "store north.vapourIntoFaceKgPerM2H",
                "store north coat 2.meanSuctionKPa")));
    }

    @Test
    void times_onSite_followTheClockOfTheSite() throws IOException {
        Findings findings = Invented.oneRoom();
        SiteNotes old = findings.notes();
        SiteNotes summer = new SiteNotes(
                java.time.ZoneId.of("Europe/Helsinki"),
                old.invented(),
                old.bucketLitres(),
                old.work(),
                old.backgrounds(),
                old.weather(),
                old.assumptions(),
                old.moved(),
                old.attribution());

        List<String> lines = lines(Varied.notes(findings, summer));

        assertTrue(lines.get(1).startsWith("2026-11-02T00:00:00Z,2026-11-02T02:00:00+02:00,"), lines.get(1));
    }

    @Test
    void rows_haveAsManyCellsAsTheHeading() throws IOException {
        List<String> lines = lines(Varied.twoRooms());
        int cells = lines.get(0).split(",", -1).length;

        assertTrue(lines.stream().allMatch(line -> line.split(",", -1).length == cells));
    }

    private static List<String> lines(Findings findings) throws IOException {
        StringWriter out = new StringWriter();
        HoursCsv.write(findings, out);
        return out.toString().lines().toList();
    }
}
