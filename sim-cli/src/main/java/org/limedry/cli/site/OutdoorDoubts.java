package org.limedry.cli.site;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.readings.logger.ClockWords;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** What keeps the weather of a run from being that of its days, up to the last reading. */
final class OutdoorDoubts {
    private static final Duration LATEST_START = Duration.ofDays(1);

    private final SiteParts parts;
    private final Instant from;
    private final ClockWords clock;

    OutdoorDoubts(SiteParts parts) {
        this.parts = parts;
        this.from = parts.days().from();
        this.clock = new ClockWords(parts.days().zone());
    }

    private Optional<Readings> outdoors() {
        return parts.readings().flatMap(SiteReadings::outdoors);
    }

    /** Returns what makes a fit up to an instant worthless, if anything does. */
    Optional<String> doubt(Instant until) {
        String another = "the weather of " + parts.weather().name() + " is not that of these days";
        if (outdoors().isEmpty()) {
            return parts.weather().isOf(from, until) ? Optional.empty() : Optional.of(another);
        }
        Readings read = outdoors().get();
        if (read.from().isAfter(from.plus(LATEST_START))) {
            return Optional.of("it begins on " + read.from() + " and the run on " + from);
        }
        OutdoorHoles holes = OutdoorHoles.ofAir(read, from, until);
        return holes.areTooMany() && !parts.weather().isOf(from, until)
                ? Optional.of("nothing for " + holes.words(clock) + ", more than one in ten; " + another)
                : Optional.empty();
    }

    /** Returns where other weather stands in for what was not read, each in a sentence. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        outdoors().ifPresent(read -> {
            Instant known = parts.readings().orElseThrow().known().weather();
            Instant until =
                    known.isBefore(parts.days().until()) ? known : parts.days().until();
            addHoles(remarks, "outdoor air", OutdoorHoles.ofAir(read, from, until), until);
            if (hasWind(read)) {
                addHoles(remarks, "wind", OutdoorHoles.ofWind(read, from, until), until);
            }
        });
        return remarks;
    }

    private static boolean hasWind(Readings read) {
        return read.all().stream().map(LoggedReading::windMPerS).anyMatch(wind -> wind.isPresent());
    }

    private void addHoles(List<String> remarks, String what, OutdoorHoles holes, Instant until) {
        if (!holes.all().isEmpty()) {
            String file = parts.entry().get(SiteKeys.READINGS).get(ReadingKeys.OUTDOORS);
            String year = parts.weather().isOf(from, until) ? "" : ", and it is that of another year";
            remarks.add(file + ": no " + what + " for " + holes.words(clock) + "; that of "
                    + parts.weather().name() + " stands in" + year);
        }
    }
}
