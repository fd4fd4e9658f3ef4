package org.limedry.cli.doors;

import java.util.List;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.DoorsChart;
import org.limedry.cli.chart.Size;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Templates;
import org.limedry.cli.safety.Situation;

/** The sheet for the wall of the site hut: one page of A4, lying. */
final class DoorsPage {
    private DoorsPage() {}

    /** What the template sees. */
    private record View(
            DoorFindings findings,
            String headline,
            String doors,
            String week,
            String wide,
            String narrow,
            String litres,
            String worth,
            List<String> ready,
            String noDifference,
            Situation situation,
            Page.Foot foot,
            String owed) {}

    static String of(DoorFindings findings, DoorsChart chart, Page.Foot foot) {
        DoorWords words = new DoorWords(findings);
        String last = Days.full(findings.days().get(findings.days().size() - 1).date());
        String week = new DayWords(findings.days().get(0)).date() + " to " + last;
        return Templates.fill(
                "doors/doors.mustache",
                new View(
                        findings,
                        chart.title(),
                        String.join(" and ", findings.doors()),
                        week,
                        Charts.svg(chart, Size.WIDE),
                        Charts.svg(chart, Size.NARROW),
                        words.litres(),
                        words.worth(),
                        findings.waits().map(words::ready).stream().toList(),
                        words.noDifference(),
                        findings.situation(),
                        foot,
                        String.join(" ", foot.attribution())));
    }
}
