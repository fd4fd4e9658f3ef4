package org.limedry.cli.site;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;

/** Whether coats, hand tests and gangs agree with the rest of the file. */
final class CoatChecks {
    private final Entry site;
    private final WallNames walls;
    private final Optional<RunDays> days;
    private final Map<String, Integer> count = new HashMap<>();
    private final Map<String, LocalDate> lastLaid = new HashMap<>();
    private final Set<String> gangs = new HashSet<>();

    CoatChecks(Entry site, WallNames walls, Optional<RunDays> days) {
        this.site = site;
        this.walls = walls;
        this.days = days;
    }

    /** Reports every disagreement. */
    void run() {
        site.given(SiteKeys.COATS).orElse(List.of()).forEach(this::coat);
        HandTestChecks.of(site, walls, days).file();
        site.given(SiteKeys.GANGS).orElse(List.of()).forEach(this::gang);
    }

    private void coat(Entry coat) {
        walls.check(coat);
        Map<String, Entry> mixes = site.given(SiteKeys.MIXES).orElse(Map.of());
        coat.given(CoatKeys.MIX)
                .filter(name -> site.given(SiteKeys.MIXES).isPresent() && !mixes.containsKey(name))
                .ifPresent(name -> coat.at(CoatKeys.MIX)
                        .problem("no mix \"" + name + "\"", "there are: " + String.join(", ", mixes.keySet())));
        walls.find(coat).ifPresent(wall -> onWall(coat, wall));
    }

    private void onWall(Entry coat, WallNames.Listed wall) {
        int number = count.merge(wall.planName(), 1, Integer::sum);
        if (number == 1
                && wall.entry()
                        .given(WallKeys.FINISH)
                        .filter(WallKeys.Finish.TILES::equals)
                        .isPresent()) {
            coat.at(CoatKeys.WALL)
                    .problem("the wall has tiles", "no coat holds on tiles: hack them off and leave finish out");
        }
        coat.given(CoatKeys.LAID).ifPresent(laid -> {
            if (laid.isPresent()) {
                laidOn(coat, wall, laid.get());
            } else if (number == 1) {
                coat.at(CoatKeys.LAID)
                        .problem("when ready", "must be a date: there is no coat under it that could be ready");
            }
        });
    }

    private void laidOn(Entry coat, WallNames.Listed wall, LocalDate day) {
        Optional<LocalDate> under = Optional.ofNullable(lastLaid.put(wall.planName(), day));
        if (under.isPresent() && !day.isAfter(under.get())) {
            coat.at(CoatKeys.LAID).problem(day.toString(), "must be after the coat under it, " + under.get());
        }
        inRun(coat, CoatKeys.LAID, day);
    }

    private void gang(Entry gang) {
        gang.given(GangKeys.NAME)
                .filter(name -> !gangs.add(name))
                .ifPresent(name -> gang.at(GangKeys.NAME)
                        .problem("\"" + name + "\" given twice", "choose another name for one of them"));
    }

    private void inRun(Entry entry, Key<?> key, LocalDate day) {
        days.filter(run -> !run.contains(day))
                .ifPresent(run -> entry.at(key)
                        .problem(day.toString(), "must be in the run, " + run.first() + " to " + run.last()));
    }
}
