package org.limedry.cli.command;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.fit.IssueWords;
import org.limedry.cli.report.SiteNotes;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.Site;
import org.limedry.climate.WeatherQuality;

/** Turns what a site file says beside the scenario into what a report wants to know. */
final class SiteNotesOf {
    private SiteNotesOf() {}

    static SiteNotes site(Site site) {
        List<SiteNotes.Assumption> assumptions = site.assumptions().stream()
                .map(one -> new SiteNotes.Assumption(
                        one.words(), (one.value() + " " + one.unit()).strip(), one.range(), one.source()))
                .toList();
        return new SiteNotes(
                site.zone(),
                site.isInvented(),
                site.bucketLitres(),
                site.hasQuicklime(),
                site.backgroundWords(),
                weather(site),
                assumptions,
                site.fitted().filter(file -> file.before().isPresent()).map(file -> moved(site, file)),
                site.attribution());
    }

    private static SiteNotes.Moved moved(Site site, FittedFile file) {
        IssueWords issue = new IssueWords(site, file);
        List<String> lines = new ArrayList<>(issue.lines());
        boolean more = site.readings()
                .filter(read -> read.known()
                        .weather()
                        .isAfter(file.issue().readingsUntil().plus(Duration.ofHours(1))))
                .isPresent();
        if (more) {
            lines.add("there are later readings that were not fitted yet: limedry fit");
        }
        return new SiteNotes.Moved(issue.heading(), lines);
    }

    private static String weather(Site site) {
        WeatherQuality quality = site.weatherQuality();
        List<String> mended = new ArrayList<>();
        count(mended, quality.missingHours(), "hours missing, bridged by straight lines");
        count(mended, quality.blankValues(), "blank readings, bridged likewise");
        count(mended, quality.blankWinds(), "blank winds, taken as 0.5 m/s");
        count(mended, quality.setAside().size(), "readings set aside that cannot be true");
        String years = site.weatherName() + ": dates of any year are put on this year by month, day and hour";
        return mended.isEmpty() ? years : years + "; " + String.join("; ", mended);
    }

    private static void count(List<String> to, int count, String words) {
        if (count > 0) {
            to.add(count + " " + words);
        }
    }
}
