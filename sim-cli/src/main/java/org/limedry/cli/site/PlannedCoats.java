package org.limedry.cli.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.limedry.cli.site.schema.Entry;

/** The coats of a job in which some things went as agreed and others as they did. */
final class PlannedCoats {
    private final SiteParts parts;
    private final Entry planned;
    private final PlannedRooms rooms;

    PlannedCoats(SiteParts parts, Entry planned, PlannedRooms rooms) {
        this.parts = parts;
        this.planned = planned;
        this.rooms = rooms;
    }

    /**
     * Returns the coats. The first on each wall has a date: as it was, or as many days after the planned release of its
     * room as it was after the actual one, on the next working day. Every other goes on when the one under it is ready.
     *
     * @param late whether rooms were handed over when they were
     * @param asLaid whether the coats are as thick as they were
     */
    List<Entry> coats(boolean late, boolean asLaid) {
        Set<String> begun = new HashSet<>();
        List<Entry> coats = new ArrayList<>();
        for (Entry coat : parts.coats()) {
            boolean first = begun.add(parts.wallOf(coat).planName());
            Optional<LocalDate> laid = first ? coat.get(CoatKeys.LAID) : Optional.empty();
            Entry moved = coat.with(CoatKeys.LAID, laid.map(day -> late ? day : earlier(coat, day)));
            coats.add(asLaid ? moved : asAgreed(coat, moved));
        }
        return coats;
    }

    private LocalDate earlier(Entry coat, LocalDate day) {
        LocalDate moved = day.minusDays(rooms.daysLate(parts.wallOf(coat).room()));
        while (!parts.entry().get(SiteKeys.WORKING_DAYS).contains(moved.getDayOfWeek())) {
            moved = moved.plusDays(1);
        }
        return moved;
    }

    private Entry asAgreed(Entry coat, Entry moved) {
        return planned.get(PlannedKeys.COATS).stream()
                .filter(agreed -> coatOf(parts, agreed).equals(coat))
                .findFirst()
                .map(agreed -> moved.with(CoatKeys.THICKNESS_MM, agreed.get(PlannedKeys.THICKNESS_MM))
                        .with(CoatKeys.DUBBING_MM, 0.0))
                .orElse(moved);
    }

    /** Returns the coat that an agreement on its thickness means. */
    static Entry coatOf(SiteParts parts, Entry agreed) {
        Map<String, Integer> count = new HashMap<>();
        String wall = parts.wallOf(agreed).planName();
        return parts.coats().stream()
                .filter(coat -> parts.wallOf(coat).planName().equals(wall))
                .filter(coat -> count.merge(wall, 1, Integer::sum).equals(agreed.get(CoatKeys.COAT)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(agreed.place().path() + " has no coat"));
    }

    /** Returns the day of the first coat of all. */
    LocalDate firstLaid(boolean late) {
        return coats(late, true).stream()
                .flatMap(coat -> coat.get(CoatKeys.LAID).stream())
                .min(LocalDate::compareTo)
                .orElseThrow();
    }

    /** Tells whether a coat on top of another has a date. */
    boolean datedLater() {
        Set<String> begun = new HashSet<>();
        return parts.coats().stream()
                .filter(coat -> !begun.add(parts.wallOf(coat).planName()))
                .anyMatch(coat -> coat.get(CoatKeys.LAID).isPresent());
    }
}
