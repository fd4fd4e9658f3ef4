package org.limedry.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.readings.diary.DiaryPlaces;
import org.limedry.cli.readings.diary.DiaryPlaces.Name;
import org.limedry.cli.site.Site;
import org.limedry.room.RoomPlan;
import org.limedry.study.Draw;

/** The names of a site that its diary uses. */
final class SitePlaces {
    private SitePlaces() {}

    static DiaryPlaces of(Site site) {
        List<RoomPlan> rooms = site.scenario(Draw.likely()).rooms();
        List<Name> openings = new ArrayList<>();
        for (RoomPlan room : rooms) {
            room.openings()
                    .forEach(opening -> openings.add(new Name(room.name() + " " + opening.name(), opening.name())));
        }
        List<Name> walls = site.backgroundWords().keySet().stream()
                .map(plan -> new Name(plan, brief(plan, site.rooms())))
                .toList();
        return new DiaryPlaces(site.name(), site.rooms(), openings, walls);
    }

    /** Walls are called by their room and their name; the name alone stands in the site file. */
    private static String brief(String plan, List<String> rooms) {
        return rooms.stream()
                .filter(room -> plan.startsWith(room + " "))
                .map(room -> plan.substring(room.length() + 1))
                .findFirst()
                .orElse(plan);
    }
}
