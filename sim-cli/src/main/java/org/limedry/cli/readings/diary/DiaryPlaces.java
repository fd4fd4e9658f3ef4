package org.limedry.cli.readings.diary;

import java.util.List;
import java.util.Optional;

/**
 * The names that a diary of one site may use.
 *
 * @param site name of the site; empty if the diary is of no site in particular
 * @param rooms names of the rooms
 * @param openings names of doors and windows
 * @param walls names of the walls that are plastered
 */
public record DiaryPlaces(String site, List<String> rooms, List<Name> openings, List<Name> walls) {
    /**
     * A name.
     *
     * @param full what is unique on the site: the room before it
     * @param brief what stands in the site file; two rooms may have it
     */
    public record Name(String full, String brief) {}

    public DiaryPlaces {
        rooms = List.copyOf(rooms);
        openings = List.copyOf(openings);
        walls = List.copyOf(walls);
    }

    /** Returns that every name is good. */
    public static DiaryPlaces any() {
        return new DiaryPlaces("", List.of(), List.of(), List.of());
    }

    /** Returns the shortest names that are unique. */
    public static List<String> shortest(List<Name> names) {
        return names.stream()
                .map(name -> names.stream()
                                        .filter(other -> other.brief.equals(name.brief))
                                        .count()
                                > 1
                        ? name.full
                        : name.brief)
                .toList();
    }

    /** Returns the name that is meant, if one is and only one. */
    public static Optional<Name> meant(List<Name> names, String words) {
        List<Name> fitting = names.stream()
                .filter(name -> name.full.equalsIgnoreCase(words) || name.brief.equalsIgnoreCase(words))
                .toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }
}
