package org.limedry.cli.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.issue.IssueWords;
import org.limedry.cli.safety.Situation;
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
                Situation.at(site),
                site.backgroundWords(),
                weather(site),
                assumptions,
                moved(site),
                site.attribution());
    }

    private static List<SiteNotes.Moved> moved(Site site) {
        Optional<FittedFile> fitted = site.fitted().filter(file -> file.before().isPresent());
        if (fitted.isEmpty()) {
            return List.of();
        }
        List<SiteNotes.Moved> moved = new ArrayList<>();
        new IssueWords(site, fitted.get())
                .parts()
                .forEach(part -> moved.add(new SiteNotes.Moved(part.heading(), part.lines())));
        Instant known = fitted.get().issue().readingsUntil().plus(Duration.ofHours(1));
        if (site.readings()
                .filter(read -> read.known().weather().isAfter(known))
                .isPresent()) {
            moved.add(new SiteNotes.Moved(
                    "Not learnt from yet", List.of("there are later readings in the files: limedry fit")));
        }
        return moved;
    }

    private static String weather(Site site) {
        WeatherQuality quality = site.weatherQuality();
        List<String> mended = new ArrayList<>();
        count(mended, quality.missingHours(), "hours missing, bridged by straight lines");
        count(mended, quality.blankValues(), "blank readings, bridged likewise");
        count(mended, quality.blankWinds(), "blank winds, taken as 0.5 m/s");
        count(mended, quality.setAside().size(), "readings set aside that cannot be true");
        if (site.movedDays() == 0) {
            mended.addAll(site.outdoorRemarks());
        }
        String years = site.weatherName() + ": dates of any year are put on this year by month, day and hour";
        return mended.isEmpty() ? years : years + "; " + String.join("; ", mended);
    }

    private static void count(List<String> to, int count, String words) {
        if (count > 0) {
            to.add(count + " " + words);
        }
    }
}
