package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.readings.diary.DiaryPlaces;
import org.limedry.cli.readings.diary.DiaryPlaces.Name;

/** The names of a site that its diary uses. */
final class SitePlaces {
    private SitePlaces() {}

    static DiaryPlaces of(SiteParts parts) {
        List<Name> openings = new ArrayList<>();
        parts.rooms()
                .forEach((room, entry) -> entry.get(RoomKeys.OPENINGS).stream()
                        .map(opening -> opening.get(OpeningKeys.NAME))
                        .forEach(name -> openings.add(new Name(openingName(room, name), name))));
        List<Name> walls = parts.names().walls().stream()
                .map(wall -> new Name(wall.planName(), wall.name()))
                .toList();
        return new DiaryPlaces(
                parts.entry().get(SiteKeys.SITE), List.copyOf(parts.rooms().keySet()), openings, walls);
    }

    /** Returns the name of a door or window that is unique on the site. */
    static String openingName(String room, String opening) {
        return room + " " + opening;
    }
}
