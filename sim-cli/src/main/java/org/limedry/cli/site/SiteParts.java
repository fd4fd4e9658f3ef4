package org.limedry.cli.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;

/**
 * A site file without problems, with what was read beside it.
 *
 * @param entry the file
 * @param days the days of the run
 * @param weather the weather
 * @param names the listed walls
 * @param faces all faces
 * @param library the shipped tables
 * @param readings what was read
 * @param fitted what was learnt from it
 */
record SiteParts(
        Entry entry,
        RunDays days,
        SiteWeather weather,
        WallNames names,
        Faces.All faces,
        Library library,
        Optional<SiteReadings> readings,
        Optional<FittedFile> fitted) {
    /** Returns the same file with other days of the run. */
    SiteParts with(RunDays other) {
        return new SiteParts(entry, other, weather, names, faces, library, readings, fitted);
    }

    /** Returns the same file with other readings. */
    SiteParts with(Optional<SiteReadings> others, Optional<FittedFile> otherFitted) {
        return new SiteParts(entry, days, weather, names, faces, library, others, otherFitted);
    }

    /** Returns another course of the job: nothing was read in it; what is fitted holds for the building. */
    SiteParts with(Entry other, RunDays otherDays, SiteWeather otherWeather) {
        WallNames otherNames = WallNames.of(other);
        return new SiteParts(
                other,
                otherDays,
                otherWeather,
                otherNames,
                Faces.of(other, otherNames),
                library,
                Optional.empty(),
                fitted);
    }

    /** Returns the coats in the order of the file. */
    List<Entry> coats() {
        return entry.get(SiteKeys.COATS);
    }

    /** Returns the rooms by name. */
    Map<String, Entry> rooms() {
        return entry.get(SiteKeys.ROOMS);
    }

    /** Returns the wall of a coat or a hand test. */
    WallNames.Listed wallOf(Entry asking) {
        return names.find(asking)
                .orElseThrow(() -> new IllegalStateException(asking.place().path() + " has no wall"));
    }

    /** Returns the mix of a coat. */
    Entry mixOf(Entry coat) {
        Entry mix = entry.get(SiteKeys.MIXES).get(coat.get(CoatKeys.MIX));
        if (mix == null) {
            throw new IllegalStateException(coat.place().path() + " has no mix");
        }
        return mix;
    }
}
